/** A stretch of time over which the processes follow the water: see passage.ts. */
import { CARRIED, CHAMBERS, COMPONENTS, type Composition } from './liquor.ts';

/** A stretch of time: its mean flows, m3/d (below zero a flow runs backwards), and what holds throughout. */
export interface Stretch {
  days: number;
  /** Of what comes in, what the house drew; the rest is rain. */
  drawn: number;
  inflow: number;
  trashOut: number;
  slot: number;
  clarifierOut: number;
  riserOut: number;
  discharge: number;
  relieved: number;
  /** Liquor that the air's circulation carries through the slot into the clarifier, and as much back, m3/d. */
  exchange: number;
  /** Water held when it begins, m3, in the order of `HELD`. */
  readonly volumes: Float64Array;
  /** What comes in, g/d by component; the share of its particulates that the trash tank keeps; of that what floats. */
  readonly coming: Float64Array;
  captured: number;
  floats: number;
  /** Grease poured in on top of that, g COD/d. */
  grease: number;
  /** What comes back out of the disinfection riser while its flow runs backwards, g/m3. */
  readonly returning: Composition;
  /** Transfer coefficient of the aeration chamber, 1/d, and the saturation it tends to, g/m3. */
  transfer: number;
  saturation: number;
  /** Share of the lowest layer's solids that gas lifts to the top, 1/d. */
  lifted: number;
  /** Share of its opening that the return slot has for sludge, and of the lying scum that goes on with the water, 1/d. */
  slotOpen: number;
  scoured: number;
}

/** A stretch in which nothing flows and nothing comes. */
export function stillStretch(): Stretch {
  return {
    days: 0,
    drawn: 0,
    inflow: 0,
    trashOut: 0,
    slot: 0,
    clarifierOut: 0,
    riserOut: 0,
    discharge: 0,
    relieved: 0,
    exchange: 0,
    volumes: new Float64Array(CHAMBERS),
    coming: new Float64Array(CARRIED),
    captured: 0,
    floats: 0,
    grease: 0,
    returning: new Float64Array(COMPONENTS),
    transfer: 0,
    saturation: 0,
    lifted: 0,
    slotOpen: 1,
    scoured: 0,
  };
}
