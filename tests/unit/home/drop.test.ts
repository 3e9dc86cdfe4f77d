/** One flush on its way, against what textbooks on tracer studies say of any works. */
import { describe, expect, it } from 'vitest';
import { drained } from '../../../src/calls/drained.ts';
import { DROP_d, DROP_PLACES, type DropLook, followDrop } from '../../../src/home/drop.ts';
import { countsOf, HUNDRED, placesOf } from '../../../src/home/hundred.ts';
import { householdSource, steadyWeather } from '../../../src/plant/index.ts';
import { MARK_PLACES } from '../../../src/plant/tracer.ts';
import { readout, Unit } from '../../../src/unit/index.ts';
import { DAY, family, u1 } from '../units.ts';

const SEED = 1;
/** Share of the flush that the line's 17 L can hold while the tank has hardly any of it. */
const LINE = 1e-3;
const drop = drained(followDrop({ spec: u1(), household: family(4), season: 'mild', seed: SEED }));
const FLUSHED = 3 * DAY + drop.clock_s;

/** The same property without a mark: its mean inflow, m3/s, and what the trash tank and all its chambers hold, m3. */
function works() {
  const spec = u1();
  const unit = new Unit({
    spec,
    source: householdSource(family(4), SEED),
    faults: [],
    seed: SEED,
    weather: steadyWeather(20),
  });
  const start = readout(unit, 0).drawn_m3;
  const all: number[] = [];
  const trash: { t: number; drawn_m3: number; held_m3: number }[] = [];
  for (let t = FLUSHED; t < FLUSHED + DROP_d * DAY; t += 3600) {
    unit.advance(t);
    const now = readout(unit, t);
    const held = unit.works.volumes(unit.stateAt(t, new Float64Array(unit.y.length)), new Float64Array(5));
    trash.push({ t: t - FLUSHED, drawn_m3: now.drawn_m3 - start, held_m3: held[0] ?? 0 });
    all.push(held.reduce((sum, v) => sum + v, 0));
  }
  const [first, last] = [trash[0], trash.at(-1)];
  if (!first || !last) throw new Error('nothing was looked at');
  return {
    flow: (last.drawn_m3 - first.drawn_m3) / (last.t - first.t),
    held_m3: all.reduce((sum, v) => sum + v, 0) / all.length,
    trash: trash.map((one) => ({ ...one, through: (one.drawn_m3 - first.drawn_m3) / one.held_m3 })),
  };
}

const sum = (share: DropLook['share']) => MARK_PLACES.reduce((all, place) => all + share[place], 0);

describe('the water of one flush', () => {
  it('is somewhere, all of it, at every look', () => {
    for (const { share } of drop.looks) expect(sum(share)).toBeCloseTo(1, 9);
  });

  it('begins in the trash tank and comes to the field, never back', () => {
    expect(drop.looks[0]?.share.trash).toBeGreaterThan(0.99);
    const onField = drop.looks.map(({ share }) => share.field);
    // But for what stands in the line to the field and runs back after a dose.
    for (let i = 1; i < onField.length; i++) expect(onField[i]).toBeGreaterThan((onField[i - 1] ?? 0) - LINE);
    expect(onField.at(-1)).toBeGreaterThan(0.98);
  });

  /** Source: Danckwerts 1953 (Chem. Eng. Sci. 2:1, from memory): the mean stay of a pulse is volume over flow, however it is mixed. */
  it('stays on the mean as long as what is held divided by the flow', () => {
    const { flow, held_m3 } = works();
    const stay = DROP_PLACES.reduce((all, place) => all + drop.stay_s[place], 0);
    // The flow of a household comes and goes; a steady one would give the theorem to the digit.
    expect(Math.abs(stay / (held_m3 / flow) - 1)).toBeLessThan(0.1);
  });

  /** Source: any reactor text: a mixed tank holds exp(-1) = 0.368 of a pulse once its own volume has gone through. */
  it('is down to a third in the trash tank once its volume has gone through', () => {
    const turned = works().trash.find(({ through }) => through >= 1);
    const look = drop.looks.find(({ since_s }) => since_s >= (turned?.t ?? Number.NaN));
    expect(look?.share.trash).toBeCloseTo(Math.exp(-1), 1);
  });

  it('reaches the field in part, then by half, then nearly whole', () => {
    const { first = 0, half = 0, most = 0 } = drop.reached_s;
    expect(0 < first && first < half && half < most).toBe(true);
  });
});

describe('the dirt that came with it', () => {
  const left = (id: 'cbod5_mgL' | 'solids_mgL' | 'kjeldahl_mgL', place: 'trash' | 'clarifier' | 'pump') =>
    drop.dirt[place][id] / drop.dirt.house[id];

  /** Source: texts on septic tanks, from memory: they keep some 30 to 50 % of the BOD and 50 to 70 % of the solids. */
  it('is kept by the trash tank in part', () => {
    expect(left('cbod5_mgL', 'trash')).toBeGreaterThan(0.45);
    expect(left('cbod5_mgL', 'trash')).toBeLessThan(0.75);
    expect(left('solids_mgL', 'trash')).toBeGreaterThan(0.25);
    expect(left('solids_mgL', 'trash')).toBeLessThan(0.55);
  });

  /** Source: NSF/ANSI 40 class I as a month's mean: 25 mg/L of CBOD5 and 30 of solids. */
  it('is under what a works of class I may let go', () => {
    expect(drop.dirt.pump.cbod5_mgL).toBeLessThan(25);
    expect(drop.dirt.pump.solids_mgL).toBeLessThan(30);
  });

  it('loses its germs at disinfection and not before', () => {
    const { clarifier, riser } = drop.dirt;
    expect(clarifier.coliform_per100mL).toBeGreaterThan(1000);
    expect(riser.coliform_per100mL).toBeLessThan(clarifier.coliform_per100mL / 100);
  });
});

describe('a hundred drops', () => {
  it('are as many in each place as its share says, to a drop', () => {
    for (const { share } of drop.looks) {
      expect(placesOf(share)).toHaveLength(HUNDRED);
      const counts = countsOf(share);
      for (const place of MARK_PLACES) expect(Math.abs(counts[place] - HUNDRED * share[place])).toBeLessThanOrEqual(1);
    }
  });

  it('only go on: no drop that has reached the field leaves it', () => {
    let there = 0;
    for (const { share } of drop.looks) {
      const places = placesOf(share);
      expect(places.slice(0, there).every((place) => place === 'field')).toBe(true);
      there = places.filter((place) => place === 'field').length;
    }
  });
});
