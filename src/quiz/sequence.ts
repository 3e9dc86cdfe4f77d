/** Things to be put in sequence: some of a whole sequence, shown out of order. */
import { say } from '../service/message.ts';
import { type Draws, untilFair } from './draws.ts';
import type { Option, Ordering } from './drill.ts';
import type { Skill } from './topics.ts';

const FEWEST = 4;
const MOST = 6;

/** `whole` is the sequence, first to last, by the ends of `drill.<skill>.` ids; `why` texts say what puts each there. */
export function ordering(draws: Draws, skill: Skill, whole: readonly string[]): Ordering {
  const count = draws.whole(Math.min(FEWEST, whole.length), Math.min(MOST, whole.length));
  const taken = draws.some(whole, count);
  const right = whole.filter((id) => taken.includes(id));
  const shown = untilFair(() => {
    const mixed = draws.some(right);
    return mixed.every((id, i) => id === right[i]) ? undefined : mixed;
  });
  const item = (id: string): Option => ({
    id,
    label: say(`drill.${skill}.${id}`),
    why: say('drill.two', { a: say(`drill.${skill}.why.${id}`), b: say(`drill.${skill}.next`) }),
  });
  return { kind: 'order', items: shown.map(item), right, whole: say(`drill.${skill}.whole`) };
}
