/** Foam, colour, effluent. */
import { volumeIndex } from '../../../src/plant/index.ts';
import { noticed, numberOf, reads, shows, state } from './findings.ts';
import type { Heading } from './kind.ts';
import type { Life } from './life.ts';

const CLOUDY = noticed('cloudy-water');
const GOOD_OXYGEN = reads(['measure-oxygen'], 'concentration_mgL', { over: 2 });

/** Peak of what rises in the clarifier, and how fast its sludge falls, m/h. */
function overflow_mh(life: Life): number {
  return (3600 * life.most((flows) => flows.clarifierOut)) / life.unit.spec.plant.clarifier.area_m2;
}

/** Zone settling of Daigger and Roper 1985: 7.80 exp(-(0.148 + 0.0021 SVI) X), m/h with X in g/L. */
function zone_mh({ now: { liquor } }: Life): number {
  return 7.8 * Math.exp(-(0.148 + 0.0021 * liquor.index_mLg) * (liquor.solids_mgL / 1000));
}

export const TREATMENT: Heading = {
  name: 'Foam, colour, effluent',
  rows: [
    {
      no: 37,
      cause: 'white billowing foam: start-up, few solids, detergent, poison',
      test: 'settled sludge under 10 %',
      tag: 'R30, R31',
      lines: [
        {
          of: 'start-up, few solids',
          unit: 'u1',
          put: { hauled: true },
          after_h: 24,
          symptom: [shows(['look-into-aeration'], 'word.foam-billowing-white')],
          test: [reads(['settle-jar'], 'share', { under: 0.1 })],
          note: 'A day after the chamber was pumped out and filled up.',
        },
        {
          of: 'poison',
          unit: 'u1',
          put: { faults: [{ fault: 'disinfectant-shock' }] },
          after_h: 5 * 24,
          symptom: [shows(['look-into-aeration'], 'word.foam-billowing-white')],
          test: [reads(['settle-jar'], 'share', { under: 0.1 })],
          miss: 'Poisoned sludge foams, but it is still there: the jar stays as full. The test tells start-up from poison.',
        },
      ],
    },
    {
      no: 39,
      cause: 'cloudy with good oxygen: young sludge or dispersed growth',
      test: 'little settles, cloudy above',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { hauled: true },
          after_h: 72,
          symptom: [CLOUDY, GOOD_OXYGEN],
          test: [reads(['settle-jar'], 'share', { under: 0.3 }), shows(['settle-jar'], 'word.cloudy')],
          miss: 'Our settler gives young sludge the same floc as old: little settles, but it leaves clear water above.',
        },
      ],
    },
    {
      no: 40,
      cause: 'cloudy: oxygen low',
      test: 'oxygen under 1; black or grey',
      tag: 'R31',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'compressor-stopped' }] },
          after_h: 48,
          symptom: [CLOUDY],
          test: [
            reads(['measure-oxygen'], 'concentration_mgL', { under: 1 }),
            shows(['look-into-aeration'], 'word.black'),
          ],
        },
      ],
    },
    {
      no: 41,
      cause: 'sludge carried over: solids over 60 %',
      test: 'settled sludge',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          household: 'family-5',
          put: { faults: [{ fault: 'mixed-liquor-old' }] },
          after_h: 48,
          symptom: [CLOUDY],
          test: [reads(['settle-jar'], 'share', { over: 0.6 })],
        },
      ],
    },
    {
      no: 42,
      cause: 'carry-over at surges: the clarifier is overloaded',
      test: 'what happened; settling against overflow',
      tag: 'D',
      lines: [
        {
          unit: 'u1',
          household: 'family-5',
          years: 1,
          put: { faults: [{ fault: 'crowd' }, { fault: 'wash-day' }] },
          after_h: 2,
          symptom: [CLOUDY],
          test: [
            {
              says: (life) =>
                `overflow ${overflow_mh(life).toFixed(1)} m/h, settling ${zone_mh(life.at(0)).toFixed(1)} m/h`,
              holds: (life) => overflow_mh(life) > zone_mh(life.at(0)),
            },
          ],
          note: 'Settling by Daigger and Roper 1985, of the liquor before the guests came.',
        },
      ],
    },
    {
      no: 44,
      cause: 'bulking: index over 150',
      test: 'over 50 % settled, of thin sludge',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'blanket-rising' }] },
          after_h: 24,
          symptom: [CLOUDY],
          test: [
            reads(['settle-jar'], 'share', { over: 0.5 }),
            state('index over 150 mL/g, and no more solids than before', (life) => {
              const { solids_mgL } = life.now.liquor;
              const settled_mLL = 1000 * numberOf(life, ['settle-jar'], 'share');
              return volumeIndex(settled_mLL, solids_mgL) > 150 && solids_mgL <= life.sound.now.liquor.solids_mgL;
            }),
          ],
        },
      ],
    },
    {
      no: 46,
      cause: 'pin floc: too much air, very old sludge',
      test: 'oxygen over 3; settles clear with specks',
      tag: 'R30',
      lines: [
        {
          unit: 'u1',
          household: 'family-2',
          put: { years: 2 },
          after_h: 24,
          symptom: [shows(['look-into-clarifier'], 'word.specks')],
          test: [reads(['measure-oxygen'], 'concentration_mgL', { over: 3 }), shows(['settle-jar'], 'word.specks')],
          note: 'Specks are a sight made of age and oxygen, by the guide that the row is from; the settler does not compute them.',
        },
      ],
    },
    {
      no: 47,
      cause: 'grey liquor: septic load, or too little time with air',
      test: 'oxygen through a cycle',
      tag: 'R30',
      lines: [
        {
          unit: 'u1',
          put: {
            faults: [
              {
                fault: 'compressor-stopped',
                called: 'compressor off for 9 h and on for 3 h in turn, on the mean',
                present: { on_h: 9, off_h: 3 },
              },
            ],
          },
          after_h: 24,
          symptom: [shows(['look-into-aeration'], 'word.grey')],
          test: [
            state('oxygen now under 0.5, now over 1.5 mg/L', (life) => {
              const day = Array.from({ length: 25 }, (_, h) => life.at(h).now.oxygen_mgL);
              return Math.min(...day) < 0.5 && Math.max(...day.slice(2)) > 1.5;
            }),
          ],
          note: 'Too little time with air, as on a badly set plug-in timer.',
        },
      ],
    },
  ],
};
