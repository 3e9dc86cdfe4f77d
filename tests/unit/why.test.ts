/** Why a number is what it is: the parts add up, and say what textbooks say of them. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CURVES } from '../../src/calls/curves.ts';
import { shippedLibrary } from '../../src/calls/index.ts';
import { placedFault } from '../../src/faults/index.ts';
import { householdSource, steadyWeather } from '../../src/plant/index.ts';
import { type Why, whysOf } from '../../src/scene/why.ts';
import type { WhyId } from '../../src/scene/why-ids.ts';
import { Unit } from '../../src/unit/index.ts';
import { DAY, family, HOUR } from './units.ts';

/** A property with faults of the catalogue from its first hour, by unit. */
function unitOf(id: string, faults: readonly string[] = []): Unit {
  const spec = shippedLibrary().units.get(id);
  if (!spec) throw new Error(`no unit ${id}`);
  return new Unit({
    spec,
    source: householdSource(family(4), 1),
    faults: faults.map((key) => {
      const { effect, severity } = placedFault(key);
      return { id: key, effect, severity, onset_s: HOUR, ramp_s: 0, present: 'always' as const };
    }),
    seed: 1,
    weather: steadyWeather(20),
  });
}

function whyOf(whys: readonly Why[], id: WhyId): Why {
  const found = whys.find((why) => why.id === id);
  if (!found) throw new Error(`nothing says why ${id}`);
  return found;
}

const sumOf = ({ parts }: Why) => parts.reduce((sum, { value, minus }) => sum + (minus ? -1 : 1) * value.value, 0);
const partOf = ({ parts }: Why, id: string) =>
  parts.find(({ label }) => label.id === `because.part.${id}`)?.value.value;

/** Looks at a unit every so often over two days. */
function* looks(unit: Unit, every_s = HOUR / 2): Generator<readonly Why[]> {
  for (let t = DAY; t < 3 * DAY; t += every_s) {
    unit.advance(t);
    yield whysOf(unit, t);
  }
}

describe.each(['u1', 'u2', 'u3'])('every number of %s', (id) => {
  it.each([[[]], [['line-split']], [['line-water-frozen']], [['disc-filter-clogged']]])(
    'is the sum of its parts, with faults %j',
    (faults) => {
      let sums = 0;
      for (const whys of looks(unitOf(id, faults))) {
        for (const why of whys) {
          if (why.parts.length === 0) continue;
          sums += 1;
          expect(sumOf(why), why.id).toBeCloseTo(why.value.value, 4);
          for (const { value, label } of why.parts) expect(value.value, label.id).toBeGreaterThanOrEqual(0);
        }
      }
      expect(sums).toBeGreaterThan(100);
    },
  );
});

describe('the air pressure', () => {
  const unit = unitOf('u1');
  unit.advance(DAY);
  const air = whyOf(whysOf(unit, DAY), 'air');

  /** Source: hydrostatics, 9.79 kPa a metre of water at 20 degC. */
  it('is mostly the water over the diffusers', () => {
    const depth_m = air.how.values?.d as { value: number };
    expect(partOf(air, 'air-depth')).toBeCloseTo(9.79 * depth_m.value, 2);
    expect(partOf(air, 'air-depth')).toBeGreaterThan(air.value.value / 2);
  });

  it('is told as falling, and as no sum, while the compressor stands', () => {
    const still = unitOf('u1', ['compressor-stopped']);
    still.advance(DAY);
    const why = whyOf(whysOf(still, DAY), 'air');
    expect(why.how.id).toBe('because.how.air-standing');
    expect(why.parts).toEqual([]);
  });
});

describe('the oxygen', () => {
  it('falls short of saturation by what is breathed, and by all of it without air', () => {
    const unit = unitOf('u1');
    unit.advance(DAY);
    const why = whyOf(whysOf(unit, DAY), 'oxygen');
    // Source: USGS tables, 9.09 mg/L at 20 degC, here with beta and the depth of the diffusers.
    expect(partOf(why, 'oxygen-full')).toBeGreaterThan(8.5);
    expect(partOf(why, 'oxygen-full')).toBeLessThan(9.6);
    const still = unitOf('u1', ['compressor-stopped']);
    still.advance(DAY);
    expect(whyOf(whysOf(still, DAY), 'oxygen').how.id).toBe('because.how.oxygen-none');
  });
});

describe('the pump', () => {
  it('is told of only while it runs, and loses more in a dirty filter', () => {
    const filterOf = (faults: readonly string[]) => {
      const running = [...looks(unitOf('u1', faults), 60)].filter((whys) => whys.some(({ id }) => id === 'head'));
      const first = running[0];
      if (!first) throw new Error('no dose');
      return partOf(whyOf(first, 'head'), 'head-filter') ?? 0;
    };
    expect(filterOf(['disc-filter-clogged'])).toBeGreaterThan(2 * filterOf([]));
    const unit = unitOf('u1');
    unit.advance(DAY + 12 * HOUR);
    expect(whysOf(unit, DAY + 12 * HOUR).map(({ id }) => id)).not.toContain('head');
  });
});

describe('the water that is stored', () => {
  const unit = unitOf('u1');
  unit.advance(2 * DAY);
  const whys = whysOf(unit, 2 * DAY);

  /** Source: a mole of chlorine to a mole of ammonia nitrogen, 70.9 g to 14.0 g. */
  it('says how much chlorine its ammonia can bind', () => {
    const { how } = whyOf(whys, 'residual');
    const { n, most } = how.values as unknown as { n: { value: number }; most: { value: number } };
    expect(most.value / n.value).toBeCloseTo(70.9 / 14.0, 1);
  });

  it('has its solids of what the liquor is made of', () => {
    const idsOf = (id: WhyId) => new Set(whyOf(whys, id).parts.map(({ label }) => label.id));
    expect(idsOf('solids-out')).toEqual(idsOf('liquor'));
  });

  it('says nothing of chlorine where a lamp disinfects', () => {
    const lamp = [...shippedLibrary().units.values()].find(({ plant }) => plant.disinfection.kind === 'ultraviolet');
    expect(lamp, 'a unit with a lamp ships').toBeDefined();
    const other = unitOf(lamp?.id ?? '');
    other.advance(DAY);
    expect(whysOf(other, DAY).map(({ id }) => id)).not.toContain('residual');
  });
});

describe('the stroke of the compressor', () => {
  it('is nearly whole where the line is open, and shorter where it holds against it', () => {
    const strokeOf = (faults: readonly string[]) => {
      const unit = unitOf('u1', faults);
      unit.advance(DAY);
      return whyOf(whysOf(unit, DAY), 'stroke').value.value;
    };
    expect(strokeOf(['line-split'])).toBeGreaterThan(0.85);
    expect(strokeOf([])).toBeLessThan(strokeOf(['line-split']));
    expect(strokeOf(['line-water-frozen'])).toBeLessThan(strokeOf([]));
  });
});

/** Of every figure that a curve or the card of a close-up tells, with everything open, what says why. */
const TOLD: Readonly<Record<string, WhyId>> = {
  ...{ airPressure_kPa: 'air', oxygen_mgL: 'oxygen', pumpTank_m: 'tank', residual_mgL: 'residual' },
  ...{ blanket_m: 'blanket', trashSludge_m: 'sludge', trashScum_m: 'scum' },
  ...{ 'plate.compressor.pressure': 'air', 'plate.compressor.air': 'air-flow' },
  ...{ 'plate.compressor.stroke': 'stroke', 'plate.compressor.dirt': 'intake' },
  ...{ 'plate.discs.share': 'passage', 'plate.discs.pressure': 'field', 'plate.discs.flow': 'flow' },
  ...{ 'plate.clarifier.level': 'aeration-level', 'plate.clarifier.height': 'blanket' },
  ...{ 'plate.clarifier.solids': 'clarified', 'plate.clarifier.rate': 'rise' },
  ...{ 'plate.core.scum': 'scum', 'plate.core.sludge': 'sludge', 'plate.jar.line': 'jar' },
};
/** Words, limits, and sums of what stands beside them. */
const NO_FIGURE = /\.(state|card|limit|together|share|cores)$/;

describe('every figure that is drawn', () => {
  it('of a curve says why', () => {
    for (const id of Object.keys(CURVES)) expect(TOLD[id], id).toBeDefined();
  });

  it('on the card of a close-up says why', () => {
    const files = ['compressorPlate', 'discsPlate', 'clarifierPlate', 'coreWords', 'jarPlate'];
    const told = files.flatMap((file) => {
      const text = readFileSync(`src/yard/${file}.ts`, 'utf8');
      return [...text.matchAll(/\['(plate\.[\w.]+)', /g)].flatMap(([, id]) => id ?? []);
    });
    expect(told.length).toBeGreaterThan(15);
    for (const id of told.filter((one) => one === 'plate.discs.share' || !NO_FIGURE.test(one))) {
      expect(TOLD[id], id).toBeDefined();
    }
  });

  it('is told of a unit that doses', () => {
    const dosing = [...looks(unitOf('u1'), 60)].find((whys) => whys.some(({ id }) => id === 'head'));
    const ids = new Set(dosing?.map(({ id }) => id));
    for (const id of Object.values(TOLD)) expect(ids.has(id), id).toBe(true);
  });
});

describe('the water in the clarifier', () => {
  it('rises by its flow over its surface', () => {
    const unit = unitOf('u1');
    unit.advance(DAY + 8 * HOUR);
    const why = whyOf(whysOf(unit, DAY + 8 * HOUR), 'rise');
    const { q, a } = why.how.values as unknown as { q: { value: number }; a: { value: number } };
    expect(why.value.value).toBeCloseTo((q.value * 3.6) / a.value, 9);
  });
});

describe('the blanket', () => {
  /** Source: a clarifier holds while what falls outpaces what rises (state point, any textbook). */
  it('lies low where the liquor falls faster than the flow rises', () => {
    const unit = unitOf('u1');
    unit.advance(2 * DAY);
    const { how } = whyOf(whysOf(unit, 2 * DAY), 'blanket');
    const { falls, up } = how.values as unknown as { falls: { value: number }; up: { value: number } };
    expect(falls.value).toBeGreaterThan(up.value);
  });
});
