/** What a person at the works and in the house would see and smell, from the state of a unit. */
import {
  ASM,
  BSM1_15C,
  bubbling,
  type Composition,
  clarityDepth_m,
  type EffluentColour,
  effluentColour,
  type Flows,
  type Foam,
  foam,
  GAUGES,
  heterotrophsKeep,
  type LiquorColour,
  liquorColour,
  type OutdoorSmell,
  pinFloc,
  type Sample,
  type Smell,
  smellAtLids,
  smellIndoors,
  smellOutdoors,
  suspendedSolids,
} from '../plant/index.ts';
import type { Unit } from './engine.ts';

export interface Sensed {
  readonly liquor: LiquorColour;
  readonly effluent: EffluentColour;
  /** Depth at which a mark is lost in the pump tank's water, m. */
  readonly clarity_m: number;
  readonly foam: Foam;
  /** Fine specks in water that has settled clear. */
  readonly specks: boolean;
  /** 0 still to 1 as a healthy unit boils. */
  readonly bubbles: number;
  /** Beside the works with the lids on, over the open aeration chamber, and in the house. */
  readonly outdoors: Smell<OutdoorSmell>;
  readonly overLid: Smell<OutdoorSmell>;
  readonly indoors: Smell<'none' | 'sewer-air' | 'septic'>;
}

/** Share of its rated flow that an ordinary household sends: three or four persons of 60 to 70 gal (convention). */
const ORDINARY_SHARE = 0.4;

/** Of a state whose processes have caught up; `effluent` is the pump tank's water. */
export function sensedAt(unit: Unit, t: number, y: Float64Array, flows: Flows, effluent: Sample): Sensed {
  const { spec } = unit;
  const liquor = unit.passage.composition(y, 'aeration');
  const hoursWithoutOxygen = y[GAUGES.hoursWithoutOxygen] as number;
  const air = { air_Lmin: flows.air.diffuser_Lmin, reference_Lmin: spec.plant.air.transferReference_Lmin };
  const smell = (open: number) => smellOutdoors({ hoursWithoutOxygen, residual_mgL: effluent.residual_mgL, open });
  const { drainGap, lidGap } = unit.driveAt(t).condition;
  const outdoors = smell(0);
  const atLids = smellAtLids(lidGap);
  return {
    liquor: liquorColour({ solids_mgL: suspendedSolids(liquor, 0), hoursWithoutOxygen }),
    effluent: effluentColour({ solids_mgL: effluent.solids_mgL, hoursWithoutOxygen }),
    clarity_m: clarityDepth_m(effluent.solids_mgL),
    foam: foam({
      ...air,
      heterotrophs_mgL: liquor[ASM.heterotrophs] as number,
      activity: heterotrophsKeep(liquor, 0, suspendedSolids(liquor, 0), BSM1_15C),
      inertShare: inertShare(liquor),
      soap: (y[GAUGES.inflow_m3d] as number) / (ORDINARY_SHARE * spec.rated_m3d),
    }),
    specks: pinFloc({ inertShare: inertShare(liquor), oxygen_mgL: liquor[ASM.oxygen] as number }),
    bubbles: bubbling(air.air_Lmin, air.reference_Lmin),
    outdoors: atLids.strength > outdoors.strength ? atLids : outdoors,
    overLid: smell(1),
    indoors: smellIndoors({ seal_mm: y[GAUGES.seal_mm] as number, gap: drainGap, backedUp: flows.indoors > 0 }),
  };
}

/** Inert part of the particulate COD. */
function inertShare(liquor: Composition): number {
  const inert = (liquor[ASM.inertParticulate] as number) + (liquor[ASM.decayProducts] as number);
  const particulate = suspendedSolids(liquor, 0) / 0.75;
  return particulate > 0 ? inert / particulate : 0;
}
