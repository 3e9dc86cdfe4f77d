/** What months do to a unit: sediment, sludge that bulks, rises or fills the trash tank, seasons, storms, dry traps. */
import { describe, expect, it } from 'vitest';
import { shippedClimates } from '../../src/calls/climates.ts';
import { balance } from '../../src/plant/balance.ts';
import { ASM, COMPARTMENTS, captured, GAUGES, householdSource, listSource, weatherOf } from '../../src/plant/index.ts';
import { readout, Unit, type UnitFault } from '../../src/unit/index.ts';
import { DAY, family, fault, HOUR, lived, setupOf } from './units.ts';

const NO_AIR = fault('compressor-stopped', {
  control: { starts: ['compressor.stops'], ends: ['compressor.mended'] },
});

function after(days: number, unit: Unit): ReturnType<typeof readout> {
  unit.cutAt(days * DAY);
  return readout(unit, unit.t);
}

/** A unit in the valley's weather from 1 January on. */
function inValley(faults: readonly UnitFault[] = [], seed = 7): Unit {
  const climate = shippedClimates().get('ridge');
  if (!climate) throw new Error('no climate "ridge"');
  return new Unit(setupOf(householdSource(family(3), seed), faults, { weather: weatherOf(climate, seed, 1) }));
}

describe('the pump tank’s floor', () => {
  /** Common practice, no source: sediment is averaged over three spots, since the pump stirs it; 4 to 5 in here, 0 there. */
  it('has sediment that differs by spot: most at the inlet, least by the pump', () => {
    const { sediment_m } = after(120, new Unit(lived(3, 42)));
    const { inlet, middle, pump, far } = sediment_m;
    expect(inlet).toBeGreaterThan(2 * middle);
    expect(far).toBeGreaterThan(middle);
    expect(middle).toBeGreaterThan(3 * pump);
  });

  it('rises by the months, some inches a year and no more', () => {
    const unit = new Unit(lived(3, 42));
    const mean = (at: ReturnType<typeof readout>) =>
      (at.sediment_m.inlet + at.sediment_m.middle + at.sediment_m.pump + at.sediment_m.far) / 4;
    const first = mean(after(60, unit));
    const year = ((mean(after(240, unit)) - first) * 365) / 180;
    expect(year).toBeGreaterThan(0.01);
    expect(year).toBeLessThan(0.15);
  });
});

describe('sludge', () => {
  /** Bulking: an index over 150 mL/g (Standard Methods; Metcalf and Eddy, from memory). */
  it('that has long been short of air settles badly, and well again weeks after the repair', () => {
    const unit = new Unit(lived(3, 42, [NO_AIR]));
    const bad = after(25, unit).liquor.index_mLg;
    expect(bad).toBeGreaterThan(150);
    unit.mend('compressor-stopped');
    expect(after(65, unit).liquor.index_mLg).toBeLessThan(120);
  });

  it('that bulks stands higher in the clarifier, as the blanket tells', () => {
    const bulking = fault('bulking', { plant: { volumeIndex: 4 } });
    const high = after(5.4, new Unit(lived(5, 42, [bulking]))).blanket_m;
    const low = after(5.4, new Unit(lived(5, 42))).blanket_m;
    expect(low).toBeGreaterThan(0.1);
    expect(high).toBeGreaterThan(low + 0.05);
  });

  it('that bulks goes over with the water, and the chamber is left with less of it', () => {
    const bulking = fault('bulking', { plant: { volumeIndex: 4 } });
    const bad = new Unit(lived(5, 42, [bulking]));
    const good = new Unit(lived(5, 42));
    const day = 5 + 9 / 24;
    expect(after(day, bad).water.clarifier.solids_mgL).toBeGreaterThan(
      1.3 * after(day, good).water.clarifier.solids_mgL,
    );
    expect(after(40, bad).water.aeration.solids_mgL).toBeLessThan(0.75 * after(40, good).water.aeration.solids_mgL);
  });

  /**
   * Common practice, no source: over 6 mg/L of nitrate, an hour without oxygen in the blanket, and it rises. Air stops in
   * the night, so the nitrate is still there when the oxygen is gone.
   */
  it('that stands without oxygen over nitrate rises, until the nitrate is gone', () => {
    const unit = new Unit(lived(3, 42));
    unit.cutAt(20 * DAY);
    const bottom = () => unit.passage.layer(unit.y, COMPARTMENTS - 1);
    unit.send('compressor.stops');
    let rose = 0;
    let nitrateThen = 0;
    for (let hour = 1; hour <= 96; hour++) {
      unit.cutAt(20 * DAY + hour * HOUR);
      if ((unit.y[GAUGES.gassing_h] as number) <= 1) continue;
      rose ||= hour;
      if (rose === hour) nitrateThen = bottom()[ASM.nitrate] as number;
    }
    expect(rose).toBeGreaterThan(1);
    expect(nitrateThen).toBeGreaterThan(6);
    expect(bottom()[ASM.nitrate]).toBeLessThan(6);
    expect(unit.y[GAUGES.gassing_h]).toBeLessThan(1);
  });

  /** Solids grow until they are removed: mixed liquor gains for as long as nobody pumps (its inert part only gathers). */
  it('in the aeration chamber grows month by month', () => {
    const unit = new Unit(lived(3, 42));
    const grown = [30, 90, 150].map((day) => after(day, unit).water.aeration.solids_mgL);
    expect(grown[1]).toBeGreaterThan(grown[0] as number);
    expect(grown[2]).toBeGreaterThan(grown[1] as number);
  });

  it('in a trash tank that fills up leaves less room, and less is kept', () => {
    const young = after(10, new Unit({ ...lived(5, 42), sludgeAge_y: 0.5 }));
    const old = after(10, new Unit({ ...lived(5, 42), sludgeAge_y: 6 }));
    expect(old.trashSludge_m).toBeGreaterThan(young.trashSludge_m);
    expect(old.water.trash.solids_mgL).toBeGreaterThan(1.03 * young.water.trash.solids_mgL);
    expect(captured(60, 0.65)).toBeLessThan(captured(2000, 0.65));
  });

  it('and grease: what is poured in floats in the trash tank, some goes on', () => {
    const grease = fault('grease', { plant: { grease_gd: 400 } });
    const with_ = after(20, new Unit(lived(3, 42, [grease])));
    const without = after(20, new Unit(lived(3, 42)));
    expect(with_.trashScum_m).toBeGreaterThan(without.trashScum_m + 0.005);
    expect(with_.water.trash.cbod5_mgL).toBeGreaterThan(1.2 * without.water.trash.cbod5_mgL);
  });
});

describe('a year in the valley', () => {
  it('is colder in winter than in summer, and nitrifies less well', () => {
    const unit = inValley();
    const winter = after(45, unit);
    const summer = after(220, unit);
    expect(unit.weather.temperature_C(45 * DAY)).toBeLessThan(unit.weather.temperature_C(220 * DAY) - 5);
    expect(winter.water.aeration.ammonia_mgL).toBeGreaterThan(summer.water.aeration.ammonia_mgL);
    expect(winter.oxygen_mgL).toBeGreaterThan(summer.oxygen_mgL);
  });

  /** A tank whose lid lets in the rain of 40 m2: storms bring water that no fixture drew, and thinner liquor. */
  it('brings storms into a leaking tank, and every drop is accounted for with all else (1e-9)', () => {
    const leak = fault('storm-infiltration', { plant: { seepage_m2: 40 } });
    const unit = inValley([leak]);
    const start = unit.y.slice();
    unit.cutAt(50 * DAY);
    unit.send('supply.fails');
    unit.cutAt(52 * DAY);
    unit.send('supply.returns');
    const end = after(120, unit);
    expect(end.seeped_m3).toBeGreaterThan(3);
    for (const closure of Object.values(balance(start, unit.y))) expect(closure).toBeLessThan(1e-9);
  });

  it('dries the traps of a house that nobody lives in, and water seals them again', () => {
    const back = { fixture: 'tap', start_s: 60 * DAY, end_s: 60 * DAY + 30, flow_m3s: 1e-4 };
    const unit = new Unit(setupOf(listSource([back])));
    expect(after(10, unit).sensed.indoors.kind).toBe('none');
    expect(after(59, unit).sensed.indoors.kind).toBe('sewer-air');
    expect(after(61, unit).sensed.indoors.kind).toBe('none');
  });
});

describe('fouled diffusers', () => {
  /** Published fouling factors go down to 0.65; a clogged membrane takes more pressure for less air. */
  it('raise the pressure, take air, and leave less oxygen', () => {
    const fouled = fault('diffuser-fouled', { plant: { diffuserLoss: 8, transfer: 0.65 } });
    const bad = after(10.4, new Unit(lived(5, 42, [fouled])));
    const good = after(10.4, new Unit(lived(5, 42)));
    expect(bad.airPressure_kPa).toBeGreaterThan(good.airPressure_kPa + 2);
    expect(bad.flows.air.diffuser_Lmin).toBeLessThan(0.9 * good.flows.air.diffuser_Lmin);
    expect(bad.oxygen_mgL).toBeLessThan(good.oxygen_mgL - 0.5);
  });
});

describe('what is seen and smelt of it', () => {
  it('is a healthy brown with a little foam and clear effluent while all is well', () => {
    const { sensed } = after(30, new Unit(lived(3, 42)));
    expect(sensed).toMatchObject({
      liquor: 'chocolate-brown',
      effluent: 'clear',
      foam: { kind: 'crisp-white' },
      outdoors: { kind: 'none' },
      indoors: { kind: 'none' },
    });
    expect(sensed.bubbles).toBeGreaterThan(0.9);
  });

  /** Published clock: smell and greying 12 to 24 h after the air is gone, black after that. */
  it('turns grey and then black, still and foul, within a day or two without air', () => {
    const unit = new Unit(lived(3, 42));
    unit.cutAt(20 * DAY);
    unit.send('compressor.stops');
    const smelt = [];
    for (let hour = 2; hour <= 48; hour += 2) {
      unit.cutAt(20 * DAY + hour * HOUR);
      if (readout(unit, unit.t).sensed.outdoors.kind === 'rotten-eggs') smelt.push(hour);
    }
    const end = readout(unit, unit.t).sensed;
    expect(smelt[0]).toBeGreaterThanOrEqual(12);
    expect(smelt[0]).toBeLessThanOrEqual(24);
    expect(end).toMatchObject({ liquor: 'black', foam: { kind: 'none' }, bubbles: 0 });
  });
});
