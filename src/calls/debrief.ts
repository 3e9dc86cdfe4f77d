/** The debrief: the truth beside what was done, and beside what the call's own solution does. */
import { placedFault } from '../faults/index.ts';
import { type Message, quantity, say } from '../service/index.ts';
import { readout } from '../unit/index.ts';
import { costOf } from './cost.ts';
import { trueFaults } from './flags.ts';
import { judged } from './record.ts';
import { playReference } from './reference.ts';
import type { CallSession } from './session.ts';
import { faultName } from './session-actions.ts';
import type { Trace } from './trace.ts';
import type { CostLine, DebriefView, Series, TimelineBlock } from './view.ts';

/** Most points of a series: enough for a screen's width. */
const POINTS = 240;

export function debriefOf(session: CallSession, trace: Trace): DebriefView {
  const { call, report_s } = session.prepared;
  const verdict = judged(session);
  const reference = playReference(session.prepared);
  const from_ms = trace.from_ms;
  return {
    callId: call.id,
    title: call.title,
    passed: verdict.passed,
    score: verdict.score,
    verdict: say(session.breach ? 'verdict.unsafe' : verdict.passed ? 'verdict.passed' : 'verdict.failed'),
    truth: trueFaults(session).map((key) =>
      say('truth.line', { fault: faultName(key), shows: say(`shows.${placedFault(key).id}`) }),
    ),
    story: call.story,
    lines: verdict.lines,
    flags: verdict.flags.map((f) => ({ id: f.id, at_ms: f.at_ms, text: say(`flag.${f.id}`) })),
    costs: costLines(session, reference, verdict.spent, verdict.reference),
    series: seriesOf(session, trace),
    events: eventsOf(session, from_ms),
    done: blocksOf(session),
    reference: blocksOf(reference),
    from_ms,
    to_ms: Math.max(session.now_ms, reference.now_ms),
    startOfDay_ms: Math.floor((report_s * 1000) / 86_400_000) * 86_400_000,
  };
}

function blocksOf(session: CallSession): TimelineBlock[] {
  const blocks = session.done.map(
    (d): TimelineBlock => ({
      from_ms: d.outcome.from_ms,
      to_ms: d.outcome.to_ms,
      label: d.def.label,
      kind: d.def.place === 'phone' ? 'phone' : d.def.group,
    }),
  );
  const decided = session.done.find((d) => d.def.id === 'decide-visit');
  if (!decided || session.arrived_ms === undefined) return blocks;
  const drive: TimelineBlock = {
    from_ms: decided.outcome.to_ms,
    to_ms: session.arrived_ms,
    label: say('stage.drive'),
    kind: 'drive',
  };
  return [...blocks, drive].sort((a, b) => a.from_ms - b.from_ms);
}

function costLines(
  session: CallSession,
  reference: CallSession,
  done: ReturnType<typeof judged>['spent'],
  ref: ReturnType<typeof judged>['spent'],
): CostLine[] {
  const now = harmOf(session);
  const then = harmOf(reference);
  const line = (
    id: string,
    measure: Parameters<typeof quantity>[0],
    a: number,
    b: number,
    resolution: number,
  ): CostLine => ({
    label: say(`cost.${id}`),
    done: say('word.quantity', { q: quantity(measure, a, resolution) }),
    reference: say('word.quantity', { q: quantity(measure, b, resolution) }),
  });
  return [
    line('minutes', 'duration_min', done.minutes, ref.minutes, 1),
    line('money', 'money_usd', done.money_usd, ref.money_usd, 1),
    line('in-minutes', 'duration_min', costOf(done), costOf(ref), 1),
    line('short-of-air', 'volume_m3', now.shortOfAir_m3, then.shortOfAir_m3, 0.004),
    line('onto-the-ground', 'volume_m3', now.relieved_m3, then.relieved_m3, 0.004),
    line('without-oxygen', 'duration_h', now.hoursWithoutOxygen, then.hoursWithoutOxygen, 0.1),
  ];
}

/** What ran to the lawn and to the ground by the end of the call. */
function harmOf(session: CallSession): { shortOfAir_m3: number; relieved_m3: number; hoursWithoutOxygen: number } {
  const { unit } = session.service;
  const end = readout(unit, unit.t);
  return {
    shortOfAir_m3: end.shortOfAir_m3,
    relieved_m3: end.relieved_m3 + end.indoors_m3 + end.leaked_m3,
    hoursWithoutOxygen: end.hoursWithoutOxygen,
  };
}

function seriesOf(session: CallSession, trace: Trace): Series[] {
  const { floats, airSwitch } = session.prepared.spec.panel;
  return [
    series('airPressure_kPa', trace.points('airPressure_kPa', POINTS), [[airSwitch.falls_kPa, 'mark.air-switch']]),
    series('oxygen_mgL', trace.points('oxygen_mgL', POINTS), [[2, 'mark.oxygen']]),
    series('pumpTank_m', trace.points('pumpTank_m', POINTS), [[floats.highWaterFloat.makes_m, 'mark.high-water']]),
  ];
}

function series(id: Series['id'], points: Series['points'], marks: readonly (readonly [number, string])[]): Series {
  return {
    id,
    label: say(`series.${id}`),
    points,
    marks: marks.map(([value, label]) => ({ value, label: say(label) })),
  };
}

function eventsOf(session: CallSession, from_ms: number): DebriefView['events'] {
  const told = new Set([
    'lamp.on',
    'lamp.off',
    'pumpRuns.on',
    'pumpRuns.off',
    'compressorRuns.on',
    'compressorRuns.off',
    'dialled',
  ]);
  return session.service.unit.log
    .filter((e) => told.has(e.what) || e.what.startsWith('fault.') || e.what.startsWith('mended.'))
    .filter((e) => e.t * 1000 >= from_ms)
    .map((e) => ({ at_ms: Math.round(e.t * 1000), label: eventLabel(e.what), tone: toneOf(e.what) }));
}

function eventLabel(what: string): Message {
  const [kind, ...rest] = what.split('.');
  const key = rest.join('.');
  if (kind === 'fault') return say('event.fault', { fault: faultName(key) });
  return kind === 'mended' ? say('event.mended', { fault: faultName(key) }) : say(`event.${what}`);
}

function toneOf(what: string): 'plain' | 'bad' | 'good' {
  if (what.startsWith('fault.') || what === 'lamp.on') return 'bad';
  return what.startsWith('mended.') || what === 'lamp.off' ? 'good' : 'plain';
}
