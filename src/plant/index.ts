/** What water, air and oxygen do: the public face of `plant`. */
export * from './accumulation.ts';
export * from './air.ts';
export * from './asm1.ts';
export * from './basin.ts';
export * from './chlorine.ts';
export * from './household.ts';
export * from './hydraulics.ts';
export * from './layout.ts';
export * from './num.ts';
export * from './ode.ts';
export * from './oxygen.ts';
export * from './random.ts';
export * from './settleability.ts';
export * from './spec.ts';
export * from './standardLoading.ts';
export * from './takacs.ts';
export * from './works.ts';
