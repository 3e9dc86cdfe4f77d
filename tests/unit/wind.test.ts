/** The wind: where it comes from, and what it does to a drop of the spray. */
import { describe, expect, it } from 'vitest';
import { skyOf } from '../../src/scene/light.ts';
import { windOf } from '../../src/scene/wind.ts';
import { speak } from '../../src/words/speak.ts';
import { AIR_DRAG, fly, type Launch, newTrack, reachOf, STEP_s } from '../../src/yard/flight.ts';
import { layOut } from '../../src/yard/layout.ts';
import { skySaid, windSaid } from '../../src/yard/skySaid.ts';
import { lightAt } from '../../src/yard/sprayLight.ts';
import { SCENES } from '../browser/fixtures/index.ts';
import { ENGLISH, SPANISH } from './spoken.ts';

const HOUR_s = 3600;
const DAYS = Array.from({ length: 365 }, (_, i) => ({
  year: 2031,
  month: 1 + Math.floor(i / 31),
  day: 1 + (i % 28),
}));
const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const speeds = (hour: number, cloud = 0, rain_mmh = 0) =>
  DAYS.map((day) => Math.abs(windOf(day, hour * HOUR_s, cloud, rain_mmh)));

describe('the wind of a day', () => {
  it('is the same for the same day, hour and weather', () => {
    for (const day of DAYS.slice(0, 40)) expect(windOf(day, 54_321, 0.3, 2)).toBe(windOf({ ...day }, 54_321, 0.3, 2));
  });

  it('is weak by night and most in the afternoon, less of it under cloud', () => {
    expect(mean(speeds(2))).toBeLessThan(0.6);
    expect(mean(speeds(15))).toBeGreaterThan(4 * mean(speeds(2)));
    expect(mean(speeds(15, 1))).toBeLessThan(0.75 * mean(speeds(15)));
  });

  it('rises with rain, and stays within what a call may state', () => {
    expect(mean(speeds(2, 1, 14))).toBeGreaterThan(8 * mean(speeds(2, 1)));
    expect(Math.max(...speeds(15, 1, 60))).toBeLessThanOrEqual(20);
    expect(Math.max(...speeds(15, 1, 14))).toBeLessThan(20);
  });

  it('comes from the west on most days and from the east on some', () => {
    const west = DAYS.filter((day) => windOf(day, 15 * HOUR_s, 0, 0) < 0).length / DAYS.length;
    expect(west).toBeGreaterThan(0.6);
    expect(west).toBeLessThan(0.85);
  });

  it('does not jump, neither at midnight nor from gust to gust', () => {
    const at = (s: number) => windOf({ year: 2031, month: 5, day: 14 + Math.floor(s / 86_400) }, s % 86_400, 0.5, 6);
    for (let s = 0; s < 2 * 86_400; s += 60) expect(Math.abs(at(s + 60) - at(s))).toBeLessThan(1.5);
  });

  it('is as a call states it where one does', () => {
    const around = { day: { year: 2031, month: 5, day: 14 }, secondOfDay: 0, cloud: 0, rain: 0 };
    expect(skyOf({ ...around, wind_ms: -3.5 }).wind_ms).toBe(-3.5);
    expect(skyOf({ ...around, wind_ms: 0 }).wind_ms).toBe(0);
    expect(skyOf(around).wind_ms).toBe(windOf(around.day, 0, 0, 0));
  });
});

describe('a drop of the spray', () => {
  const track = newTrack();
  const throwOf = (launch: Partial<Launch>) =>
    reachOf(track, fly(track, { speed_ms: 12, from_m: 0, across: 1, wind_ms: 0, ...launch }));
  const LOW: Partial<Launch> = { from_m: 0.4, speed_ms: 23 };

  it('flies the parabola where nothing holds it', () => {
    for (const rise of [0.2588, 0.5, 0.6]) {
      const level = Math.sqrt(1 - rise * rise);
      expect(throwOf({ rise, drag: 0 })).toBeCloseTo((2 * 12 * 12 * rise * level) / 9.81, 2);
    }
    const points = fly(track, { speed_ms: 12, from_m: 0, across: 1, wind_ms: 0, rise: 0.5, drag: 0 });
    const heights = Array.from({ length: points }, (_, i) => track[2 * i + 1] ?? 0);
    expect(Math.max(...heights)).toBeCloseTo(36 / (2 * 9.81), 2);
  });

  it('falls at last as fast as the drag allows: for 2 mm near the 6.5 m/s that Atlas 1973 has', () => {
    const points = fly(track, { speed_ms: 0.01, from_m: 60, across: 1, wind_ms: 0 });
    const last = 2 * (points - 2) + 1;
    const fall = ((track[last - 2] ?? 0) - (track[last] ?? 0)) / STEP_s;
    expect(fall).toBeCloseTo(Math.sqrt(9.81 / AIR_DRAG), 2);
    expect(fall).toBeGreaterThan(6);
    expect(fall).toBeLessThan(7);
  });

  it('goes along with the wind at last', () => {
    const points = fly(track, { speed_ms: 0.01, from_m: 60, across: 1, wind_ms: 4 });
    const last = 2 * (points - 2);
    expect(((track[last] ?? 0) - (track[last - 2] ?? 0)) / STEP_s).toBeCloseTo(4, 1);
  });

  it('lands farther with the wind, nearer against it, and the same to both sides without any', () => {
    const still = throwOf(LOW);
    expect(throwOf({ ...LOW, across: -1 })).toBeCloseTo(-still, 6);
    expect(throwOf({ ...LOW, wind_ms: 5 })).toBeGreaterThan(still + 2);
    expect(throwOf({ ...LOW, wind_ms: -5 })).toBeLessThan(still - 2);
    expect(throwOf({ ...LOW, wind_ms: -5 })).toBeCloseTo(-throwOf({ ...LOW, across: -1, wind_ms: 5 }), 6);
  });

  it('is thrown farther by more pressure, and air takes from its way', () => {
    expect(throwOf({ ...LOW, speed_ms: 16 })).toBeLessThan(throwOf(LOW));
    expect(throwOf(LOW)).toBeLessThan(throwOf({ ...LOW, drag: 0 }));
  });

  it('lands on the ground', () => {
    const points = fly(track, { speed_ms: 23, from_m: 0.4, across: 0.5, wind_ms: -7 });
    expect(track[2 * points - 1]).toBe(0);
  });
});

describe('the light on the spray', () => {
  const lit = (scene: (typeof SCENES)['idleDay'], head = 0) => {
    const layout = layOut(scene, 120);
    return lightAt(layout, scene, layout.heads[head] ?? 0);
  };
  const red = ({ colour }: { readonly colour: number }) => (colour >> 16) / (colour & 255);

  it('is the day’s by day, whatever lamp is lit', () => {
    const { panel } = SCENES.nightAlarm;
    expect(lit({ ...SCENES.idleDay, panel })).toEqual(lit(SCENES.idleDay));
    expect(lit(SCENES.idleDay).bright).toBe(1);
  });

  it('is brighter under the moon, and warmer the nearer a lit lamp is', () => {
    const dark = { ...SCENES.moonSpray, sky: { ...SCENES.moonSpray.sky, cloud: 1 } };
    expect(lit(SCENES.moonSpray).bright).toBeGreaterThan(lit(dark).bright);
    const lamp = { ...dark, panel: SCENES.nightAlarm.panel };
    expect(red(lit(lamp))).toBeGreaterThan(red(lit(dark)));
    expect(red(lit(lamp, 0))).toBeGreaterThan(red(lit(lamp, 2)));
  });

  it('tells nothing of a lamp that nobody has seen', () => {
    const { panel } = SCENES.nightAlarm;
    const unseen = panel.lamps.map((lamp) => ({ ...lamp, ink: { kind: 'pencil' } as const }));
    expect(lit({ ...SCENES.moonSpray, panel: { ...panel, lamps: unseen } })).toEqual(lit(SCENES.moonSpray));
  });
});

describe('the wind in words', () => {
  const plain = (text: string) => text.replace(/\u00a0/g, ' ');
  const en = (wind_ms: number) => plain(speak(ENGLISH, 'us', true)(windSaid(wind_ms)));
  const es = (wind_ms: number) => plain(speak(SPANISH, 'si', true)(windSaid(wind_ms)));

  it('is called as Beaufort has it, with where it comes from and how fast', () => {
    expect([0.2, 2, -5, -11].map(en)).toEqual([
      'no wind',
      'a light breeze from the east, 4 mph',
      'a breeze from the west, 11 mph',
      'a strong wind from the west, 25 mph',
    ]);
    expect([0, -2.3, 5, 12].map(es)).toEqual([
      'sin viento',
      'brisa ligera del oeste, 2,3 m/s',
      'brisa del este, 5,0 m/s',
      'viento fuerte del este, 12,0 m/s',
    ]);
  });

  it('ends what is said of the sky', () => {
    const said = plain(speak(ENGLISH, 'us', true)(skySaid(SCENES.windySpray.sky)));
    expect(said).toBe('Sky: 30% under cloud, no rain; a breeze from the west, 11 mph.');
  });
});
