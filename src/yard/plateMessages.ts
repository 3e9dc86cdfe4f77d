/** What only the plates say in figures. */
import type { JarScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

/** Thinner than this, m, a whole inch says nothing. */
const THIN_m = 0.025;

/** A thickness as a core tube is read: to the centimetre. */
export const thickness = (m: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'length_m', value: m, resolution: m < THIN_m ? 0.005 : 0.01 } },
});

/** Parts of the jar's litre, as fine as its marks. */
export const milliLitres = (mLL: number): Message => ({
  id: 'plate.jar.mLL',
  values: { n: { measure: 'count', value: mLL, resolution: 10 } },
});

export const verdictName = (verdict: NonNullable<JarScene['verdict']>): Message => ({ id: `plate.jar.${verdict}` });

/** Air as fine as a flow of it is told. */
export const airFlow = (Lmin: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'airFlow_Lmin', value: Lmin, resolution: 1 } },
});

/** A share as whole percents. */
export const percent = (share: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'share', value: share, resolution: 0.01 } },
});
