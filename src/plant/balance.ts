/**
 * What came in, left, was turned into gas or air and is still held: the audit of a run. 0 when all is accounted for. Not part of
 * the folder's public face: no call needs it, and out of there it would be fetched with every one.
 */

import { ASM, BSM1_15C, chemicalDemand, kjeldahlNitrogen } from './asm1.ts';
import { CELL_ROWS, CONTACT_SIZE, floorOf, SPENT } from './contact.ts';
import { at } from './entry.ts';
import { CAME, CONTACT, HAULED, PROCESS, SEWER, TRUCK, VOLUME, WATER } from './layout.ts';
import { CARRIED, COMPARTMENTS, COMPONENT } from './liquor.ts';
import { GONE, STORE } from './process.ts';
import { lyingCod, lyingNitrogen } from './sediment.ts';

/** Closure errors relative to what came in. */
export interface Balance {
  readonly water: number;
  readonly cod: number;
  readonly nitrogen: number;
  readonly chlorine: number;
}

/** What is counted of a row that begins at `o`, g. */
type Count = (y: Float64Array, o: number) => number;
type Amount = (y: Float64Array) => number;

/** COD: oxygen counts against it, and so does nitrate by what it took to make. Source: BSM1's continuity. */
const cod: Count = (y, o) => chemicalDemand(y, o) - at(y, o + ASM.oxygen) - 4.57 * at(y, o + ASM.nitrate);
const nitrogen: Count = (y, o) => at(y, o + ASM.nitrate) + kjeldahlNitrogen(y, o, BSM1_15C);
/** Before disinfection a row ends with what is free. */
const free: Count = (y, o) => at(y, o + COMPONENT.chlorine);
const chlorine: Count = (y, o) => free(y, o) + at(y, o + COMPONENT.combined);

const floor = (y: Float64Array) => floorOf(y.subarray(CONTACT, CONTACT + CONTACT_SIZE));
const process = (i: number) => (y: Float64Array) => at(y, PROCESS + i);
const contact = (i: number) => (y: Float64Array) => at(y, CONTACT + i);

/** Held in the compartments and the cells, and left by the field, the clean-out, leaks and the hauler's truck. */
function heldAndLeft(inProcess: Count, inContact: Count): Amount {
  return (y) => {
    let sum = inProcess(y, PROCESS + GONE.relieved) + inContact(y, CONTACT + SPENT.sprayed) + inContact(y, HAULED);
    for (let k = 0; k < COMPARTMENTS; k++) sum += inProcess(y, PROCESS + k * CARRIED);
    for (const row of CELL_ROWS) sum += inContact(y, CONTACT + row);
    return sum;
  };
}

/** Balance of a run from one state to another, both with the processes caught up. */
export function balance(start: Float64Array, y: Float64Array): Balance {
  const change = (of: Amount) => of(y) - of(start);
  const closure = (came: Amount, accounted: readonly Amount[]): number => {
    const total = change(came);
    return Math.abs(total - accounted.reduce((sum, of) => sum + change(of), 0)) / Math.max(1, total);
  };
  return {
    water: waterClosure(start, y),
    cod: closure(
      (s) => cod(s, CAME),
      [
        heldAndLeft(cod, cod),
        process(STORE.degradable),
        process(STORE.inert),
        process(STORE.scum),
        process(GONE.methane),
        (s) => -1.71 * process(GONE.nitrogenGas)(s),
        process(GONE.oxygenGained),
        (s) => lyingCod(floor(s)),
      ],
    ),
    nitrogen: closure(
      (s) => nitrogen(s, CAME),
      [
        heldAndLeft(nitrogen, nitrogen),
        process(STORE.nitrogen),
        (s) => BSM1_15C.iXP * process(STORE.inert)(s),
        process(GONE.nitrogenGas),
        contact(SPENT.burnt),
        (s) => lyingNitrogen(floor(s)),
      ],
    ),
    chlorine: closure(
      (s) => free(s, CAME) + contact(SPENT.fed)(s),
      [heldAndLeft(free, chlorine), process(GONE.chlorineUsed), contact(SPENT.used)],
    ),
  };
}

function waterClosure(start: Float64Array, y: Float64Array): number {
  const change = (i: number) => at(y, i) - at(start, i);
  const came = change(WATER.drawn) + change(WATER.seeped) + change(TRUCK.brought_m3);
  const gone = change(WATER.sprayed) + change(WATER.relieved) + change(WATER.indoors);
  const left = gone + change(WATER.leaked) + change(TRUCK.hauled_m3);
  const volumes = change(VOLUME.trash) + change(VOLUME.aeration) + change(VOLUME.pump) + change(SEWER);
  return Math.abs(came - left - volumes) / Math.max(1, came);
}
