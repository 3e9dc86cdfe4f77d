/** Point at the chamber that a sample is from: a sound unit is run for some days, and a laboratory's numbers are read. */
import type { Sample } from '../plant/sample.ts';
import { quantity, say } from '../service/message.ts';
import { Unit } from '../unit/engine.ts';
import { readout } from '../unit/readout.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { ordinaryDays } from './ordinary.ts';

const CHAMBERS = ['trash-tank', 'aeration', 'clarifier', 'pump-tank'] as const;
type Chamber = (typeof CHAMBERS)[number];

/** The fourth day, every three hours. */
const FIRST_s = 3 * 86_400;
const APART_s = 3 * 3600;
const TIMES = 8;

type Water = Readonly<Record<Chamber, Sample>>;
const known = new WeakMap<UnitSpec, readonly Water[]>();

/** What stands in the chambers in the course of a day. */
function watersOf(spec: UnitSpec): readonly Water[] {
  const found = known.get(spec) ?? lived(spec);
  known.set(spec, found);
  return found;
}

function lived(spec: UnitSpec): readonly Water[] {
  const unit = new Unit({ ...ordinaryDays(spec), faults: [] });
  return Array.from({ length: TIMES }, (_, i) => {
    unit.advance(FIRST_s + i * APART_s);
    const { water } = readout(unit, unit.t);
    return { 'trash-tank': water.trash, aeration: water.aeration, clarifier: water.clarifier, 'pump-tank': water.pump };
  });
}

/** As a laboratory gives it: two figures. */
function twoFigures(value: number): number {
  return Number(value.toPrecision(2));
}

export const sampleDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'sample');
  const water = draws.one(watersOf(spec));
  const right = draws.one(CHAMBERS);
  const { solids_mgL, ammonia_mgL, oxygen_mgL, coliform_per100mL } = water[right];
  const milligrams = (value: number) => quantity('concentration_mgL', twoFigures(value));
  const shown = say(`drill.sample.shown.${right}`);
  const next = say('drill.sample.next');
  const option = (id: Chamber): Option => ({
    id,
    label: say('drill.option', { label: say(`part.${id}`) }),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.sample.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'sample',
    seed,
    prompt: say('drill.sample.ask', {
      solids: quantity('concentration_mgL', twoFigures(solids_mgL), solids_mgL < 10 ? 0.1 : 1),
      ammonia: milligrams(ammonia_mgL),
      oxygen: milligrams(oxygen_mgL),
      coliform: quantity('count', twoFigures(coliform_per100mL)),
    }),
    figure: { kind: 'plan', parts: CHAMBERS },
    ask: { kind: 'point', right, options: CHAMBERS.map(option) },
  };
};
