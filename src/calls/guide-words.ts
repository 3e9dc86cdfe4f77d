/** Why a step of a solution comes now, and what is worth a thought before it: the sentences a guide picks from. */
import { type ActionDef, type Message, say } from '../service/index.ts';
import { isMend, proofBy } from './proof.ts';
import type { CallSession } from './session.ts';

/** What makes ready for another step, and tells nothing by itself. */
const READIES = ['make-safe', 'clear-field', 'open-lid', 'close-lid', 'lock-out', 'unlock', 'breaker-on'] as const;

/** Actions that have a sentence of their own, whichever part they are done on; the others have that of their kind. */
export const REASONED: readonly string[] = [
  ...READIES,
  ...['ask-danger', 'ask-history', 'ask-use', 'ask-hum', 'ask-smell', 'ask-drains', 'ask-breakers'],
  ...['guide-silence', 'guide-reset', 'guide-watch', 'decide-close', 'decide-visit'],
  ...['look-at-traps', 'look-into-clean-out', 'look-at-tees', 'look-at-risers', 'look-into-aeration'],
  ...[
    'watch-feed',
    'look-at-disinfectant',
    'look-at-ultraviolet',
    'look-into-pump-tank',
    'lift-float',
    'look-at-splices',
  ],
  ...['filter-pressures', 'open-disc-filter', 'walk-field'],
  ...['read-panel', 'read-timer', 'read-counters', 'press-test', 'look-into-panel', 'advance-timer', 'set-timer'],
  ...['selector-hand', 'selector-off', 'selector-auto', 'reset-panel', 'pump-volts', 'winding-ohms', 'amps-in-hand'],
  ...['test-capacitor', 'insulation-test', 'compressor-volts'],
  ...['listen-compressor', 'feel-compressor', 'look-at-outlet', 'look-at-intake-filter', 'follow-air-line'],
  ...['tee-pressure', 'dead-head-compressor', 'soap-air-line', 'test-air-switch', 'open-air-switch'],
  ...['state-cause', 'write-record', 'tell-household', 'leave-site'],
];

export function reasonFor(session: CallSession, def: ActionDef): Message {
  const id = baseOf(def);
  const proof = isMended(session) ? proofBy(def.id) : undefined;
  if (proof === 'watched' && session.service.person.facts.selector?.value === 'hand') return say('guide.drawing-down');
  if (proof) return say('guide.proof', { proof: say(`proof.${proof}`) });
  return say(REASONED.includes(id) ? `guide.${id}` : `guide.kind.${def.group}`);
}

/** A question to oneself before a check that looks for the cause: explaining a step to oneself is what carries over. */
export function questionBefore(session: CallSession, def: ActionDef): Message | undefined {
  if (!session.service.person.onSite || session.cause || (READIES as readonly string[]).includes(baseOf(def)))
    return undefined;
  return def.group === 'look' || def.group === 'measure' || def.group === 'operate'
    ? say(`guide.think.${def.group}`)
    : undefined;
}

function baseOf({ id }: ActionDef): string {
  return id.split(':')[0] ?? id;
}

/** Whether something was mended on site. */
export function isMended(session: CallSession): boolean {
  return session.done.some((d) => d.def.place !== 'phone' && isMend(d));
}
