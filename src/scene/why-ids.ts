/** The numbers that can be told why. A file of its own: who checks what it hears needs no more. */
export const WHY_IDS = [
  ...(['air', 'air-flow', 'stroke', 'oxygen'] as const),
  ...(['liquor', 'blanket', 'solids-out', 'residual'] as const),
  ...(['head', 'passage', 'current'] as const),
  ...(['tank', 'sediment', 'stay', 'sludge', 'scum'] as const),
] as const;
export type WhyId = (typeof WHY_IDS)[number];
