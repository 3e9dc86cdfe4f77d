/** What happened and what was done in a call, over its clock. */
import { type Message, say } from '../service/index.ts';
import type { CallSession } from './session.ts';
import { faultName } from './session-actions.ts';
import { teachingWords } from './taught.ts';
import { isTeaching } from './teach-ids.ts';
import type { DebriefView, TimelineBlock } from './view.ts';

/** What was done, each for as long as it took. */
export function blocksOf(session: CallSession): TimelineBlock[] {
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

/** What the works did that could be seen or heard, what broke or was mended, and skipped steps of life safety. */
export function eventsOf(session: CallSession, from_ms: number): DebriefView['events'] {
  const told = new Set([
    'lamp.on',
    'lamp.off',
    'pumpRuns.on',
    'pumpRuns.off',
    'compressorRuns.on',
    'compressorRuns.off',
    'dialled',
  ]);
  const ofThePlant = session.service.unit.log
    .filter((e) => told.has(e.what) || e.what.startsWith('fault.') || e.what.startsWith('mended.'))
    .filter((e) => e.t * 1000 >= from_ms)
    .map((e) => ({ at_ms: Math.round(e.t * 1000), label: eventLabel(e.what), tone: toneOf(e.what) }));
  const breaches = session.breaches.map(({ at_ms }) => ({ at_ms, label: say('event.breach'), tone: 'bad' as const }));
  return [...ofThePlant, ...breaches].sort((a, b) => a.at_ms - b.at_ms);
}

/** What a trainer did, in the order in which it was. */
export function taughtOf({ log }: CallSession): DebriefView['taught'] {
  return log.filter((one) => isTeaching(one.do)).map((one) => ({ at_ms: one.at_ms, label: teachingWords(one) }));
}

/** Something the works did, in words. */
export function eventLabel(what: string): Message {
  const [kind, ...rest] = what.split('.');
  const key = rest.join('.');
  if (kind === 'fault') return say('event.fault', { fault: faultName(key) });
  return kind === 'mended' ? say('event.mended', { fault: faultName(key) }) : say(`event.${what}`);
}

function toneOf(what: string): 'plain' | 'bad' | 'good' {
  if (what.startsWith('fault.') || what === 'lamp.on') return 'bad';
  return what.startsWith('mended.') || what === 'lamp.off' ? 'good' : 'plain';
}
