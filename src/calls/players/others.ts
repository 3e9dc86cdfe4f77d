/** Three people nobody should become: one only resets, one replaces parts until it is quiet, one does anything. */
import { PLACED_FAULTS } from '../../faults/index.ts';
import { draw } from '../../plant/index.ts';
import { ACTIONS, type ActionDef, fits } from '../../service/index.ts';
import type { CallSession } from '../session.ts';
import { Hand } from './hand.ts';
import { closeByPhone, leave, nameCause } from './site.ts';

/** Resets once by phone in the right order and closes whatever the lamp does. */
export function playResetOnly(session: CallSession): void {
  const hand = new Hand(session);
  for (const id of ['ask-danger', 'ask-history', 'guide-silence', 'ask-breakers', 'guide-reset', 'guide-watch'])
    hand.do(id);
  closeByPhone(hand);
}

/** Parts renewed on a visit before even this person goes home. */
const MOST_PARTS = 12;

/** Renews one part after the other, the cheapest first, until the lamp stays dark; says it was the last one. */
export function playPartsSwapper(session: CallSession): void {
  const hand = new Hand(session);
  for (const id of ['ask-danger', 'guide-silence', 'ask-breakers', 'guide-reset', 'guide-watch']) hand.do(id);
  const parts = partsByPrice(session);
  const load = [...new Set(parts.flatMap((p) => p.load ?? []))].slice(0, 4);
  hand.do('decide-visit', { urgency: 'before-dosing', load });
  hand.do('make-safe');
  let last: ActionDef | undefined;
  for (const part of parts.slice(0, MOST_PARTS)) {
    if (!hand.doSafely(part.id)) continue;
    last = part;
    hand.do('reset-panel');
    hand.do('watch-panel');
    if (session.service.person.facts.lamp?.value === 'dark') break;
  }
  const blamed = [...PLACED_FAULTS.values()].find(
    (f) => last && f.mendedBy.includes(last.id) && session.definition(last.id),
  );
  if (blamed) nameCause(hand, [blamed.key], []);
  leave(hand, { lines: ['mended', 'parts'] });
}

function partsByPrice(session: CallSession): readonly ActionDef[] {
  return ACTIONS.filter((a) => a.group === 'mend' && a.cost_usd !== undefined && fits(a, session.prepared.spec)).sort(
    (a, b) => (a.cost_usd ?? 0) - (b.cost_usd ?? 0),
  );
}

const MOST_ACTS = 60;

/** Anything that can be done, one after the other. */
export function playRandom(session: CallSession, seed: number): void {
  const hand = new Hand(session);
  const acts = ACTIONS.filter((a) => fits(a, session.prepared.spec));
  for (let i = 0; i < MOST_ACTS && !hand.ended; i++) {
    const def = acts[Math.floor(draw(seed, 'random-person', i) * acts.length)];
    if (def) hand.do(def.id, answers(def, seed, i));
  }
  if (!hand.ended) closeByPhone(hand);
  if (!hand.ended) leave(hand, { lines: [] });
}

/** A form filled in by chance. */
function answers(def: ActionDef, seed: number, i: number): Record<string, string[] | string> | undefined {
  if (!def.form) return undefined;
  return Object.fromEntries(
    def.form.map((field, f) => {
      const option = field.options[Math.floor(draw(seed, `random-person/${f}`, i) * field.options.length)]?.id ?? '';
      return [field.id, field.kind === 'one' ? option : [option]];
    }),
  );
}
