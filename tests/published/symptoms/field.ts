/** Dispersal and house. */
import { noticed, reads, shows, state } from './findings.ts';
import type { Heading } from './kind.ts';
import type { Life } from './life.ts';

const WET = noticed('wet-lawn');
const DRAINS_SLOW = noticed('slow-drains');
const WEAK = shows(['selector-hand', 'look-at-field'], 'reading.spray-weak');
const LOW_PRESSURE = reads(['head-pressure'], 'pressure_kPa', { under: 200, step: 1 });

/** What is quoted as the middle of a state's spray rates, gal/ft2 a day (from memory). */
const MOST_APPLIED = 0.064;
const GAL_m3 = 264.172;
const FT2_m2 = 10.7639;

/** What was sprayed a day since the onset, on the ground that the heads reach at their design pressure, gal/ft2. */
function applied(life: Life): number {
  const { nozzles, throw_m } = life.unit.spec.plant.discharge;
  const area_ft2 = nozzles * Math.PI * throw_m ** 2 * FT2_m2;
  return ((life.now.sprayed_m3 - life.at(0).now.sprayed_m3) * GAL_m3) / (life.after_h / 24) / area_ft2;
}

export const FIELD: Heading = {
  name: 'Dispersal and house',
  rows: [
    {
      no: 70,
      cause: 'wet spots: line or head broken, low heads let the line run out',
      test: 'watch a run',
      tag: 'M',
      lines: [
        {
          of: 'head broken',
          unit: 'u1',
          put: { faults: [{ fault: 'head-broken' }] },
          after_h: 24,
          symptom: [WET],
          test: [shows(['selector-hand', 'look-at-field'], 'reading.head-geyser')],
          note: 'Wet ground is told from what leaks; the soil itself is not computed.',
        },
        {
          of: 'line broken',
          unit: 'u1',
          put: { faults: [{ fault: 'discharge-broken' }] },
          after_h: 24,
          symptom: [WET],
          test: [WEAK, shows(['selector-hand', 'walk-field'], 'reading.wet-over-line')],
        },
        {
          of: 'line runs out',
          unit: 'u1',
          put: { faults: [{ fault: 'siphoning' }] },
          after_h: 24,
          symptom: [WET],
          test: [shows(['watch-after-stop'], 'reading.level-at-intake')],
          note: 'The low end has drained the tank down to the intake; after every run it does so again.',
        },
      ],
    },
    {
      no: 71,
      cause: 'wet spots: soil saturated, more applied than it takes',
      test: 'gallons a day against the area',
      tag: 'R16b, D',
      lines: [
        {
          unit: 'u1',
          household: 'family-5',
          put: { faults: [{ fault: 'soil-saturated' }, { fault: 'toilet-leaking' }] },
          after_h: 72,
          symptom: [WET],
          test: [
            {
              says: (life) => `${applied(life).toFixed(3)} gal/ft2 a day, over ${MOST_APPLIED}`,
              holds: (life) => applied(life) > MOST_APPLIED,
            },
          ],
          note: 'A toilet that runs brings the water; what soil takes is not computed, so the fault stands for it.',
        },
      ],
    },
    {
      no: 73,
      cause: 'all heads weak: filter, pump, split main',
      test: 'pressure',
      tag: 'D',
      lines: [
        {
          of: 'filter',
          unit: 'u1',
          put: { faults: [{ fault: 'disc-filter-clogged', severity: 0.8 }] },
          after_h: 24,
          symptom: [WEAK],
          test: [LOW_PRESSURE],
        },
        {
          of: 'pump',
          unit: 'u1',
          put: { faults: [{ fault: 'impeller-worn', severity: 1 }] },
          after_h: 24,
          symptom: [WEAK],
          test: [LOW_PRESSURE],
        },
        {
          of: 'split main',
          unit: 'u1',
          put: { faults: [{ fault: 'discharge-broken', severity: 0.5 }] },
          after_h: 24,
          symptom: [WEAK],
          test: [LOW_PRESSURE],
        },
      ],
    },
    {
      no: 74,
      cause: 'sprays by day: timer, override',
      test: 'the clock',
      tag: 'R61',
      lines: [
        {
          of: 'timer',
          unit: 'u1',
          put: { faults: [{ fault: 'timer-misset' }] },
          after_h: 30,
          symptom: [noticed('sprays-by-day')],
          test: [state('read timer: clock wrong', (life) => !clockRight(life))],
        },
        {
          of: 'override',
          unit: 'u1',
          put: { faults: [{ fault: 'stuck-down:doseFloat' }] },
          after_h: 60,
          symptom: [noticed('sprays-by-day')],
          test: [state('read timer: clock right', clockRight)],
          from: [{ faults: [{ fault: 'timer-misset' }] }],
          note: 'A right clock tells it from the timer.',
        },
      ],
    },
    {
      no: 75,
      cause: "backs up into the house: sewer, inlet tee or the trash tank's outlet blocked",
      test: 'open the inlet; level against the outlet',
      tag: 'M',
      lines: [
        {
          of: 'sewer',
          unit: 'u1',
          put: { faults: [{ fault: 'sewer-blocked' }] },
          after_h: 8,
          symptom: [DRAINS_SLOW],
          test: [
            shows(['look-into-clean-out'], 'reading.stands-in-sewer'),
            shows(['look-into-trash-tank'], 'reading.at-outlet'),
          ],
        },
        {
          of: 'inlet tee',
          unit: 'u1',
          put: { faults: [{ fault: 'inlet-blocked' }] },
          after_h: 8,
          symptom: [DRAINS_SLOW],
          test: [shows(['look-at-tees'], 'reading.tee-wipes'), shows(['look-into-trash-tank'], 'reading.at-outlet')],
        },
        {
          of: 'outlet',
          unit: 'u1',
          put: { faults: [{ fault: 'outlet-blocked' }] },
          after_h: 24,
          symptom: [DRAINS_SLOW],
          test: [shows(['look-at-tees'], 'reading.tee-packed'), shows(['look-into-trash-tank'], 'reading.backed-up')],
        },
      ],
    },
    {
      no: 77,
      cause: 'slow, gurgling drains: the vent',
      test: 'run water and listen',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'vent-blocked' }] },
          after_h: 24,
          symptom: [shows(['ask-drains'], 'reading.drains-gurgle')],
          test: [shows(['run-and-listen'], 'reading.drains-gurgle')],
        },
      ],
    },
    {
      no: 78,
      cause: 'level under the outlet: the trash tank leaks',
      test: 'wait; dye',
      tag: 'R67',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'tank-leaks' }] },
          after_h: 40,
          symptom: [shows(['look-into-trash-tank'], 'reading.below-outlet')],
          test: [
            state('falls over 1 cm in four hours of the night', (life) => {
              const night = [40, 44].map((h) => life.at(h).now.flows.trash_m);
              return (night[0] ?? 0) - (night[1] ?? 0) > 0.01;
            }),
          ],
          note: 'By waiting from midnight to four.',
        },
      ],
    },
    {
      no: 80,
      cause: 'salt, drain cleaners, paint, antibiotics: the biomass is ill',
      test: 'ask; oxygen up, BOD up',
      tag: 'R11, R12',
      lines: [
        {
          of: 'cleaners',
          unit: 'u1',
          put: { faults: [{ fault: 'disinfectant-shock' }] },
          after_h: 8 * 24,
          symptom: [state('ammonia over 5 mg/L', ({ now }) => now.water.pump.ammonia_mgL > 5)],
          test: [
            state('oxygen up by 0.3 mg/L', (life) => life.now.oxygen_mgL > life.sound.now.oxygen_mgL + 0.3),
            state('BOD doubled', (life) => life.now.water.pump.cbod5_mgL > 2 * life.sound.now.water.pump.cbod5_mgL),
          ],
        },
        {
          of: "a softener's brine",
          unit: 'u1',
          put: { faults: [{ fault: 'softener-brine' }] },
          after_h: 12 * 24,
          symptom: [state('ammonia over 5 mg/L', ({ now }) => now.water.pump.ammonia_mgL > 5)],
          test: [
            state('oxygen up by 0.3 mg/L', (life) => life.now.oxygen_mgL > life.sound.now.oxygen_mgL + 0.3),
            state('BOD doubled', (life) => life.now.water.pump.cbod5_mgL > 2 * life.sound.now.water.pump.cbod5_mgL),
          ],
          miss: 'A softener brings some 1.2 g/L of salt; the model halves growth at 12 to 25 g/L (convention, no source).',
        },
      ],
    },
  ],
};

/** The panel clock within ten minutes of the time of day. */
function clockRight({ unit }: Life): boolean {
  return Math.abs(unit.clockAhead()) < 600;
}
