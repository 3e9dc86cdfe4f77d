/** What faults of the pump, its line and its field do to the water: against closed forms worked from the handbook laws. */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { placedFault } from '../../src/faults/index.ts';
import { balance } from '../../src/plant/balance.ts';
import {
  dischargeLine,
  GALLON_m3,
  type LineCondition,
  linePressures,
  lineState,
  listSource,
  nozzlePressure,
  type PlantCondition,
  pumpCurrentShare,
  pumpedFlow,
  SOUND,
  siphonFlow,
  WATER,
} from '../../src/plant/index.ts';
import { readout, Unit, type UnitFault, type UnitSpec } from '../../src/unit/index.ts';
import { DAY, first, HOUR, instants, lived, made, setupOf } from './units.ts';

const GPM_Ls = (GALLON_m3 / 60) * 1000;
const PSI_kPa = 6.894757;
const G = 9.81;
const WATER_kgm3 = 998.2;
/** The pump tank half a metre deep: 2 m under the sprinklers of U1. */
const LEVEL_m = -1.9;

function shipped(id: string): UnitSpec {
  const spec = shippedLibrary().units.get(id);
  if (!spec) throw new Error(`no unit ${id}`);
  return spec;
}

const U1 = shipped('u1').plant;
const U3 = shipped('u3').plant;
const line1 = dischargeLine(U1.effluentPump, U1.discharge);
const line3 = dischargeLine(U3.effluentPump, U3.discharge);

const changed = (change: Partial<LineCondition>): PlantCondition => ({ ...SOUND, ...change });
const flow1 = (change: Partial<LineCondition>) => pumpedFlow(lineState(line1, changed(change)), LEVEL_m);
const flow3 = (change: Partial<LineCondition>) => pumpedFlow(lineState(line3, changed(change)), LEVEL_m);

function within(observed: number, expected: number, share: number): void {
  expect(Math.abs(observed / expected - 1)).toBeLessThan(share);
}

/** Hazen-Williams, SI, of 30 m of 1 in pipe with C 150; Q in L/s. */
function friction_m(q: number): number {
  return (10.67 * 30 * (q / 1000) ** 1.852) / (150 ** 1.852 * 0.0266446 ** 4.87);
}

/** Head that drives Q (L/s) through so many round openings: Q = n Cd A sqrt(2 g h). */
function openings_m(q: number, n: number, bore_m: number, cd: number): number {
  const speed = q / 1000 / (n * cd * (Math.PI / 4) * bore_m ** 2);
  return speed ** 2 / (2 * G);
}

/** The flow at which heads balance: what the pump gives less all losses falls with Q, so halving finds it. */
function balanced(head_m: (q: number) => number): number {
  let [low, high] = [0, 5];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (head_m(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Head left over on U1: H = 40 - 10 Q2, 2 m lift, friction, a clean filter of 0.05 Q2. */
const spare1 = (q: number, shutoff_m = 40, pump = 10) => shutoff_m - pump * q * q - 2 - friction_m(q) - 0.05 * q * q;

describe('a sound line', () => {
  it('is, term by term, the line of the data sheet', () => {
    expect(lineState(line1, SOUND)).toMatchObject({ ...line1, filter: line1.cleanFilter, check: 0, siphons: 0 });
    within(flow1({}) / GPM_Ls, 13.34, 0.002);
  });
});

/** Flow by hand: the nozzles' own law, Hazen-Williams and the pump's curve, balanced by halving. Within 1e-3. */
describe('openings of the field', () => {
  it('one of three nozzles clogged: less flow, more pressure at the others', () => {
    const state = lineState(line1, changed({ openingsLeft: 2 / 3 }));
    const q = pumpedFlow(state, LEVEL_m);
    within(
      q,
      balanced((x) => spare1(x) - openings_m(x, 2, 0.00396875, 0.967)),
      1e-3,
    );
    const psi = nozzlePressure(state, q) / PSI_kPa;
    console.info(
      `two of three nozzles: ${(q / GPM_Ls).toFixed(2)} gpm at ${psi.toFixed(1)} psi (three: 13.34 at 39.9)`,
    );
    expect(psi).toBeGreaterThan(45);
    // Each nozzle that is left throws with the square root of its pressure.
    within(q / 2 / (flow1({}) / 3), Math.sqrt(psi / 39.9), 2e-3);
  });

  it('one zone of two shut is half of the emitters: U3', () => {
    const spare = (q: number) => 20 - 20 * q * q - 1.75 - friction_m(q) - 0.05 * q * q;
    within(
      flow3({ zonesOpen: 0.5 }),
      balanced((x) => spare(x) - openings_m(x, 300, 0.0003, 0.6)),
      1e-3,
    );
    expect(flow3({ zonesOpen: 0.5 })).toBe(flow3({ openingsLeft: 0.5 }));
  });

  it('a head off its half-inch riser runs beside the nozzles, all head turned into speed', () => {
    const q = flow1({ fieldBreak_m: 0.0158 });
    const perRoot = (n: number, bore_m: number, cd: number) => 1 / Math.sqrt(openings_m(1, n, bore_m, cd));
    const passes = perRoot(3, 0.00396875, 0.967) + perRoot(1, 0.0158, 1);
    within(
      q,
      balanced((x) => spare1(x) - (x / passes) ** 2),
      1e-3,
    );
    const psi = nozzlePressure(lineState(line1, changed({ fieldBreak_m: 0.0158 })), q) / PSI_kPa;
    console.info(`a head broken off: ${(q / GPM_Ls).toFixed(2)} gpm, ${psi.toFixed(1)} psi left at the others`);
    expect(psi).toBeLessThan(5);
  });
});

describe('a buried line broken through', () => {
  /** Without the nozzles: pump curve = lift + friction + velocity head of the open pipe. The nozzles' rest takes 1 % at most. */
  it('passes what pump, lift and pipe allow', () => {
    const q = flow1({ lineBreak_m: 0.0266446 });
    within(
      q,
      balanced((x) => spare1(x) - openings_m(x, 1, 0.0266446, 1)),
      0.01,
    );
    console.info(`broken line: ${(q / GPM_Ls).toFixed(2)} gpm`);
    expect(q).toBeGreaterThan(1.9 * flow1({}));
  });
});

describe('the pump', () => {
  /** Affinity laws (pump handbooks): at a smaller radius or speed Q goes with r, H with r2; so on a line without lift. */
  it('worn follows the affinity laws on a line of squares alone (1e-9)', () => {
    const flat = { ...line1, friction: 0 };
    const at = (pumpHead: number) => pumpedFlow(lineState(flat, changed({ pumpHead })), flat.nozzleElevation_m);
    for (const r of [0.9, 0.6, 0.3]) within(at(r * r), r * at(1), 1e-9);
  });

  it('worn has less head against a shut valve, one that is choked has all of it', () => {
    const shut = (change: Partial<LineCondition>) => linePressures(lineState(line1, changed(change)), LEVEL_m, 1).shut;
    within(shut({}), (WATER_kgm3 * G * (40 - 1.9)) / 1000, 1e-9);
    within(shut({ pumpHead: 0.44 }), (WATER_kgm3 * G * (0.44 * 40 - 1.9)) / 1000, 1e-9);
    expect(shut({ pumpLoss: 60 })).toBe(shut({}));
  });

  it('choked: its curve is steeper, and the line balances there (1e-3)', () => {
    within(
      flow1({ pumpLoss: 20 }),
      balanced((x) => spare1(x, 40, 200) - openings_m(x, 3, 0.00396875, 0.967)),
      1e-3,
    );
  });

  it('full of air moves nothing', () => expect(flow1({ pumpHead: 0 })).toBe(0));

  /** Common practice: near the rated current is normal, low is a closed line, a worn pump or air, high a broken line. */
  it('draws by what it moves and lifts', () => {
    const share = (change: Partial<LineCondition>) => pumpCurrentShare(line1, changed(change).pumpHead, flow1(change));
    const [air, shut, worn, sound, broken] = [
      share({ pumpHead: 0 }),
      share({ checkFlow: 0.005 }),
      share({ pumpHead: 0.44 }),
      share({}),
      share({ lineBreak_m: 0.0266 }),
    ];
    console.info('shares of the rated current:', { air, shut, worn, sound, broken });
    expect(air).toBeLessThan(shut);
    expect(shut).toBeLessThan(worn);
    expect(worn).toBeLessThan(0.75);
    within(sound, 0.95, 0.01);
    expect(broken).toBeGreaterThan(1.1);
    expect(broken).toBeLessThan(1.25);
  });
});

describe('gauges along the line', () => {
  /** Energy along a line: what a gauge loses to the next is the loss between them. */
  it('a check valve stuck shut holds the head back under it, a clogged filter before itself', () => {
    const at = (change: Partial<LineCondition>) => linePressures(lineState(line1, changed(change)), LEVEL_m, 1);
    const shut = at({ checkFlow: 0.005 });
    expect(shut.pump / shut.shut).toBeGreaterThan(0.999);
    expect(shut.beforeFilter).toBeLessThan(0.02 * shut.pump);
    const clogged = at({ filterFlow: 0.4 });
    expect(clogged.beforeFilter).toBe(clogged.pump);
    expect(clogged.afterFilter).toBeLessThan(0.25 * clogged.beforeFilter);
  });

  it('sound: from filter to nozzle are the pipe’s friction and nozzles a decimetre over grade (1e-9)', () => {
    const state = lineState(line1, SOUND);
    const q = pumpedFlow(state, LEVEL_m);
    const after_m = (linePressures(state, LEVEL_m, 1).afterFilter * 1000) / (WATER_kgm3 * G);
    within(after_m, line1.friction * q ** 1.852 + 0.1 + line1.nozzles * q * q, 1e-9);
  });
});

function living(id: string, more: Partial<UnitFault> = {}): UnitFault {
  const { key, effect, severity } = placedFault(id);
  return { id: key, effect, severity, onset_s: 0, ramp_s: 0, present: 'always', ...more };
}

/** A unit of which nothing runs in, its pump tank as deep as at rest. */
function dry(id: string): Unit {
  return new Unit(setupOf(listSource([]), [living(id)]));
}

describe('after the pump has stopped', () => {
  /** Derived: 30 m of 1 in pipe (26.64 mm) hold 16.73 L, 7.4 mm of 2.25 m2. Within 1 %. */
  it('a line whose check valve stands open runs back, all it holds and no more', () => {
    const unit = dry('check-valve-stuck-open');
    unit.cutAt(12 * HOUR);
    unit.send('selector.hand');
    unit.cutAt(12 * HOUR + 60);
    unit.send('selector.off');
    const before = readout(unit, unit.t);
    expect(before.flows.returned).toBeGreaterThan(0);
    unit.cutAt(unit.t + 600);
    const after = readout(unit, unit.t);
    within(before.sprayed_m3 - after.sprayed_m3, (Math.PI / 4) * 0.0266446 ** 2 * 30, 0.01);
    within(after.pumpTank_m - before.pumpTank_m, 0.01673 / 2.25, 0.01);
    expect(after.flows.returned).toBeLessThan(1e-9);
  });

  it('a sound line gives nothing back', () => {
    const unit = new Unit(setupOf(listSource([])));
    unit.send('selector.hand');
    unit.cutAt(60);
    unit.send('selector.off');
    expect(readout(unit, unit.t).flows.returned).toBe(0);
  });

  it('the books close while it runs back every night', () => {
    const setup = lived(3, 42, [living('check-valve-stuck-open')]);
    const unit = new Unit(setup);
    const start = Float64Array.from(unit.y);
    let worst = 0;
    unit.observer = ({ y }) => {
      worst = Math.max(worst, ...Object.values(balance(start, y)));
    };
    unit.advance(4 * DAY);
    expect(instants(unit, 'pumpRuns.off').length).toBeGreaterThan(3);
    expect(worst).toBeLessThan(1e-9);
  });
});

describe('a siphon', () => {
  const state = lineState(line1, changed({ weepHole: 0, lowOutlet_m: 2.3 }));

  /** Head from the tank to the outlet = what pump, filter, pipe and a 10 mm hole (Cd 0.6) cost. Within 1e-3. */
  it('runs by the fall from the tank to its outlet', () => {
    for (const level of [-1, -1.5, -2]) {
      const spare = (q: number) => level + 2.3 - 10.05 * q * q - friction_m(q) - openings_m(q, 1, 0.01, 0.6);
      within(siphonFlow(state, level), balanced(spare), 1e-3);
    }
  });

  it('needs both an outlet lower than the water and a hole that lets no air in', () => {
    expect(siphonFlow(state, -2.31)).toBe(0);
    expect(lineState(line1, changed({ lowOutlet_m: 2.3 })).siphons).toBe(0);
    expect(lineState(line1, changed({ weepHole: 0 })).siphons).toBe(0);
  });

  /** Derived: dt = A dz / Q, summed over a hundred slices of the fall. Within 1 %. */
  it('draws the tank down as its flow says', () => {
    const unit = dry('siphoning');
    const level = () => readout(unit, unit.t).flows.pump_m;
    const [from, start] = [level(), unit.t];
    unit.cutAt(start + 600);
    const to = level();
    let seconds = 0;
    for (let i = 0; i < 100; i++) {
      const middle = from + ((i + 0.5) / 100) * (to - from);
      seconds += ((from - to) / 100) * (2.25 / (siphonFlow(state, middle) / 1000));
    }
    expect(from - to).toBeGreaterThan(0.02);
    within(seconds, 600, 0.01);
  });

  it('ends at the intake: the tank stays under its stop float, no dose is asked for, the water goes all the same', () => {
    const unit = new Unit(lived(3, 42, [living('siphoning')]));
    const start = Float64Array.from(unit.y);
    unit.advance(3 * DAY);
    const now = readout(unit, unit.t);
    expect(now.pumpTank_m).toBeGreaterThan(0.23);
    expect(now.pumpTank_m).toBeLessThan(0.25);
    expect(instants(unit, 'pumpRuns.on')).toEqual([]);
    expect(now.sprayed_m3).toBeGreaterThan(0.8 * now.drawn_m3);
    expect(Math.max(...Object.values(balance(start, unit.y)))).toBeLessThan(1e-9);
  });
});

describe('what the household gets of it', () => {
  const since = (id: string) => made(lived(4, 7, [living(id)]), 3 * DAY);

  it.each(['check-valve-stuck-shut', 'air-locked'])('%s: high water, in the end', (id) => {
    expect(first(since(id), 'lamp.on')).toBeLessThan(3 * DAY);
  });

  it.each([
    'impeller-worn',
    'weep-hole-blocked',
    'nozzle-clogged',
    'discharge-broken',
    'head-broken',
    'soil-saturated',
  ])('%s: no lamp, and the water goes', (id) => {
    const unit = since(id);
    expect(instants(unit, 'lamp.on')).toEqual([]);
    expect(unit.y[WATER.sprayed]).toBeGreaterThan(0.7);
  });

  it('a weak capacitor: the rotor stands at some starts and turns at others', () => {
    const spells = placedFault('capacitor-weak').spells ?? 'always';
    const unit = made(lived(4, 7, [living('capacitor-weak', { present: spells })]), 8 * DAY);
    expect(instants(unit, 'protector.hot').length).toBeGreaterThan(2);
    expect(instants(unit, 'pumpRuns.on').length).toBeGreaterThan(2);
  });
});

/** A head that just fails at some level is the stiffest case: flow ends there, and the steps must not. */
it('a pump that hardly lifts to the field is stepped through in Hand', () => {
  const barely = living('impeller-worn', { effect: { plant: { pumpHead: 0.0475 } }, severity: 1 });
  const unit = new Unit(lived(3, 42, [barely]));
  unit.send('selector.hand');
  unit.advance(DAY);
  const { flows, pumpTank_m } = readout(unit, unit.t);
  expect(flows.discharge).toBeGreaterThan(0);
  expect(pumpTank_m).toBeGreaterThan(0.5);
  expect(unit.derivatives).toBeLessThan(50_000);
});
