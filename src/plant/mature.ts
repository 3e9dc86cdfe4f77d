/**
 * Where a unit begins: a sound works that has treated its household's water since its sludge was last removed. The
 * figures are what the model itself comes to with three persons at 20 degC, rounded; it forgets them within weeks.
 */
import { at } from './entry.ts';
import { hopperOf, spreadWater } from './hopper.ts';
import { GAUGES, PROCESS, PROCESS_STEP, STEPPED } from './layout.ts';
import { CHAMBERS, COMPARTMENT, COMPARTMENTS, COMPONENTS, type Composition, composition } from './liquor.ts';
import { massOf, STORE } from './process.ts';
import type { Works } from './works.ts';

const CLEAR = { inertSoluble: 22, ammonia: 0.2, nitrate: 30, alkalinity: 2.8, solubleNitrogen: 0.5, coliform: 25_000 };
const TRASH = composition({
  inertSoluble: 22,
  substrate: 100,
  inertParticulate: 19,
  slowSubstrate: 71,
  ammonia: 20,
  solubleNitrogen: 9,
  particulateNitrogen: 2,
  alkalinity: 6.4,
  coliform: 1e6,
});
/** What lies in the trash tank after a year, g: degradable, inert, nitrogen, grease. */
const LYING = { degradable: 18_000, inert: 9000, nitrogen: 900, scum: 10_000 } as const;
const INFLOW_m3d = 0.8;
const FIRST_STEP_d = 1e-3;

/** Mixed liquor after so many years, thinned to a share; what lives in it is there at once, what is dead gathers. */
function liquor(
  years: number,
  share: number,
  more: { oxygen: number; chlorine?: number; exposure?: number },
): Composition {
  return composition({
    ...CLEAR,
    inertParticulate: share * 1800 * years,
    decayProducts: share * 1700 * years,
    slowSubstrate: share * 15,
    heterotrophs: share * 320,
    autotrophs: share * 38,
    particulateNitrogen: share,
    ...more,
  });
}

/** Fills the processes' part of a state whose volumes stand: so many years since sludge was removed. */
export function fillMature(works: Works, y: Float64Array, years: number): void {
  const held = works.volumes(y, new Float64Array(CHAMBERS));
  const volumes = spreadWater(hopperOf(works.spec.clarifier), held, new Float64Array(COMPARTMENTS));
  const treated = liquor(years, 0.005, { oxygen: 5, chlorine: 1.2, exposure: 2500 });
  const clear = liquor(years, 0.005, { oxygen: 6 });
  const rows = new Array<Composition>(COMPARTMENTS).fill(clear);
  rows[COMPARTMENT.trash] = TRASH;
  rows[COMPARTMENT.aeration] = liquor(years, 1, { oxygen: 7 });
  rows[COMPARTMENT.riser - 1] = liquor(years, 0.75, { oxygen: 6 });
  rows[COMPARTMENT.riser] = treated;
  rows[COMPARTMENT.pump] = treated;
  rows.forEach((c, k) => {
    for (let i = 0; i < COMPONENTS; i++) y[PROCESS + massOf(k, i)] = at(c, i) * at(volumes, k);
  });
  for (const key of Object.keys(LYING) as (keyof typeof LYING)[]) y[PROCESS + STORE[key]] = LYING[key] * years;
  y.copyWithin(STEPPED, 0, STEPPED);
  y[PROCESS_STEP] = FIRST_STEP_d;
  y[GAUGES.inflow_m3d] = INFLOW_m3d;
}
