/** Solids: in the liquor, in the clarifier, on the floor of the pump tank, and in the trash tank. */
import { ASM, GAUGES, SEDIMENT_gm3, SOLIDS_PER_COD, SPOTS, settlerFor, settlingVelocity } from '../../plant/index.ts';
import { quantity, say } from '../../service/message.ts';
import { jarOf } from '../settling.ts';
import { type Instant, part, type Told, there, type WhyPart } from './instant.ts';

/** The solids of a water by what they are, mg/L. */
export function solidsOf(c: ArrayLike<number>, resolution: number): readonly WhyPart[] {
  const solids = (id: string, ...components: number[]) => {
    const mgL = components.reduce((sum, i) => sum + SOLIDS_PER_COD * (c[i] ?? 0), 0);
    return part(id, 'concentration_mgL', mgL, false, resolution);
  };
  return there([
    solids('living', ASM.heterotrophs, ASM.autotrophs),
    solids('remains', ASM.decayProducts),
    solids('inert', ASM.inertParticulate),
    solids('uneaten', ASM.slowSubstrate),
  ]);
}

export function liquor({ unit, y, now }: Instant): Told {
  return {
    value: quantity('concentration_mgL', now.water.aeration.solids_mgL, 10),
    parts: solidsOf(unit.passage.composition(y, 'aeration'), 10),
    how: say('because.how.liquor'),
  };
}

/** What a litre of the liquor would settle to in half an hour. */
export function jar({ now }: Instant): Told {
  const { settled_mLL } = jarOf(now);
  const { solids_mgL, index_mLg } = now.liquor;
  return {
    value: quantity('share', (settled_mLL ?? 0) / 1000),
    parts: [],
    how: say('because.how.jar', {
      x: quantity('concentration_mgL', solids_mgL, 10),
      i: quantity('count', index_mLg, 1),
    }),
  };
}

/** How high the sludge stands in the clarifier: what the flow carries up against what falls. */
export function blanket({ unit, y, now }: Instant): Told {
  const { solids_mgL, index_mLg } = now.liquor;
  const up_md = (y[GAUGES.inflow_m3d] ?? 0) / unit.spec.plant.clarifier.area_m2;
  return {
    value: quantity('length_m', now.blanket_m),
    parts: [],
    how: say('because.how.blanket', {
      x: quantity('concentration_mgL', solids_mgL, 10),
      falls: quantity('length_m', settlingVelocity(settlerFor(index_mLg), solids_mgL, solids_mgL) / 24),
      up: quantity('length_m', up_md / 24),
    }),
  };
}

/** Mean thickness of what lies in the pump tank. */
export function sediment({ unit, now }: Instant): Told {
  const thick_m = SPOTS.map((spot) => now.sediment_m[spot]);
  const mean_m = thick_m.reduce((sum, m) => sum + m, 0) / SPOTS.length;
  return {
    value: quantity('length_m', mean_m),
    parts: [],
    how: say('because.how.sediment', {
      v: quantity('volume_m3', mean_m * unit.spec.plant.pump.area_m2),
      g: quantity('count', SEDIMENT_gm3 / 1000, 1),
      least: quantity('length_m', Math.min(...thick_m)),
      most: quantity('length_m', Math.max(...thick_m)),
    }),
  };
}

export function sludge({ unit, y, now }: Instant): Told {
  const { sludge: m3 } = unit.passage.lying_m3(y);
  return {
    value: quantity('length_m', now.trashSludge_m),
    parts: [],
    how: say('because.how.sludge', { v: quantity('volume_m3', m3) }),
  };
}

export function scum({ unit, y, now }: Instant): Told {
  const { scum: m3 } = unit.passage.lying_m3(y);
  return {
    value: quantity('length_m', now.trashScum_m),
    parts: [],
    how: say('because.how.scum', {
      v: quantity('volume_m3', m3),
      a: quantity('count', unit.spec.plant.trash.area_m2, 0.1),
    }),
  };
}
