/** The numbers that can be told why. A file of its own: who checks what it hears needs no more. */
export const WHY_IDS = [
  ...(['air', 'air-flow', 'stroke', 'intake', 'oxygen'] as const),
  ...(['liquor', 'jar', 'blanket', 'rise', 'clarified', 'solids-out', 'residual'] as const),
  ...(['head', 'passage', 'field', 'flow', 'current'] as const),
  ...(['tank', 'aeration-level', 'sediment', 'stay', 'sludge', 'scum'] as const),
] as const;
export type WhyId = (typeof WHY_IDS)[number];
