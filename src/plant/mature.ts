/**
 * Where a unit begins: a sound works that has treated its household's water since its sludge was last removed. The
 * figures are what the model itself comes to with three persons at 20 degC, rounded; it forgets them within weeks.
 */
import { CELL_ROWS, CONTACT_SIZE, floorOf, RISER_CELLS } from './contact.ts';
import { fillStock, STOCK_SIZE } from './disinfection.ts';
import { at } from './entry.ts';
import { hopperOf, spreadWater } from './hopper.ts';
import { CONTACT, GAUGES, PROCESS, PROCESS_STEP, STEPPED, STORED } from './layout.ts';
import {
  CARRIED,
  CHAMBERS,
  COMPARTMENT,
  COMPARTMENTS,
  COMPONENT,
  COMPONENTS,
  type Composition,
  composition,
  HELD,
} from './liquor.ts';
import { pow } from './num.ts';
import { massOf, STORE } from './process.ts';
import { layDown } from './sediment.ts';
import { FULL_SEAL_mm } from './trap.ts';
import type { Works } from './works.ts';

const CLEAR = { inertSoluble: 22, ammonia: 0.1, nitrate: 32, alkalinity: 2.7, solubleNitrogen: 0.7, coliform: 90_000 };
const TRASH = composition({
  inertSoluble: 22,
  substrate: 130,
  inertParticulate: 27,
  slowSubstrate: 100,
  heterotrophs: 3.5,
  ammonia: 23,
  solubleNitrogen: 10,
  particulateNitrogen: 3,
  alkalinity: 6.6,
  coliform: 3e5,
});
/** What lies in the trash tank after a year, g: degradable, inert, nitrogen, grease; and how it grows with the years (Gray 1995). */
export const LYING = { degradable: 27_500, inert: 7600, nitrogen: 1000, scum: 4600 } as const;
const LYING_GROWS = 0.845;
/** Sediment on the pump tank's floor after a year, g COD. */
const ON_PUMP_FLOOR_g = 3500;
const INFLOW_m3d = 0.8;
const FIRST_STEP_d = 1e-3;
/** What the living coliform of chlorinated water have met of chlorine, mg min/L, and how many there are per 100 mL. */
const MET = 300;
const LIVING = 20;

/** What is dead in mixed liquor for each year since sludge was last removed, g/m3. */
export const LIQUOR_AGES_gm3y = { inert: 3300, decayed: 4000 } as const;

/** Mixed liquor after so many years, thinned to a share; what lives in it is there at once, what is dead gathers. */
function liquor(years: number, share: number, oxygen: number): Composition {
  return composition({
    ...CLEAR,
    inertParticulate: share * LIQUOR_AGES_gm3y.inert * years,
    decayProducts: share * LIQUOR_AGES_gm3y.decayed * years,
    slowSubstrate: share * 6,
    heterotrophs: share * 385,
    autotrophs: share * 39,
    particulateNitrogen: share * 0.5,
    oxygen,
  });
}

/** Effluent on its way through disinfection, which leaves chlorine in it or not. */
function disinfected(years: number, chlorinated: boolean): Composition {
  const c = liquor(years, 0.005, 5);
  c[COMPONENT.coliform] = LIVING;
  if (!chlorinated) return c;
  c[COMPONENT.chlorine] = 0.4;
  c[COMPONENT.exposure] = LIVING * MET;
  return c;
}

/** Fills the processes' part of a state whose volumes stand: so many years since sludge was removed. */
export function fillMature(works: Works, y: Float64Array, years: number): void {
  const { spec } = works;
  const held = works.volumes(y, new Float64Array(CHAMBERS));
  const volumes = spreadWater(hopperOf(spec.clarifier), held, new Float64Array(COMPARTMENTS));
  const rows = new Array<Composition>(COMPARTMENTS).fill(liquor(years, 0.005, 6));
  rows[COMPARTMENT.trash] = TRASH;
  rows[COMPARTMENT.aeration] = liquor(years, 1, 7);
  rows[COMPARTMENTS - 1] = liquor(years, 0.75, 6);
  rows.forEach((c, k) => {
    for (let i = 0; i < CARRIED; i++) y[PROCESS + massOf(k, i)] = at(c, i) * at(volumes, k);
  });
  for (const key of Object.keys(LYING) as (keyof typeof LYING)[])
    y[PROCESS + STORE[key]] = LYING[key] * pow(years, LYING_GROWS);
  fillDisinfected(works, y, years, held);
  y.copyWithin(STEPPED, 0, STEPPED);
  y[PROCESS_STEP] = FIRST_STEP_d;
  y[GAUGES.inflow_m3d] = INFLOW_m3d;
  y[GAUGES.bulking] = 1;
  y[GAUGES.seal_mm] = FULL_SEAL_mm;
}

function fillDisinfected({ spec }: Works, y: Float64Array, years: number, held: Float64Array): void {
  const c = disinfected(years, spec.disinfection.kind !== 'ultraviolet');
  CELL_ROWS.forEach((row, j) => {
    const volume = j < RISER_CELLS ? at(held, HELD.riser) / RISER_CELLS : at(held, HELD.pump);
    for (let i = 0; i < COMPONENTS; i++) y[CONTACT + row + i] = at(c, i) * volume;
  });
  layDown(floorOf(y.subarray(CONTACT, CONTACT + CONTACT_SIZE)), years * ON_PUMP_FLOOR_g);
  fillStock(spec.disinfection, 1, y.subarray(STORED, STORED + STOCK_SIZE));
}
