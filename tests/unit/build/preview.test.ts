/** The days of a call as Build shows them: the truth of its property, with the faults and without. */
import { describe, expect, it } from 'vitest';
import { PreviewDays } from '../../../src/build/preview.ts';
import { prepareCall, shippedCalls } from '../../../src/calls/index.ts';
import { noticedOf, unitAtReport } from '../../../src/calls/setup.ts';
import { SYMPTOM_IDS, SYMPTOMS } from '../../../src/service/index.ts';
import { readout } from '../../../src/unit/index.ts';

const prepared = (id: string) => {
  const call = shippedCalls().find((one) => one.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  return prepareCall(call);
};

describe('the days of a call', () => {
  const call = prepared('torn-sheet');
  const days = new PreviewDays(call);
  const { preview } = days;
  const curve = (id: string) => preview.curves.find((one) => one.id === id);

  it('show what is so when the phone rings, as the call itself finds it', () => {
    const unit = unitAtReport(call);
    expect(preview.symptoms).toEqual(SYMPTOM_IDS.filter((id) => SYMPTOMS[id](unit)));
    expect(preview.symptoms).toEqual(expect.arrayContaining([...noticedOf(call.call)]));
  });

  it('part where the fault begins, and not before', () => {
    const onset_s = preview.report_s - 85 * 60;
    const { faulty = [], sound = [] } = curve('airPressure_kPa') ?? {};
    const at = (points: typeof faulty, t: number) => points.findLast(([second]) => second <= t)?.[1] ?? 0;
    for (let t = 0; t < onset_s; t += 7200) expect(at(faulty, t)).toBeCloseTo(at(sound, t), 6);
    expect(at(faulty, preview.report_s)).toBeLessThan(at(sound, preview.report_s) - 5);
  });

  it('name the alarm between the fault and the call', () => {
    const lamp = preview.events.find(({ what }) => what === 'lamp.on');
    const fault = preview.events.find(({ what }) => what === 'fault.diaphragm-torn');
    expect(lamp && fault && fault.at_s < lamp.at_s && lamp.at_s < preview.report_s).toBe(true);
  });

  it('open the works at any instant as they were then', () => {
    for (const at_s of [0, 3600 * 30.5, preview.report_s, preview.end_s]) {
      const unit = days.unitAt(at_s);
      const { faulty = [] } = curve('pumpTank_m') ?? {};
      const near = faulty.reduce((a, b) => (Math.abs(b[0] - at_s) < Math.abs(a[0] - at_s) ? b : a));
      expect(readout(unit, near[0]).pumpTank_m).toBeCloseTo(near[1], 3);
    }
  });

  it('tell what the household drew, hour by hour', () => {
    const drawn = preview.use_L.reduce((sum, one) => sum + one, 0);
    const unit = days.unitAt(preview.use_L.length * 3600);
    expect(drawn / 1000).toBeCloseTo(readout(unit, preview.use_L.length * 3600).drawn_m3, 3);
  });
});
