/** Low-air alarm, or no air. */
import { AIR_ALARM, LITTLE_AIR, reads, shows } from './findings.ts';
import type { Heading } from './kind.ts';

/** Under the label's range, which begins at 2.1 psi. */
const PRESSURE_LOW = reads(['tee-pressure'], 'pressure_kPa', { under: 14.5 });
const TORN = { faults: [{ fault: 'diaphragm-torn' }] };

export const AIR: Heading = {
  name: 'Low-air alarm, or no air',
  rows: [
    {
      no: 18,
      cause: "the compressor's breaker or fuse",
      test: 'look at the panel',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'breaker-tripped:compressorBreaker' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [shows(['read-panel'], 'lever.tripped')],
        },
      ],
    },
    {
      no: 19,
      cause: 'diaphragm torn or valves worn: it hums and gives little air',
      test: 'pressure low, the line not kinked',
      tag: 'R48c, M',
      lines: [
        {
          unit: 'u1',
          put: TORN,
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [PRESSURE_LOW, shows(['follow-air-line'], 'reading.line-whole')],
          from: [{}, { faults: [{ fault: 'line-pinched' }] }],
        },
      ],
    },
    {
      no: 21,
      cause: 'the air line is split, off its fitting or gnawed',
      test: 'a hiss, bubbles of soap; pressure low',
      tag: 'R48, R50',
      lines: [
        {
          of: 'split',
          unit: 'u1',
          put: { faults: [{ fault: 'line-split' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [PRESSURE_LOW, shows(['soap-air-line'], 'reading.foam-line')],
          note: 'A hole of 6 mm: it is seen before it is heard.',
        },
        {
          of: 'off its fitting',
          unit: 'u1',
          put: { faults: [{ fault: 'line-off-fitting' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [PRESSURE_LOW, shows(['soap-air-line'], 'reading.line-off')],
        },
      ],
    },
    {
      no: 22,
      cause: 'the line is frozen, or holds water in a low spot',
      test: 'gurgles; winter',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          temperature_C: 6,
          put: { faults: [{ fault: 'line-water-frozen' }] },
          after_h: 24,
          symptom: [LITTLE_AIR],
          test: [shows(['follow-air-line'], 'reading.line-gurgles')],
          note: "The heading's other symptom, no air: pressure rises before a blocked line, so no lamp lights.",
        },
      ],
    },
    {
      no: 25,
      cause: 'the pressure switch or its tube is faulty; alarm with good air',
      test: 'bubbles as ever',
      tag: 'M',
      lines: [
        {
          of: 'switch',
          unit: 'u1',
          put: { faults: [{ fault: 'air-switch-stuck:sticksClosed' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [shows(['look-into-aeration'], 'reading.bubbles')],
          from: [TORN],
        },
        {
          of: 'tube',
          unit: 'u1',
          put: { faults: [{ fault: 'sensing-tube-wet' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [shows(['look-into-aeration'], 'reading.bubbles')],
          from: [TORN],
        },
      ],
    },
    {
      no: 26,
      cause: 'the compressor is hot and cuts out',
      test: 'the case is hot; it comes and goes',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'housing-hot' }] },
          after_h: 5,
          symptom: [AIR_ALARM],
          test: [
            shows(['feel-compressor'], 'reading.case-hot'),
            {
              says: 'stops and starts again by itself',
              holds: (life) =>
                life.hours('compressorRuns.off').length > 1 && life.hours('compressorRuns.on').length > 1,
            },
          ],
        },
      ],
    },
    {
      no: 27,
      cause: 'the compressor is unplugged or switched off to save power',
      test: 'look',
      tag: 'M',
      lines: [
        {
          unit: 'u1',
          put: { faults: [{ fault: 'compressor-unplugged' }] },
          after_h: 3,
          symptom: [AIR_ALARM],
          test: [shows(['look-at-outlet'], 'reading.plug-out')],
        },
      ],
    },
  ],
};
