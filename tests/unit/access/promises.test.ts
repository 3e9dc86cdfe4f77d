/** What the statement on access promises of the sources as they stand; what only a browser can tell is in `tests/browser/access`. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const SOURCES: Readonly<Record<string, string>> = import.meta.glob<string>('../../../src/**/*.{ts,tsx,css}', {
  eager: true,
  query: '?raw',
  import: 'default',
});
const withText = (pattern: RegExp): string[] =>
  Object.entries(SOURCES)
    .filter(([, text]) => pattern.test(text))
    .map(([path]) => path.replace(/^.*?\/src\//, ''))
    .sort();

/** Whatever listens for a drag, and what does the same with single presses (2.5.7). */
const DRAGS: Readonly<Record<string, string>> = {
  'desk/build/curve-strip.tsx': 'one click in the curve, and the field of the instant',
  'desk/build/fault-strips.tsx': 'the fields of the fault: when it begins, how long it grows',
  'desk/build/faults.tsx': 'one click on the fault puts it on its part',
  'desk/debrief/timeline.tsx': 'one click in the drawing, the track, and the buttons beside it',
  'desk/instructor/strips.tsx': 'one click in the drawing, and the list of deeds',
  'desk/picture/glass-over.tsx': 'one press where the glass is to be held, and arrow keys',
  'yard/hand.ts': 'the strip of parts brings a part into sight; buttons go closer and farther',
};

/** Whatever listens for keys wherever the focus is, and why no single letter, digit or sign does anything there (2.1.4). */
const KEYS: Readonly<Record<string, string>> = {
  'desk/build/build.tsx': 'with Ctrl or Command only',
  'desk/call/keys.ts': 'the space bar only, where no control has the focus',
  'desk/instructor/key.tsx': 'with Alt and Shift only',
  'desk/start/find-field.tsx': 'the key / only, which a switch among the settings turns off',
};

/** Flashes a second that are safe for everybody are three (2.3.1); ours pulse at most at this. */
const MOST_HZ = 2;

describe('the sources', () => {
  it('drag nothing that cannot be had by single presses', () => {
    expect(withText(/onPointerMove|\bdraggable\b|'pointermove'/)).toEqual(Object.keys(DRAGS).sort());
  });

  it('hear no key on the whole page but those that are known', () => {
    const listening = withText(/(?<![.\w])(?:window\.|document\.)?addEventListener\('key/);
    expect(listening).toEqual(Object.keys(KEYS).sort());
    expect(withText(/accessKey|accesskey/)).toEqual([]);
  });

  it('pulse at most twice a second, and blink nowhere', () => {
    const yard = Object.entries(SOURCES).filter(([path]) => path.includes('/yard/'));
    const rates = yard.flatMap(([, text]) =>
      [...text.matchAll(/_HZ = ([\d.]+)|6\.28\d* \* ([\d.]+)/g)].map((found) => Number(found[1] ?? found[2])),
    );
    expect(rates.length).toBeGreaterThan(1);
    for (const rate of rates) expect(rate).toBeLessThanOrEqual(MOST_HZ);
    expect(withText(/@keyframes|animation:|text-decoration: blink/)).toEqual([]);
  });

  it('act when a press ends, so that it can be taken back by moving away, but for what a drag begins with', () => {
    expect(withText(/onPointerDown|onMouseDown|onTouchStart/)).toEqual([
      'desk/build/curve-strip.tsx',
      'desk/build/fault-strips.tsx',
      'desk/debrief/timeline.tsx',
      'desk/instructor/strips.tsx',
      'desk/picture/glass-over.tsx',
    ]);
  });

  it('give every picture that is drawn in lines a name, or hide it from screen readers', () => {
    const bare = Object.entries(SOURCES).flatMap(([path, text]) =>
      [...text.matchAll(/<svg\b(?:[^>]|=>)*>/g)]
        .filter(([tag]) => !/aria-hidden="true"|role="img"|aria-label/.test(tag))
        .map(() => path.replace(/^.*?\/src\//, '')),
    );
    expect(bare).toEqual([]);
  });
});

/** Success criteria of WCAG 2.2 of levels A and AA (w3.org/TR/WCAG22); 4.1.1 is obsolete there. */
const CRITERIA = [
  ...['1.1.1', '1.2.1', '1.2.2', '1.2.3', '1.2.4', '1.2.5', '1.3.1', '1.3.2', '1.3.3', '1.3.4', '1.3.5', '1.4.1'],
  ...['1.4.2', '1.4.3', '1.4.4', '1.4.5', '1.4.10', '1.4.11', '1.4.12', '1.4.13', '2.1.1', '2.1.2', '2.1.4', '2.2.1'],
  ...['2.2.2', '2.3.1', '2.4.1', '2.4.2', '2.4.3', '2.4.4', '2.4.5', '2.4.6', '2.4.7', '2.4.11', '2.5.1', '2.5.2'],
  ...['2.5.3', '2.5.4', '2.5.7', '2.5.8', '3.1.1', '3.1.2', '3.2.1', '3.2.2', '3.2.3', '3.2.4', '3.2.6', '3.3.1'],
  ...['3.3.2', '3.3.3', '3.3.4', '3.3.7', '3.3.8', '4.1.2', '4.1.3'],
];

describe('the statement on access', () => {
  const text = readFileSync('docs/accessibility.md', 'utf8');
  const rows = [...text.matchAll(/^\| (\d\.\d\.\d+) [^|]*\| ([^|]*) \| ([^|]*) \| ([^|]*) \|$/gm)];

  it('has a line for each criterion of levels A and AA, with whether it is met and what tests it', () => {
    expect(rows.map(([, criterion]) => criterion)).toEqual(CRITERIA);
    for (const [, criterion, met] of rows)
      expect([criterion, met]).toEqual([criterion, expect.stringMatching(/^(yes|partly|none of it here)$/)]);
  });

  it('names tests that there are', () => {
    for (const [, criterion, , , tested] of rows) {
      for (const [file] of (tested ?? '').matchAll(/tests\/[\w./-]+\.ts/g))
        expect([criterion, file, readFileSync(file, 'utf8').length > 0]).toEqual([criterion, file, true]);
    }
  });
});
