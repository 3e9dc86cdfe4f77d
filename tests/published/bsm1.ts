/**
 * The IWA Task Group's Benchmark Simulation Model no. 1, open loop, put together from the modules of the plant: five
 * reactors and a settler of ten layers. Layout, volumes, flows and settings: Alex et al. 2008. Days, m3, g/m3.
 */
import {
  ASM,
  ASM_SIZE,
  asm1Rates,
  asm1React,
  BSM1_15C,
  BSM1_SETTLER,
  type Derivative,
  PARTICULATE,
  RATES,
  type SettlerFlow,
  settle,
  suspendedSolids,
} from '../../src/plant/index.ts';

/** S_I S_S X_I X_S X_BH X_BA X_P S_O S_NO S_NH S_ND X_ND S_ALK. Source: results sheet of 21 May 2009. */
export const STABLE_INFLUENT = [30, 69.5, 51.2, 202.32, 28.17, 0, 0, 0, 0, 31.56, 6.95, 10.59, 7] as const;

/** Reactor 5 in the published open-loop steady state. */
export const R5_STEADY = Float64Array.from([
  30, 0.88949, 1149.1252, 49.3056, 2559.3437, 149.7971, 452.2111, 0.49094, 10.4152, 1.7333, 0.68828, 3.5272, 4.1256,
]);

const REACTORS = 5;
export const LAYERS = 10;
const VOLUMES = [1000, 1000, 1333, 1333, 1333];
const KLA = [0, 0, 240, 240, 84];
const SATURATION = 8;
const Q_IN = 18446;
const Q_INTERNAL = 55338;
const Q_RETURN = 18446;
const Q_WASTE = 385;
const AREA = 1500;
const Q_REACTORS = Q_IN + Q_INTERNAL + Q_RETURN;
const Q_FEED = Q_IN + Q_RETURN;
const Q_UNDER = Q_RETURN + Q_WASTE;

const SOLUBLE = Array.from({ length: ASM_SIZE }, (_, i) => i).filter((i) => !PARTICULATE.includes(i));

export const SOLIDS = REACTORS * ASM_SIZE;
export const SOLUBLES = SOLIDS + LAYERS;
/** Lagged loads into the first reactor, g/d: only the transient check uses them. */
export const LOADS = SOLUBLES + LAYERS * SOLUBLE.length;
export const BSM1_SIZE = LOADS + ASM_SIZE;

const UNDERFLOW = LAYERS - 1;

/** Place of a soluble component in a layer, top first. */
export function solubleAt(layer: number, component: number): number {
  return SOLUBLES + layer * SOLUBLE.length + SOLUBLE.indexOf(component);
}

export const soluble: readonly number[] = SOLUBLE;

/** The whole plant's rates of change, 1/d; `lag_d` is the time constant of the loads, 0 for none. */
export function bsm1(lag_d = 0, rounding = 0): Derivative {
  const r = new Float64Array(RATES);
  const into = new Float64Array(ASM_SIZE);
  const settler = { ...BSM1_SETTLER, rounding };
  const flow: SettlerFlow = {
    layers: LAYERS,
    feedLayer: 4,
    height_m: 0.4,
    up_md: (Q_IN - Q_WASTE) / AREA,
    down_md: Q_UNDER / AREA,
    feed_gm3: 0,
  };
  const last = (REACTORS - 1) * ASM_SIZE;
  return (_t, y, dy) => {
    dy.fill(0);
    const at = (i: number) => y[i] as number;
    const feed = suspendedSolids(y, last);
    const under = feed > 0 ? at(SOLIDS + UNDERFLOW) / feed : 0;
    for (let i = 0; i < ASM_SIZE; i++) {
      const back = PARTICULATE.includes(i) ? at(last + i) * under : at(solubleAt(UNDERFLOW, i));
      const load = Q_IN * (STABLE_INFLUENT[i] as number) + Q_INTERNAL * at(last + i) + Q_RETURN * back;
      into[i] = (lag_d > 0 ? at(LOADS + i) : load) / Q_REACTORS;
      dy[LOADS + i] = lag_d > 0 ? (load - at(LOADS + i)) / lag_d : 0;
    }
    for (let k = 0; k < REACTORS; k++) {
      const o = k * ASM_SIZE;
      const exchange = Q_REACTORS / (VOLUMES[k] as number);
      for (let i = 0; i < ASM_SIZE; i++) {
        const before = k === 0 ? (into[i] as number) : at(o - ASM_SIZE + i);
        dy[o + i] = exchange * (before - at(o + i));
      }
      asm1Rates(y, o, BSM1_15C, r);
      asm1React(r, BSM1_15C, 1, dy, o);
      dy[o + ASM.oxygen] = (dy[o + ASM.oxygen] as number) + (KLA[k] as number) * (SATURATION - at(o + ASM.oxygen));
    }
    flow.feed_gm3 = feed;
    settle(settler, flow, y, dy, SOLIDS);
    for (const i of SOLUBLE) {
      for (let layer = 0; layer < LAYERS; layer++) {
        const here = solubleAt(layer, i);
        if (layer < flow.feedLayer) dy[here] = (flow.up_md * (at(solubleAt(layer + 1, i)) - at(here))) / flow.height_m;
        else if (layer > flow.feedLayer)
          dy[here] = (flow.down_md * (at(solubleAt(layer - 1, i)) - at(here))) / flow.height_m;
        else dy[here] = ((Q_FEED / AREA) * (at(last + i) - at(here))) / flow.height_m;
      }
    }
  };
}
