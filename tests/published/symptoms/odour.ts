/** Odour. */
import { reads, SMELLS_INDOORS_ONLY, shows, smellsOf, state } from './findings.ts';
import type { Heading } from './kind.ts';

const ROTTEN_EGGS = smellsOf('rotten-eggs');
const CHLORINE = smellsOf('chlorine');
const NO_OXYGEN = reads(['measure-oxygen'], 'concentration_mgL', { under: 0.5 });

export const ODOUR: Heading = {
  name: 'Odour',
  rows: [
    {
      no: 28,
      cause: 'a dry trap',
      test: 'only indoors; half a minute of water ends it',
      tag: 'R64',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'trap-dry' }] },
          after_h: 42 * 24,
          symptom: [SMELLS_INDOORS_ONLY],
          test: [
            shows(['smell-about'], 'reading.smell-indoors'),
            shows(['fill-trap', 'smell-about'], 'reading.smell-none'),
          ],
          from: [{}, { faults: [{ fault: 'drain-leak' }] }],
          note: 'After six weeks, as a trap takes to dry out.',
        },
      ],
    },
    {
      no: 30,
      cause: 'a wax seal or a drain in the house leaks',
      test: 'dye, look',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'drain-leak' }] },
          after_h: 24,
          symptom: [SMELLS_INDOORS_ONLY],
          test: [shows(['rock-toilets'], 'reading.toilet-rocks')],
          note: 'By looking: our dye tells of cisterns only.',
        },
      ],
    },
    {
      no: 31,
      cause: 'the air has stopped or is weak',
      test: 'oxygen under 0.5; black liquor',
      tag: 'R31',
      lines: [
        {
          of: 'stopped',
          unit: 'u1',
          put: { faults: [{ fault: 'compressor-stopped' }] },
          after_h: 48,
          symptom: [ROTTEN_EGGS],
          test: [NO_OXYGEN, shows(['look-into-aeration'], 'word.black')],
        },
        {
          of: 'weak',
          unit: 'u1',
          put: { faults: [{ fault: 'joint-leak', severity: 0.9 }] },
          after_h: 72,
          symptom: [ROTTEN_EGGS],
          test: [NO_OXYGEN, shows(['look-into-aeration'], 'word.black')],
          note: 'A joint open by 4.5 mm, which lights no lamp.',
        },
      ],
    },
    {
      no: 32,
      cause: 'organic overload, grinder, fats',
      test: 'settled sludge and oxygen low',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          household: 'family-5',
          years: 0.03,
          also: [{ fault: 'diaphragm-worn', called: 'compressor of 46 L/min' }],
          put: { load: 4 },
          after_h: 144,
          symptom: [ROTTEN_EGGS],
          test: [
            reads(['settle-jar'], 'share', { under: 0.3 }),
            reads(['measure-oxygen'], 'concentration_mgL', { under: 1 }),
          ],
          note: "In old sludge the jar fills instead. 46 L/min is what a handbook asks for at this size: U1's own compressor bears more.",
        },
      ],
    },
    {
      no: 33,
      cause: 'a lid is not sealed',
      test: 'sniff; insects',
      tag: 'R7, M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'lid-unsealed' }] },
          after_h: 24,
          symptom: [ROTTEN_EGGS],
          test: [shows(['smell-about'], 'reading.smell-strong'), shows(['look-at-lids'], 'reading.lid-no-gasket')],
          note: 'Insects are not simulated; the missing gasket is seen.',
        },
      ],
    },
    {
      no: 35,
      cause: 'strong smell of chlorine: too much of it, or trichlor',
      test: 'residual over 4',
      tag: 'M',
      lines: [
        {
          of: 'too much',
          unit: 'u1',
          put: { faults: [{ fault: 'overfeed' }] },
          after_h: 24,
          symptom: [CHLORINE],
          test: [reads(['dip-strip'], 'concentration_mgL', { over: 4 })],
        },
        {
          of: 'trichlor',
          unit: 'u2',
          put: { faults: [{ fault: 'wrong-tablets' }] },
          after_h: 24,
          symptom: [CHLORINE],
          test: [reads(['dip-strip'], 'concentration_mgL', { over: 4 })],
          miss: 'A read source (R16c, row 51) has pool tablets dissolve too slowly: U2 then gives less chlorine, not more.',
        },
      ],
    },
    {
      no: 36,
      cause: 'the spray smells: septic water in the pump tank, no chlorine, sludge',
      test: 'oxygen about 0, turbid',
      tag: 'R16c, M',
      lines: [
        {
          unit: 'u1',
          put: {
            faults: [{ fault: 'compressor-stopped' }, { fault: 'reservoir-empty' }, { fault: 'pump-tank-sludge' }],
          },
          after_h: 72,
          symptom: [ROTTEN_EGGS, state('no chlorine', ({ now }) => now.water.pump.residual_mgL < 0.1)],
          test: [
            state('oxygen of the pump tank under 0.5 mg/L', ({ now }) => now.water.pump.oxygen_mgL < 0.5),
            shows(['look-into-pump-tank'], 'word.black'),
          ],
        },
      ],
    },
  ],
};
