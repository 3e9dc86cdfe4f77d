/** The debrief: the truth beside what was done, and beside what the call's own solution does. */
import { faultOn, placedFault } from '../faults/index.ts';
import { type Measure, type Message, quantity, say } from '../service/index.ts';
import { costOf } from './cost.ts';
import { marksOf } from './curves.ts';
import { trueFaults } from './flags.ts';
import { DrainsWatch, type Harm, harmOf } from './harm.ts';
import type { Judgement } from './judge.ts';
import { judged } from './record.ts';
import { playReference } from './reference.ts';
import type { CallSession } from './session.ts';
import { faultName } from './session-actions.ts';
import { blocksOf, eventsOf, taughtOf } from './timeline.ts';
import type { Trace } from './trace.ts';
import type { AccountView, CostLine, DebriefView, Series } from './view.ts';
import { visitView } from './visit/visit-view.ts';

/** Most points of a series: enough for a screen's width. */
const POINTS = 240;

export function debriefOf(session: CallSession, trace: Trace): DebriefView {
  const { call, report_s } = session.prepared;
  const verdict = judged(session);
  const drains = new DrainsWatch(report_s);
  const reference = playReference(session.prepared, drains.look);
  const from_ms = trace.from_ms;
  return {
    callId: call.id,
    title: call.title,
    family: familyOf(session),
    passed: verdict.passed,
    score: verdict.score,
    verdict: say(`verdict.${outcomeOf(session, verdict.passed)}`),
    truth: truthOf(session),
    story: call.story,
    accounts: accountsOf(session),
    lines: verdict.lines,
    flags: verdict.flags.map((f) => ({ id: f.id, at_ms: f.at_ms, text: say(`flag.${f.id}`) })),
    costs: costLines(verdict, harmOf(session, trace.drains), harmOf(reference, drains)),
    series: seriesOf(session, trace),
    events: [...eventsOf(session, from_ms), ...trainerEvents(session)].sort((a, b) => a.at_ms - b.at_ms),
    taught: taughtOf(session),
    done: blocksOf(session),
    reference: blocksOf(reference),
    from_ms,
    to_ms: Math.max(session.now_ms, reference.now_ms),
    startOfDay_ms: Math.floor((report_s * 1000) / 86_400_000) * 86_400_000,
    ...(call.kind === 'visit' ? { visit: visitView(session) } : {}),
  };
}

function truthOf(session: CallSession): readonly Message[] {
  const faults = trueFaults(session);
  if (faults.length === 0 && session.prepared.call.kind === 'visit') return [say('truth.none')];
  return faults.map((key) => say('truth.line', { fault: faultName(key), shows: say(`shows.${placedFault(key).id}`) }));
}

/** The families of what was wrong, so that what was learnt is kept by them. */
function familyOf(session: CallSession): string {
  return [...new Set(trueFaults(session).map((key) => placedFault(key).family))].sort().join('+');
}

function accountsOf({ prepared }: CallSession): readonly AccountView[] {
  return prepared.call.faults.flatMap(({ fault, part, account }) => {
    const placed = faultOn(prepared.spec, fault, part);
    return account && placed ? [{ fault: faultName(placed.key), account }] : [];
  });
}

/** A coached call goes on after a breach, and has failed all the same. */
function outcomeOf(
  session: CallSession,
  passed: boolean,
): 'unsafe' | 'gone-on' | 'passed' | 'failed' | 'visit-passed' | 'visit-failed' {
  if (session.breach) return session.mode === 'coached' ? 'gone-on' : 'unsafe';
  if (session.prepared.call.kind === 'visit') return passed ? 'visit-passed' : 'visit-failed';
  return passed ? 'passed' : 'failed';
}

/** What a trainer did, as far as it was not gone back over and lies ahead again. */
function trainerEvents(session: CallSession): DebriefView['events'] {
  return taughtOf(session)
    .filter(({ at_ms }) => at_ms <= session.now_ms)
    .map((one) => ({ ...one, tone: 'plain' }));
}

/** Time, money and harm, each beside what the call's own solution came to. */
function costLines(done: Judgement, now: Harm, then: Harm): CostLine[] {
  const { spent, reference } = done;
  const line = (id: string, measure: Measure, a: number, b: number, resolution: number): CostLine => ({
    label: say(`cost.${id}`),
    done: say('word.quantity', { q: quantity(measure, a, resolution) }),
    reference: say('word.quantity', { q: quantity(measure, b, resolution) }),
  });
  return [
    line('minutes', 'duration_min', spent.minutes, reference.minutes, 1),
    line('money', 'money_usd', spent.money_usd, reference.money_usd, 1),
    line('in-minutes', 'duration_min', costOf(spent), costOf(reference), 1),
    { label: say('cost.needless-parts'), done: needless(now), reference: needless(then) },
    line('further-drives', 'count', now.furtherDrives, then.furtherDrives, 1),
    line('untreated', 'volume_m3', now.untreated_m3, then.untreated_m3, 0.004),
    line('undisinfected', 'duration_h', now.hoursUndisinfected, then.hoursUndisinfected, 0.1),
    line('short-of-air', 'volume_m3', now.shortOfAir_m3, then.shortOfAir_m3, 0.004),
    line('onto-the-ground', 'volume_m3', now.ontoTheGround_m3, then.ontoTheGround_m3, 0.004),
    line('without-oxygen', 'duration_h', now.hoursWithoutOxygen, then.hoursWithoutOxygen, 0.1),
    line('without-drains', 'duration_h', now.hoursWithoutDrains, then.hoursWithoutDrains, 0.1),
  ];
}

function needless({ needlessParts, needlessMoney_usd }: Harm): Message {
  if (needlessParts === 0) return say('word.quantity', { q: quantity('count', 0) });
  return say('cost.count-and-money', {
    n: quantity('count', needlessParts),
    c: quantity('money_usd', needlessMoney_usd, 1),
  });
}

function seriesOf(session: CallSession, trace: Trace): Series[] {
  const { spec } = session.prepared;
  const highWater = { value: spec.panel.floats.highWaterFloat.makes_m, label: say('mark.high-water') };
  const series = (id: Series['id'], marks: Series['marks']): Series => ({
    id,
    label: say(`series.${id}`),
    points: trace.points(id, POINTS),
    marks,
  });
  return [
    series('airPressure_kPa', marksOf(spec, 'airPressure_kPa')),
    series('oxygen_mgL', marksOf(spec, 'oxygen_mgL')),
    series('pumpTank_m', [highWater]),
  ];
}
