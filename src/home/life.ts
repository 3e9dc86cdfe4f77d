/** A property lived through hour by hour: what is read of it for a household. */
import { readout, Unit, type UnitSetup } from '../unit/index.ts';
import { QUANTITIES, QUANTITY_IDS, type QuantityId } from './quantities.ts';
import { SIGN_IDS, SIGNS, type SignId } from './signs.ts';

export interface Life {
  /** Instants of the looks, s from the first midnight. */
  readonly at_s: readonly number[];
  readonly values: Readonly<Record<QuantityId, readonly number[]>>;
  readonly signs: Readonly<Record<SignId, readonly boolean[]>>;
  /** Water that came from the house and out of the ground by then, m3. */
  readonly taken_m3: readonly number[];
}

const DAY_s = 86_400;

/** Lives to the end, one look every so many seconds, and stops to tell after each day. */
export function* lived(setup: UnitSetup, end_s: number, every_s: number): Generator<void, Life> {
  const unit = new Unit(setup);
  const at_s: number[] = [];
  const taken_m3: number[] = [];
  const values: Record<QuantityId, number[]> = { oxygen: [], solids: [], food: [], chlorine: [], tank: [], seal: [] };
  const signs = Object.fromEntries(SIGN_IDS.map((id) => [id, []])) as unknown as Record<SignId, boolean[]>;
  let before = readout(unit, 0);
  for (let at = 0; at <= end_s; at += every_s) {
    unit.advance(at);
    const now = readout(unit, at);
    at_s.push(at);
    taken_m3.push(now.drawn_m3 + now.seeped_m3);
    for (const id of QUANTITY_IDS) values[id].push(QUANTITIES[id].of(now));
    for (const id of SIGN_IDS) signs[id].push(SIGNS[id](now, before, setup.spec));
    before = now;
    if (at % DAY_s === 0) yield;
  }
  return { at_s, values, signs, taken_m3 };
}
