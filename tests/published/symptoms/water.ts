/** High-water alarm. */
import { noticed, numberOf, reads, shows, state, WATER_ALARM } from './findings.ts';
import type { Heading, Put } from './kind.ts';

/** The pump does not turn, whatever the floats ask: what a dead float must be told from. */
const DEAD_PUMP = { faults: [{ fault: 'winding-open' }] };
/** A quarter of an hour in which the protector of a motor that stood cools and closes again. */
const COOLS = ['watch-panel', 'watch-panel', 'watch-panel'];
/** A night timer without an override float: U1 with the float's wire open. */
const NO_OVERRIDE: readonly Put[] = [{ fault: 'splice-corroded:overrideFloat' }];
const NO_OVERRIDE_NOTE = 'U1 without its override float: with it the pump runs by day instead, and nothing alarms.';

const HAND_RUNS = shows(['selector-hand'], 'word.pump-runs');
/** The cloudburst of row 12 comes six hours after the onset and lasts one. */
const RAIN_h = { from_h: 6, hours: 1 };
const IN_THE_RAIN = [
  state('alarms in the rain', ({ log }) => log.some(({ what, h }) => what === 'highWater.due' && h > 6 && h < 7.5)),
  state('the pump runs half an hour more', (life) => life.now.pumpRun_s - life.sound.now.pumpRun_s > 1800),
];
/** The pump has run longer than on the sound property, by an hour. */
const RUNS_LONG = state('the pump runs an hour longer', (life) => life.now.pumpRun_s - life.sound.now.pumpRun_s > 3600);
const AUTO_IS_STILL = shows(['look-into-pump-tank'], 'word.over-high-water', 'word.pump-still');

export const WATER: Heading = {
  name: 'High-water alarm',
  rows: [
    {
      no: 1,
      cause: "the pump's breaker tripped",
      test: 'look at the panel; meter the terminals',
      tag: 'R60',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'breaker-tripped:pumpBreaker' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [
            shows(['read-panel'], 'lever.tripped'),
            reads(['selector-hand', 'pump-volts'], 'voltage_V', { under: 5, step: 1 }),
          ],
          note: 'U1 doses at night and holds a day over its dose float: it alarms on the third day.',
        },
      ],
    },
    {
      no: 3,
      cause: 'the float that lets the pump on failed open',
      test: 'no continuity with the float up',
      tag: 'R58',
      lines: [
        {
          unit: 'u2',
          put: { faults: [{ fault: 'splice-corroded:startStopFloat' }] },
          after_h: 30,
          symptom: [WATER_ALARM],
          test: [
            state('water over the float', ({ now, unit }) => {
              return now.pumpTank_m > (unit.spec.panel.floats.startStopFloat?.makes_m ?? Number.NaN);
            }),
            shows(['float-continuity:startStopFloat'], 'reading.open-circuit'),
          ],
          from: [{}, DEAD_PUMP],
          note: 'U2, whose one float starts the pump; on U1 the override float takes over from a dead dose float.',
        },
      ],
    },
    {
      no: 4,
      cause: 'the off float failed open, or the redundant-off float held down',
      test: 'runs in Hand, not in Auto',
      tag: 'R57',
      lines: [
        {
          of: 'off float failed open',
          unit: 'u1',
          put: { faults: [{ fault: 'splice-corroded:stopFloat' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [HAND_RUNS, AUTO_IS_STILL],
          from: [{}, DEAD_PUMP],
        },
        {
          of: 'off float held down',
          unit: 'u1',
          put: { faults: [{ fault: 'stuck-down:stopFloat' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [HAND_RUNS, AUTO_IS_STILL],
          from: [{}, DEAD_PUMP],
        },
        {
          of: 'redundant-off float held down',
          unit: 'u3',
          put: { faults: [{ fault: 'stuck-down:redundantOffFloat' }] },
          after_h: 48,
          symptom: [WATER_ALARM],
          test: [HAND_RUNS, AUTO_IS_STILL],
          miss: 'On U3 the low guard stands in series in Hand too, so Hand is dead as well.',
        },
      ],
    },
    {
      no: 6,
      cause: 'the pump is jammed or hums',
      test: 'high current or a hum; the level stays',
      tag: 'R58',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'pump-seized' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [
            reads(['selector-off', ...COOLS, 'amps-in-hand'], 'current_A', { over: 30, step: 1 }),
            shows(['selector-off', ...COOLS, 'listen-pump'], 'reading.pump-hums'),
            reads(['draw-down'], 'waterFlow_Ls', { under: 0.05, step: 0.01 }),
          ],
        },
      ],
    },
    {
      no: 8,
      cause: 'the selector was left in Off',
      test: 'look',
      tag: 'R8',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'selector-left:off' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [shows(['read-panel'], 'reading.selector-at-off')],
        },
      ],
    },
    {
      no: 9,
      cause: "the timer's clock is wrong: doses at the wrong hours, or not",
      test: 'read the clock',
      tag: 'R61',
      lines: [
        {
          of: 'does not dose',
          unit: 'u1',
          also: NO_OVERRIDE,
          put: { faults: [{ fault: 'timer-lost-clock' }] },
          after_h: 60,
          symptom: [WATER_ALARM],
          test: [shows(['read-timer'], 'reading.clock-stands')],
          note: NO_OVERRIDE_NOTE,
        },
        {
          of: 'doses at the wrong hours',
          unit: 'u1',
          put: { faults: [{ fault: 'timer-misset' }] },
          after_h: 30,
          symptom: [noticed('sprays-by-day')],
          test: [
            state('read timer: half a day off', (life) => {
              const off_s = numberOf(life, ['read-timer'], 'clock_s') - numberOf(life.sound, ['read-timer'], 'clock_s');
              return Math.abs(Math.abs(off_s) - 43_200) < 600;
            }),
          ],
          note: "The symptom is the row's own, spray at the wrong hours: a dose shifted by half a day alarms nobody.",
        },
      ],
    },
    {
      no: 11,
      cause: 'a toilet or fixture leaks',
      test: 'ear, dye, the meter at night',
      tag: 'R45, M',
      lines: [
        {
          unit: 'u1',
          household: 'family-5',
          also: NO_OVERRIDE,
          put: { faults: [{ fault: 'toilet-leaking' }] },
          after_h: 14 * 24,
          symptom: [WATER_ALARM],
          test: [shows(['dye-toilet'], 'reading.dye-comes'), shows(['watch-water-meter'], 'reading.meter-turns')],
          note: NO_OVERRIDE_NOTE,
        },
      ],
    },
    {
      no: 12,
      cause: 'ground or roof water gets in',
      test: 'rises in rain; the pump runs more',
      tag: 'R20c, M',
      lines: [
        {
          of: 'roof water',
          unit: 'u1',
          put: { faults: [{ fault: 'clear-water-connected' }], rain: { ...RAIN_h, depth_mm: 60 } },
          after_h: 10,
          symptom: [WATER_ALARM],
          test: IN_THE_RAIN,
          note: 'A cloudburst: half a roof then brings more than the pump takes.',
        },
        {
          of: 'ground water',
          unit: 'u1',
          put: { faults: [{ fault: 'storm-infiltration' }], rain: { ...RAIN_h, depth_mm: 120 } },
          after_h: 10,
          symptom: [WATER_ALARM],
          test: IN_THE_RAIN,
        },
      ],
    },
    {
      no: 14,
      cause: 'the filter before the field is blocked, or its openings are',
      test: 'pressure in the field; the pump runs long',
      tag: 'M',
      lines: [
        {
          of: 'filter, spray',
          unit: 'u1',
          put: { faults: [{ fault: 'disc-filter-clogged', severity: 1 }] },
          after_h: 72,
          symptom: [WATER_ALARM],
          test: [reads(['head-pressure'], 'pressure_kPa', { under: 70, step: 1 }), RUNS_LONG],
        },
        {
          of: 'filter, drip',
          unit: 'u3',
          put: { faults: [{ fault: 'disc-filter-clogged', severity: 1 }] },
          after_h: 72,
          symptom: [WATER_ALARM],
          test: [reads(['zone-pressure'], 'pressure_kPa', { under: 70, step: 1 }), RUNS_LONG],
        },
        {
          of: 'openings',
          unit: 'u1',
          put: { faults: [{ fault: 'nozzle-clogged', severity: 1 }] },
          after_h: 72,
          symptom: [WATER_ALARM],
          test: [reads(['head-pressure'], 'pressure_kPa', { over: 350, step: 1 }), RUNS_LONG],
          note: 'Before plugged heads the pressure is high, behind a blocked filter low.',
        },
      ],
    },
    {
      no: 15,
      cause: 'the alarm float hangs within 3 in of the on float',
      test: 'measure',
      tag: 'R18a',
      lines: [
        {
          unit: 'u1',
          put: {
            faults: [
              {
                fault: 'alarm-float-misset',
                called: 'high-water float tied 0.8 m too low',
                severity: 1,
                effect: { tethers: { highWaterFloat: -0.8 } },
              },
            ],
          },
          after_h: 24,
          symptom: [WATER_ALARM],
          test: [
            state('measure tethers: within 3 in over the dose float', (life) => {
              const height_m = numberOf(life, ['measure-tethers'], 'length_m');
              return height_m - (life.unit.spec.panel.floats.doseFloat?.makes_m ?? Number.NaN) < 0.0762;
            }),
          ],
          note: 'The on float of a night timer is its dose float.',
        },
      ],
    },
    {
      no: 17,
      cause: 'a fault of the alarm circuit, the tank normal',
      test: 'lift and lower the float; water in the box',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'panel-wet' }] },
          after_h: 8,
          symptom: [
            state('alarm lit, water under its float', ({ now, unit }) => {
              const { highWaterFloat } = unit.spec.panel.floats;
              return unit.control.outputs.lamp && now.pumpTank_m < highWaterFloat.breaks_m;
            }),
          ],
          test: [
            shows(['lift-float:highWaterFloat'], 'word.lamp-lit-before'),
            shows(['look-into-panel'], 'reading.drops-on-terminals'),
          ],
        },
      ],
    },
  ],
};
