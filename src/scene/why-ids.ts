/** The numbers that can be told why. A file of its own: who checks what it hears needs no more. */
export const WHY_IDS = ['air', 'air-flow', 'oxygen', 'liquor', 'head', 'current', 'tank', 'stay', 'sludge'] as const;
export type WhyId = (typeof WHY_IDS)[number];
