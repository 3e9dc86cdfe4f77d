/** The colours of `src/desk/css/tokens.css`, by day and by lamp. */
import { readFileSync } from 'node:fs';
import { type Colour, readColour } from './ratio.ts';

export const THEMES = ['light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

export type Tokens = ReadonlyMap<string, Readonly<Record<Theme, Colour>>>;

const FILE = 'src/desk/css/tokens.css';
const COLOUR = String.raw`(?:#[0-9a-f]{3,6}|rgb\([^)]*\)|transparent)`;

/** Every token that is a colour; a colour that is the same by day and by lamp counts for both. */
export function readTokens(css = readFileSync(FILE, 'utf8')): Tokens {
  const found = css.matchAll(
    new RegExp(`--([\\w-]+): (?:light-dark\\((${COLOUR}), (${COLOUR})\\)|(${COLOUR}));`, 'gi'),
  );
  const tokens = new Map<string, Record<Theme, Colour>>();
  for (const [, name = '', light, dark, both] of found) {
    const of = (text: string | undefined) => readColour(text ?? both ?? '');
    tokens.set(name, { light: of(light), dark: of(dark) });
  }
  return tokens;
}
