import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastPage, PAGE, ratioOf } from '../../../src/tools/contrast/page.ts';
import { LEAST, PAIRS } from '../../../src/tools/contrast/pairs.ts';
import { contrast, luminance, over, readColour } from '../../../src/tools/contrast/ratio.ts';
import { readTokens, THEMES } from '../../../src/tools/contrast/tokens.ts';

describe('the ratio of two colours', () => {
  /** Definitions of WCAG 2.2, https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio: 21 to 1 at most, 1 to 1 at least. */
  it('is 21 for black on white, 1 for a colour on itself, and the same either way round', () => {
    const [black, white] = [readColour('#000'), readColour('#ffffff')];
    expect(contrast(black, white)).toBeCloseTo(21, 10);
    expect(contrast(white, black)).toBeCloseTo(21, 10);
    expect(contrast(black, black)).toBe(1);
  });

  /** Coefficients of the definition of relative luminance: red, green and blue at their full. */
  it('weighs red, green and blue as the definition does', () => {
    expect(luminance(readColour('#f00'))).toBeCloseTo(0.2126, 10);
    expect(luminance(readColour('#0f0'))).toBeCloseTo(0.7152, 10);
    expect(luminance(readColour('#00f'))).toBeCloseTo(0.0722, 10);
  });

  /** G18 of the Techniques for WCAG 2.2 has 4.5 as the least; #767676 is the darkest common grey that just reaches it on white. */
  it('puts #767676 on white just over 4.5, and #777777 just under', () => {
    expect(contrast(readColour('#767676'), readColour('#fff'))).toBeGreaterThan(4.5);
    expect(contrast(readColour('#777777'), readColour('#fff'))).toBeLessThan(4.5);
  });

  it('counts a colour that lets half through as what is then seen', () => {
    expect(over(readColour('rgb(0 0 0 / 0.5)'), readColour('#fff')).rgb).toEqual([127.5, 127.5, 127.5]);
    expect(over(readColour('transparent'), readColour('#123456'))).toEqual(readColour('#123456'));
    expect(() => readColour('red')).toThrow('not a colour');
  });
});

describe('what stands on what on the page', () => {
  const tokens = readTokens();

  it.each(THEMES)('is told apart as far as WCAG 2.2 asks (1.4.3, 1.4.11), in %s colours', (theme) => {
    const short = PAIRS.filter((pair) => ratioOf(pair, theme, tokens) < LEAST[pair.kind]).map(
      (pair) => `${pair.front} on ${pair.ground}: ${ratioOf(pair, theme, tokens).toFixed(2)} of ${LEAST[pair.kind]}`,
    );
    expect(short).toEqual([]);
  });

  it('stands in docs/contrast.md as it is; otherwise run: npm run contrast', () => {
    expect(readFileSync(PAGE, 'utf8')).toBe(contrastPage(tokens));
  });
});
