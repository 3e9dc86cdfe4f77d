/** What the readings of a call still allow, and which check is worth most. */
export * from './belief.ts';
export * from './conflicts.ts';
export * from './diagnosis.ts';
export * from './hypotheses.ts';
export * from './outlook.ts';
export * from './probes.ts';
export * from './reading.ts';
export * from './sifting.ts';
export * from './signatures.ts';
export * from './steps.ts';
export * from './told.ts';
export * from './twin.ts';
