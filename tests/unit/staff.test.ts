import { describe, expect, it } from 'vitest';
import { STAFFS } from '../../src/words/units.ts';
import { staffMarks } from '../../src/yard/staff.ts';

describe('the staff in the pump tank', () => {
  it('is marked on whole inches in US units, with a figure each half foot', () => {
    const marks = staffMarks(STAFFS.us, 1.82);
    for (const { m } of marks) expect(m / 0.0254).toBeCloseTo(Math.round(m / 0.0254), 9);
    expect(marks.length).toBe(71);
    expect(marks.flatMap(({ figure }) => figure ?? [])).toEqual([6, 12, 18, 24, 30, 36, 42, 48, 54, 60, 66]);
    expect(marks.find(({ figure }) => figure === 12)?.m).toBeCloseTo(0.3048, 9);
  });

  it('is marked each 5 cm in SI, with a figure each 20 cm', () => {
    const marks = staffMarks(STAFFS.si, 1.82);
    expect(marks.slice(0, 4).map(({ m }) => Math.round(m * 1000))).toEqual([50, 100, 150, 200]);
    expect(marks.slice(0, 4).map(({ long }) => long)).toEqual([false, true, false, true]);
    expect(marks.flatMap(({ figure }) => figure ?? [])).toEqual([20, 40, 60, 80, 100, 120, 140, 160, 180]);
  });
});
