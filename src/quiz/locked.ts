/** Four jobs: before which must a circuit be locked out, as the service's own rules have it? */
import type { ActionDef } from '../service/action.ts';
import { ACTIONS, fits } from '../service/catalogue.ts';
import { say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { unitRows } from './sheet.ts';

const OTHERS = 3;
/** Where a hand that needs no lock-out has nothing to do with wires. */
const DRY: readonly string[] = ['house', 'clean-out', 'trash-tank', 'spray-field', 'aeration', 'clarifier'];

/** The circuit that a job wants dead; 'all' for every one. */
function circuitOf(def: ActionDef): string | undefined {
  return typeof def.lockOut === 'string' ? def.lockOut : undefined;
}

function jobs(spec: UnitSpec): readonly ActionDef[] {
  return ACTIONS.filter((def) => def.place !== 'phone' && fits(def, spec) && typeof def.lockOut !== 'function');
}

/** Jobs that are the same but for the part are asked for once. */
function isLeast({ id }: ActionDef): boolean {
  return !id.includes(':');
}

export const lockedDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'locked');
  const all = jobs(spec).filter(isLeast);
  const chosen = draws.one(all.filter((def) => def.lockOut !== undefined));
  const free = all.filter(
    ({ lockOut, group, place }) =>
      lockOut === undefined && (group === 'look' || group === 'measure') && DRY.includes(place),
  );
  const circuit = say(`drill.locked.circuit.${circuitOf(chosen)}`);
  const next = say('drill.locked.next');
  const values = { job: chosen.label, circuit };
  const option = (def: ActionDef): Option => ({
    id: def.id,
    label: def.label,
    why:
      def === chosen
        ? say('drill.two', { a: say('drill.locked.shown', values), b: next })
        : say('drill.three', {
            a: say('drill.locked.free', { job: def.label }),
            b: say('drill.locked.shown', values),
            c: next,
          }),
  });
  return {
    skill: 'locked',
    seed,
    prompt: say('drill.locked.ask'),
    figure: { kind: 'sheet', rows: unitRows(spec) },
    ask: { kind: 'choice', right: chosen.id, options: draws.some([chosen, ...draws.some(free, OTHERS)]).map(option) },
  };
};
