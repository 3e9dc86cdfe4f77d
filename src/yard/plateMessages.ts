/** What only the plates say in figures. */
import type { JarScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

/** A thickness as a core tube is read: to the centimetre. */
export const thickness = (m: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'length_m', value: m, resolution: 0.01 } },
});

/** Parts of the jar's litre, as fine as its marks. */
export const milliLitres = (mLL: number): Message => ({
  id: 'plate.jar.mLL',
  values: { n: { measure: 'count', value: mLL, resolution: 10 } },
});

export const verdictName = (verdict: NonNullable<JarScene['verdict']>): Message => ({ id: `plate.jar.${verdict}` });
