/** Disinfection. */
import { GERMS, numberOf, reads, shows, state } from './findings.ts';
import type { Heading } from './kind.ts';

const NO_RESIDUAL = reads(['dip-strip'], 'concentration_mgL', { under: 0.1 });
const TOO_MUCH = state('residual over 4 mg/L', ({ now }) => now.water.pump.residual_mgL > 4);

export const DISINFECTION: Heading = {
  name: 'Disinfection',
  rows: [
    {
      no: 48,
      cause: 'the tube is empty',
      test: 'look; residual 0',
      tag: 'R52',
      lines: [
        {
          unit: 'u2',
          put: { faults: [{ fault: 'tablets-used-up' }] },
          after_h: 48,
          symptom: [GERMS],
          test: [shows(['look-at-disinfectant'], 'reading.store-empty'), NO_RESIDUAL],
        },
      ],
    },
    {
      no: 49,
      cause: 'tablets stuck, bridged or swollen',
      test: 'tap the tube; none has moved',
      tag: 'M',
      lines: [
        {
          unit: 'u2',
          put: { faults: [{ fault: 'tablets-bridged' }] },
          after_h: 48,
          symptom: [GERMS],
          test: [shows(['watch-feed'], 'reading.tablets-dry')],
        },
      ],
    },
    {
      no: 51,
      cause: 'the wrong product (trichlor for pools)',
      test: 'the label',
      tag: 'R16c',
      lines: [
        {
          unit: 'u2',
          put: { faults: [{ fault: 'wrong-tablets' }] },
          after_h: 12,
          symptom: [GERMS],
          test: [shows(['read-tablet-label'], 'reading.label-pool')],
        },
      ],
    },
    {
      no: 53,
      cause: 'liquid feeder empty, air-locked, its bleach old, its tube kinked',
      test: 'watch it draw; strength diluted',
      tag: 'R36, M',
      lines: [
        {
          of: 'empty',
          unit: 'u1',
          put: { faults: [{ fault: 'reservoir-empty' }] },
          after_h: 24,
          symptom: [GERMS],
          test: [shows(['watch-feed'], 'reading.store-empty')],
        },
        {
          of: 'air-locked',
          unit: 'u1',
          put: { faults: [{ fault: 'feed-air-locked' }] },
          after_h: 24,
          symptom: [GERMS],
          test: [shows(['watch-feed'], 'reading.feed-air')],
        },
        {
          of: 'old bleach',
          unit: 'u1',
          put: { faults: [{ fault: 'hypochlorite-stale' }] },
          after_h: 24,
          symptom: [GERMS],
          test: [reads(['test-hypochlorite'], 'concentration_mgL', { under: 2 })],
        },
        {
          of: 'tube kinked',
          unit: 'u1',
          put: { faults: [{ fault: 'feed-clogged' }] },
          after_h: 24,
          symptom: [GERMS],
          test: [shows(['watch-feed'], 'reading.feed-little')],
        },
      ],
    },
    {
      no: 54,
      cause: 'residual over 4, grass dies',
      test: 'little water; tablets wet all over',
      tag: 'M',
      lines: [
        {
          unit: 'u2',
          household: 'family-2',
          put: { faults: [{ fault: 'tablets-drowned' }] },
          after_h: 24,
          symptom: [TOO_MUCH],
          test: [
            state('less than half of the rated flow', ({ now, unit }) => {
              return now.drawn_m3 / (now.t / 86_400) < unit.spec.rated_m3d / 2;
            }),
            shows(['watch-feed'], 'reading.tablets-drowned'),
          ],
          note: 'Grass is not simulated; over 4 mg/L harms it (M).',
        },
      ],
    },
    {
      no: 55,
      cause: 'ultraviolet lamp out, sleeve dirty, water dim',
      test: 'indicator; sleeve',
      tag: 'M',
      lines: [
        {
          of: 'lamp out',
          unit: 'u3',
          put: { faults: [{ fault: 'uv-lamp-out' }] },
          after_h: 24,
          symptom: [GERMS],
          test: [shows(['look-at-ultraviolet'], 'reading.ultraviolet-dark')],
        },
        {
          of: 'sleeve dirty',
          unit: 'u3',
          put: { faults: [{ fault: 'uv-sleeve-dirty' }] },
          after_h: 30,
          symptom: [GERMS],
          test: [shows(['look-at-sleeve'], 'reading.sleeve-coated')],
        },
      ],
    },
    {
      no: 56,
      cause: 'test kit at fault',
      test: 'repeat; a blank',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'kit-stale' }] },
          after_h: 24,
          symptom: [
            state('strip without colour, over 0.1 mg/L in the water', (life) => {
              return (
                numberOf(life, ['dip-strip'], 'concentration_mgL') < 0.25 && life.now.water.pump.residual_mgL > 0.1
              );
            }),
          ],
          test: [reads(['check-strips'], 'concentration_mgL', { under: 1 })],
          note: 'Tried on water of 2 mg/L.',
        },
      ],
    },
  ],
};
