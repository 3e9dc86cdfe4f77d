/** The air side against handbook tables, and what the low-air switch can and cannot see. */
import { describe, expect, it } from 'vitest';
import { shippedLibrary } from '../../src/calls/index.ts';
import { type AirPoint, deadHead, holeFlow, operatingPoint, SOUND, standingPressure } from '../../src/plant/index.ts';

const INCH = 0.0254;
const PSI_kPa = 6.894757;
const CFM_Lmin = 28.316847;
const u1 = shippedLibrary().units.get('u1');
if (!u1) throw new Error('no unit u1');
const { air } = u1.plant;
const DEPTH_m = 1.3;

function point(condition: Partial<typeof SOUND> = {}, depth_m = DEPTH_m, spec = air): AirPoint {
  return operatingPoint(spec, { ...SOUND, ...condition }, depth_m, {
    pressure_kPa: 0,
    pump_Lmin: 0,
    diffuser_Lmin: 0,
    leak_Lmin: 0,
  });
}

/** Source: handbook table of free air through orifices, cfm at Cd 1, 14.7 psia, 70 degF. Within 1 %; observed 0.8 %. */
describe('free air through an orifice', () => {
  it.each([
    [1, 0.45, 1.8, 7.18],
    [2, 0.633, 2.53, 10.1],
    [3, 0.775, 3.1, 12.4],
    [4, 0.892, 3.56, 14.3],
    [5, 0.993, 3.97, 15.9],
    [15, 1.68, 6.72, 26.9],
  ])('at %d psi: 1/16 in %d, 1/8 in %d, 1/4 in %d cfm', (psi, sixteenth, eighth, quarter) => {
    for (const [bore, cfm] of [
      [1 / 16, sixteenth],
      [1 / 8, eighth],
      [1 / 4, quarter],
    ] as const) {
      const observed = holeFlow(bore * INCH, psi * PSI_kPa, 1) / CFM_Lmin;
      expect(Math.abs(observed / cfm - 1)).toBeLessThan(0.01);
    }
  });
});

/** Derived (isentropic nozzle, Cd 0.65, 20 C; a separate trial): standard L/min, within 0.3 %; observed 0.24 %. */
describe('air lost through a hole', () => {
  it.each([
    [1, 4.81, 5.54, 6.19, 6.77],
    [2, 19.24, 22.17, 24.75, 27.06],
    [3, 43.28, 49.89, 55.68, 60.89],
    [4, 76.95, 88.7, 98.99, 108.25],
    [5, 120.23, 138.59, 154.68, 169.15],
    [6, 173.14, 199.57, 222.74, 243.57],
  ])('%d mm', (mm, ...row) => {
    row.forEach((Lmin, i) => {
      expect(Math.abs(holeFlow(mm / 1000, 15 + 5 * i) / Lmin - 1)).toBeLessThan(0.003);
    });
  });
});

/**
 * Derived (a separate trial of the same invented pump): 1.2 m of water; pressure in kPa, pump, diffusers and leak in
 * L/min. Within 0.1 kPa and 1 L/min; observed 0.09 and 0.7, worst at the 6 mm hole, where the isentropic nozzle gives
 * 6.00 kPa and ours 6.02. Of the 2.15 kPa at 80 L/min, 0.13 is the line's: fouling multiplies the rest.
 */
describe('the operating point at 1.2 m', () => {
  const fouled = (times: number) => ({ ...air, loss_kPa_per_Lmin2: (0.13 + 2.02 * times) / 6400 });
  it.each([
    ['sound', {}, 1.2, air, [15.23, 85.8, 85.8, 0]],
    ['1.5 m of water', {}, 1.5, air, [17.75, 78.3, 78.3, 0]],
    ['diffusers fouled fourfold', {}, 1.2, fouled(4), [19.51, 72.8, 72.8, 0]],
    ['diffusers fouled sixteenfold', {}, 1.2, fouled(16), [26.02, 51.4, 51.4, 0]],
    ['diffusers blocked', {}, 1.2, fouled(1e12), [40, 0, 0, 0]],
    ['2 mm hole', { lineHole_m: 0.002 }, 1.2, air, [14.38, 88.2, 69.6, 18.6]],
    ['3 mm hole', { lineHole_m: 0.003 }, 1.2, air, [13.59, 90.5, 49.8, 40.7]],
    ['4 mm hole', { lineHole_m: 0.004 }, 1.2, air, [12.92, 92.4, 21.8, 70.6]],
    ['6 mm hole', { lineHole_m: 0.006 }, 1.2, air, [6.11, 109.6, 0, 109.6]],
    ['open line (10 mm)', { lineHole_m: 0.01 }, 1.2, air, [0.93, 119.1, 0, 119.1]],
    ['60 % of its flow', { compressorFlow: 0.6 }, 1.2, air, [13.74, 54.1, 54.1, 0]],
    ['30 % of its flow', { compressorFlow: 0.3 }, 1.2, air, [13.01, 27.6, 27.6, 0]],
  ] as const)('%s', (_name, condition, depth_m, spec, [kPa, ...row]) => {
    const observed = point(condition, depth_m, spec);
    expect(Math.abs(observed.pressure_kPa - kPa)).toBeLessThan(0.1);
    [observed.pump_Lmin, observed.diffuser_Lmin, observed.leak_Lmin].forEach((flow, i) => {
      expect(Math.abs(flow - (row[i] ?? 0))).toBeLessThan(1);
    });
  });

  it('a switch set at 10 kPa trips from holes of 5.08 mm (1 %; observed 5.05)', () => {
    expect(point({ lineHole_m: 0.0050292 }, 1.2).pressure_kPa).toBeGreaterThan(10);
    expect(point({ lineHole_m: 0.0051308 }, 1.2).pressure_kPa).toBeLessThan(10);
  });
});

/** Our unit U1: numbers of its own data sheet, quoted there from a separate trial and confirmed here. No other source. */
describe('U1 and its low-air switch at 8.5 kPa', () => {
  it('runs sound at 16.06 kPa (2.33 psi) and 83.3 L/min (0.1 %; observed 16.061 and 83.36)', () => {
    const sound = point();
    expect(Math.abs(sound.pressure_kPa / 16.06 - 1)).toBeLessThan(0.001);
    expect(Math.abs(sound.diffuser_Lmin / 83.3 - 1)).toBeLessThan(0.001);
    expect(sound.pressure_kPa / PSI_kPa).toBeCloseTo(2.33, 2);
  });

  it('a 3 mm hole stands at 14.4 kPa, takes half the air (observed 45 %), and is silent', () => {
    const leak = point({ lineHole_m: 0.003 });
    expect(leak.pressure_kPa).toBeCloseTo(14.4, 1);
    expect(leak.diffuser_Lmin / point().diffuser_Lmin).toBeLessThan(0.6);
    expect(leak.pressure_kPa).toBeGreaterThan(8.5);
  });

  it('at 4.4 mm hardly a bubble is left (observed 1.2 L/min; none at 4.5 mm) and the lamp is still dark', () => {
    const leak = point({ lineHole_m: 0.0044 });
    expect(leak.diffuser_Lmin).toBeLessThan(3);
    expect(leak.pressure_kPa).toBeGreaterThan(8.5);
    const wider = point({ lineHole_m: 0.0045 });
    expect(wider.diffuser_Lmin).toBe(0);
    expect(wider.pressure_kPa).toBeGreaterThan(8.5);
  });

  it('it trips from 5.4 mm (observed 5.36), 6 mm stands at 5.98 kPa (0.05; observed 6.02), an open line at 0.9', () => {
    expect(point({ lineHole_m: 0.0052 }).pressure_kPa).toBeGreaterThan(8.5);
    expect(point({ lineHole_m: 0.0054 }).pressure_kPa).toBeLessThan(8.5);
    expect(point({ lineHole_m: 0.006 }).pressure_kPa).toBeCloseTo(5.98, 1);
    expect(point({ lineHole_m: 0.01 }).pressure_kPa).toBeCloseTo(0.9, 1);
  });

  it('a pump worn by flow alone never trips it; a torn one (flow and pressure x 0.15) does', () => {
    for (const compressorFlow of [0.8, 0.5, 0.2, 0.05])
      expect(point({ compressorFlow }).pressure_kPa).toBeGreaterThan(8.5);
    expect(point({ compressorFlow: 0.15, compressorPressure: 0.15 }).pressure_kPa).toBeLessThan(8.5);
  });

  it('a clogged intake never trips it', () => {
    for (const intakeLoss_kPa_per_Lmin2 of [0.003, 0.01, 0.03]) {
      const clogged = point({ intakeLoss_kPa_per_Lmin2 });
      expect(clogged.pressure_kPa).toBeGreaterThan(8.5);
      expect(clogged.diffuser_Lmin).toBeLessThan(point().diffuser_Lmin);
    }
  });

  it('after a pump-out to under 0.4 m of water the low air stands (1 cm; observed 0.395 m)', () => {
    expect(point({}, 0.39).pressure_kPa).toBeLessThan(8.5);
    expect(point({}, 0.41).pressure_kPa).toBeGreaterThan(8.5);
  });

  it('a stopped compressor lets its line down within seconds; dead-headed a sound one holds 40 kPa, a torn one 6', () => {
    expect(standingPressure(air, SOUND, 13.7, 0)).toBeCloseTo(13.7, 6);
    expect(standingPressure(air, SOUND, 13.7, 10)).toBeLessThan(8.5);
    expect(deadHead(air, SOUND)).toBe(40);
    expect(deadHead(air, { ...SOUND, compressorPressure: 0.15 })).toBeCloseTo(6, 9);
  });
});
