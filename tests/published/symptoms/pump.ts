/** Pump behaviour. */
import { checks } from './english.ts';
import { numberOf, reads, shows, state } from './findings.ts';
import type { Heading } from './kind.ts';

const HAND_RUNS = shows(['selector-hand'], 'word.pump-runs');

/** For the last so many hours. */
function runs(hours: number) {
  return state(`the pump has run for ${hours} h without a stop`, (life) => {
    const stops = life.hours('pumpRuns.off').some((h) => h > life.after_h - hours);
    return life.unit.control.outputs.pumpRuns && !stops;
  });
}
const NEVER_RUNS = state('the pump has not run', ({ log }) => !log.some(({ what }) => what === 'pumpRuns.on'));
const TRIPS_AT_ONCE = shows(
  ['breaker-off:pumpBreaker', 'breaker-on:pumpBreaker', 'selector-hand', 'read-panel'],
  'lever.tripped',
);

const TRIPS_AFTER_MINUTES = state('stops by its protector minutes after the timer started it', (life) => {
  const [trip = Number.NaN] = life.hours('protector.hot');
  const started = life.hours('timer.start').filter((h) => h < trip);
  return trip - Math.max(...started) > 1 / 60;
});

/** Flow of a draw-down, against that of the sound property. */
function delivers(acts: readonly string[], over: number, under: number) {
  return state(`${checks(acts)}: ${over} to ${under} of the sound flow`, (life) => {
    const share = numberOf(life, acts, 'waterFlow_Ls') / numberOf(life.sound, ['draw-down'], 'waterFlow_Ls');
    return share >= over && share <= under;
  });
}

export const PUMP: Heading = {
  name: 'Pump behaviour',
  rows: [
    {
      no: 57,
      cause: 'runs all the time: the off float stuck up or failed closed',
      test: 'raise and lower it; amps',
      tag: 'D, M',
      lines: [
        {
          unit: 'u2',
          put: { faults: [{ fault: 'stuck-up:startStopFloat' }] },
          after_h: 12,
          symptom: [runs(6)],
          test: [
            shows(['look-into-pump-tank'], 'word.low', 'reading.held-up'),
            shows(['float-continuity:startStopFloat'], 'reading.closed'),
            reads(['pump-amps'], 'current_A', { over: 0.5, under: 6 }),
          ],
          note: "U2, whose one float starts and stops; current low, since it runs in air by then. U1's timer ends a run anyhow.",
        },
      ],
    },
    {
      no: 60,
      cause: 'left in Hand',
      test: 'the selector',
      tag: 'R8',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'selector-left:hand' }] },
          after_h: 12,
          symptom: [runs(6)],
          test: [shows(['read-panel'], 'reading.selector-at-hand')],
        },
      ],
    },
    {
      no: 61,
      cause: 'the contactor is welded',
      test: 'runs in Off',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'relay-welded' }] },
          after_h: 12,
          symptom: [runs(6)],
          test: [shows(['selector-off'], 'word.pump-runs')],
          from: [{}, { faults: [{ fault: 'selector-left:hand' }] }],
        },
      ],
    },
    {
      no: 63,
      cause: 'never runs: the enable float is not up yet',
      test: 'level under the on float',
      tag: 'D',
      lines: [
        {
          unit: 'u1',
          household: 'family-2',
          put: { faults: [{ fault: 'vacation' }] },
          after_h: 60,
          symptom: [NEVER_RUNS],
          test: [reads(['measure-level'], 'length_m', { under: 0.45 })],
          note: 'Nobody at home: nothing is wrong.',
        },
      ],
    },
    {
      no: 64,
      cause: 'never runs: the off float failed open',
      test: 'Auto dead, Hand runs',
      tag: 'R57',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'splice-corroded:stopFloat' }] },
          after_h: 30,
          symptom: [NEVER_RUNS],
          test: [HAND_RUNS, shows(['advance-timer'], 'reading.dose-does-not-start')],
          from: [{}, { faults: [{ fault: 'winding-open' }] }],
        },
      ],
    },
    {
      no: 65,
      cause: 'the breaker trips at once: short, chafed cord, wet splice',
      test: 'insulation; disconnect the pump',
      tag: 'R60, M',
      lines: [
        {
          of: 'chafed cord',
          unit: 'u1',
          put: { faults: [{ fault: 'pump-cord-chafed' }] },
          after_h: 24,
          symptom: [TRIPS_AT_ONCE],
          test: [
            reads(['insulation-test:pumpBreaker'], 'resistance_Mohm', { under: 1 }),
            shows(['insulation-test:pumpBreaker'], 'reading.leaks-in-load'),
          ],
        },
        {
          of: 'short in the wire',
          unit: 'u1',
          put: { faults: [{ fault: 'breaker-retrips:pumpBreaker' }] },
          after_h: 24,
          symptom: [TRIPS_AT_ONCE],
          test: [
            reads(['insulation-test:pumpBreaker'], 'resistance_Mohm', { under: 1 }),
            shows(['insulation-test:pumpBreaker'], 'reading.leaks-in-wire'),
          ],
        },
      ],
    },
    {
      no: 66,
      cause: 'trips after minutes: low volts, a jam, a high head',
      test: 'amps, volts',
      tag: 'R60, M',
      lines: [
        {
          of: 'low volts',
          unit: 'u1',
          put: { faults: [{ fault: 'low-voltage' }] },
          after_h: 24,
          symptom: [TRIPS_AFTER_MINUTES],
          test: [reads(['supply-volts'], 'voltage_V', { under: 105, step: 1 })],
        },
        {
          of: 'jam',
          unit: 'u1',
          put: { faults: [{ fault: 'pump-seized' }] },
          after_h: 24,
          symptom: [TRIPS_AFTER_MINUTES],
          test: [reads(['amps-in-hand'], 'current_A', { over: 30, step: 1 })],
          miss: 'A rotor that stands opens its protector in 20 s (common practice, no source), not after minutes.',
        },
      ],
    },
    {
      no: 68,
      cause: 'loud, shakes: debris in the impeller',
      test: 'lift it out',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'impeller-clogged' }] },
          after_h: 24,
          symptom: [shows(['listen-pump'], 'reading.pump-shakes')],
          test: [shows(['inspect-pump'], 'reading.impeller-debris')],
        },
      ],
    },
    {
      no: 69,
      cause: 'delivers slowly: screen blocked by scum and slime',
      test: 'clean it and compare the delivery',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'intake-screened' }] },
          after_h: 80,
          symptom: [delivers(['draw-down'], 0, 0.7)],
          test: [delivers(['draw-down'], 0, 0.7), delivers(['clean-intake-screen', 'draw-down'], 0.95, 1.05)],
        },
      ],
    },
  ],
};
