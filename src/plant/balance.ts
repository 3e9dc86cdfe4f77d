/** What came in, left, was turned into gas or air and is still held: the audit of a run. 0 when all is accounted for. */

import { ASM, BSM1_15C, chemicalDemand, kjeldahlNitrogen } from './asm1.ts';
import { at } from './entry.ts';
import { PROCESS, VOLUME, WATER } from './layout.ts';
import { COMPARTMENTS, COMPONENT, COMPONENTS } from './liquor.ts';
import { LEDGER, STORE } from './process.ts';

/** Closure errors relative to what came in. */
export interface Balance {
  readonly water: number;
  readonly cod: number;
  readonly nitrogen: number;
  readonly chlorine: number;
}

/** COD of a row, g: oxygen counts against it, and so does nitrate by what it took to make. Source: BSM1's continuity. */
function codOf(y: Float64Array, o: number): number {
  return chemicalDemand(y, o) - at(y, o + ASM.oxygen) - 4.57 * at(y, o + ASM.nitrate);
}

function nitrogenOf(y: Float64Array, o: number): number {
  return at(y, o + ASM.nitrate) + kjeldahlNitrogen(y, o, BSM1_15C);
}

function chlorineOf(y: Float64Array, o: number): number {
  return at(y, o + COMPONENT.chlorine);
}

function held(y: Float64Array, of: (y: Float64Array, o: number) => number): number {
  let sum = 0;
  for (let k = 0; k < COMPARTMENTS; k++) sum += of(y, PROCESS + k * COMPONENTS);
  return sum;
}

/** Balance of a run from one state to another, both with the processes caught up. */
export function balance(start: Float64Array, y: Float64Array): Balance {
  const change = (of: (y: Float64Array) => number) => of(y) - of(start);
  const ledger = (i: number) => (state: Float64Array) => at(state, PROCESS + i);
  const closure = (of: (y: Float64Array, o: number) => number, kept: (y: Float64Array) => number): number => {
    const came = change((s) => of(s, PROCESS + LEDGER.in));
    const left = change((s) => of(s, PROCESS + LEDGER.out));
    return Math.abs(came - left - change((s) => held(s, of)) - change(kept)) / Math.max(1, came);
  };
  return {
    water: waterClosure(start, y),
    cod: closure(codOf, (s) => {
      const stored = ledger(STORE.degradable)(s) + ledger(STORE.inert)(s) + ledger(STORE.scum)(s);
      const gone = ledger(LEDGER.methane)(s) - 1.71 * ledger(LEDGER.nitrogenGas)(s);
      return stored + gone + ledger(LEDGER.oxygenGained)(s);
    }),
    nitrogen: closure(nitrogenOf, (s) => {
      const stored = ledger(STORE.nitrogen)(s) + BSM1_15C.iXP * ledger(STORE.inert)(s);
      return stored + ledger(LEDGER.nitrogenGas)(s);
    }),
    chlorine: closure(chlorineOf, ledger(LEDGER.chlorineUsed)),
  };
}

function waterClosure(start: Float64Array, y: Float64Array): number {
  const change = (i: number) => at(y, i) - at(start, i);
  const left = change(WATER.sprayed) + change(WATER.relieved) + change(WATER.indoors);
  const volumes = change(VOLUME.trash) + change(VOLUME.aeration) + change(VOLUME.pump);
  return Math.abs(change(WATER.drawn) - left - volumes) / Math.max(1, change(WATER.drawn));
}
