/** How far two colours stand apart, as WCAG 2.2 reckons it: https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio */

/** Red, green and blue from 0 to 255, and how much of what is behind it is covered, from 0 to 1. */
export interface Colour {
  readonly rgb: readonly [number, number, number];
  readonly cover: number;
}

/** Reads `#rgb`, `#rrggbb`, `rgb(r g b / a)` and `transparent`; anything else is an error. */
export function readColour(text: string): Colour {
  if (text === 'transparent') return { rgb: [0, 0, 0], cover: 0 };
  const hex = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(text)?.[1];
  if (hex !== undefined) {
    const [r, g, b] = (hex.length === 3 ? [...hex].map((one) => one + one) : (hex.match(/../g) ?? [])).map((one) =>
      Number.parseInt(one, 16),
    );
    return { rgb: [r ?? 0, g ?? 0, b ?? 0], cover: 1 };
  }
  const [, r, g, b, cover] = /^rgb\((\d+) (\d+) (\d+) \/ ([\d.]+)\)$/.exec(text) ?? [];
  if (cover === undefined) throw new Error(`not a colour: ${text}`);
  return { rgb: [Number(r), Number(g), Number(b)], cover: Number(cover) };
}

/** What is seen where a colour lies over another that covers all. */
export function over(front: Colour, behind: Colour): Colour {
  const mixed = front.rgb.map((one, i) => one * front.cover + (behind.rgb[i] ?? 0) * (1 - front.cover));
  return { rgb: [mixed[0] ?? 0, mixed[1] ?? 0, mixed[2] ?? 0], cover: 1 };
}

/** Relative luminance, 0 for black to 1 for white: https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
export function luminance({ rgb }: Colour): number {
  const [r = 0, g = 0, b = 0] = rgb.map((one) => {
    const share = one / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** 1 for alike to 21 for black on white. */
export function contrast(one: Colour, other: Colour): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
