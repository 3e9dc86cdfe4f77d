import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const TOKENS = 'src/desk/css/tokens.css';
/** Set by components, or by one rule for those under it. */
const LOCAL = /^--(?:wire|at|left-taken|right-taken|line-at|sky|art|grass|tint)$/;

const sheets = readdirSync('src/desk', { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.css'))
  .map((path) => `src/desk/${path}`)
  .map((file) => ({
    file,
    lines: readFileSync(file, 'utf8')
      .replace(/\/\*.*?\*\//gs, (comment) => comment.replace(/[^\n]/g, ' '))
      .split('\n'),
  }));
const others = sheets.filter(({ file }) => !file.endsWith('tokens.css'));
const defined = new Set([...readFileSync(TOKENS, 'utf8').matchAll(/^\s+(--[\w-]+):/gm)].map(([, name]) => name));

/** Every line of the sheets that something is wrong with. */
function wrong(of: typeof sheets, is: (line: string) => boolean): readonly string[] {
  return of.flatMap(({ file, lines }) =>
    lines.flatMap((line, i) => (is(line) ? [`${file}:${i + 1}: ${line.trim()}`] : [])),
  );
}

describe('the styles', () => {
  it('take every colour from the tokens', () => {
    const raw = /:.*(?:#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch)a?\(|\b(?:white|black|gr[ae]y|red|blue|green)\b)/i;
    expect(wrong(others, (line) => !/[{,]$/.test(line) && raw.test(line.replace(/var\([^)]*\)/g, '')))).toEqual([]);
  });

  it('use no token that is not there, and have none that is not used', () => {
    const named = (line: string) => [...line.matchAll(/var\((--[\w-]+)/g)].map(([, name = '']) => name);
    expect(wrong(sheets, (line) => named(line).some((one) => !defined.has(one) && !LOCAL.test(one)))).toEqual([]);
    const used = new Set(sheets.flatMap(({ lines }) => lines.flatMap(named)));
    expect([...defined].filter((one = '') => !used.has(one))).toEqual([]);
  });

  it('set type in the sizes of the scale, of which none is under 14 px; only paper has points', () => {
    const scale = [...readFileSync(TOKENS, 'utf8').matchAll(/--text[\w-]*: ([\d.]+)rem;/g)].map(([, rem]) =>
      Number(rem),
    );
    expect(Math.min(...scale) * 16).toBeGreaterThanOrEqual(14);
    expect(wrong(others, (line) => /font-size:/.test(line) && !/var\(--text|[\d.]+pt;/.test(line))).toEqual([]);
  });

  it('keep the distances of the scale', () => {
    const distance = /^\s*(?:row-|column-)?(?:gap|padding|margin)[a-z-]*:/;
    const odd = (line: string) => [...line.matchAll(/\b(\d+)px/g)].some(([, px]) => Number(px) > 1 && Number(px) < 40);
    expect(wrong(others, (line) => distance.test(line) && !/calc|-\d/.test(line) && odd(line))).toEqual([]);
  });
});
