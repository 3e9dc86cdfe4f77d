/** `docs/contrast.md`: every pair with its ratios in both themes. */
import { LEAST, PAIRS, type Pair } from './pairs.ts';
import { contrast, over } from './ratio.ts';
import { readTokens, type Theme, type Tokens } from './tokens.ts';

export const PAGE = 'docs/contrast.md';

/** How far the two of a pair stand apart; what lets something through lies over the page's ground. */
export function ratioOf({ front, ground }: Pair, theme: Theme, tokens: Tokens): number {
  const of = (name: string) => {
    const found = tokens.get(name);
    if (found === undefined) throw new Error(`no colour --${name} in the tokens`);
    return found[theme];
  };
  const behind = over(of(ground), of('paper'));
  return contrast(over(of(front), behind), behind);
}

const KIND = { text: 'text', large: 'large text', part: 'part' } as const;

export function contrastPage(tokens: Tokens = readTokens()): string {
  // Cut off, not rounded: 4.499 is not 4.5.
  const shown = (ratio: number) => (Math.floor(ratio * 100) / 100).toFixed(2);
  const rows = PAIRS.map((pair) => {
    const { front, ground, kind, where } = pair;
    const [light, dark] = [ratioOf(pair, 'light', tokens), ratioOf(pair, 'dark', tokens)];
    return `| \`${front}\` | \`${ground}\` | ${where} | ${KIND[kind]} | ${LEAST[kind]} | ${shown(light)} | ${shown(dark)} |`;
  });
  return [
    '# Contrast',
    '',
    '<!-- Made by `npm run contrast` from src/desk/css/tokens.css and src/tools/contrast/pairs.ts. Change it there. -->',
    '',
    'What stands on what on the page, and how far apart the two are in light and in dark colours. Ratio, relative luminance and the',
    'least ratios are those of WCAG 2.2: success criterion 1.4.3 for text, 1.4.11 for what is needed to tell a control, its state or',
    'what a drawing says. `npm test` holds every row, and looks over every screen in both themes with axe.',
    '',
    '| Front | Ground | Where | Is | At least | Light | Dark |',
    '| --- | --- | --- | --- | --: | --: | --: |',
    ...rows,
    '',
  ].join('\n');
}
