/** Water: how much stands in the pump tank, how long it stayed, and what is left in it. */
import { GAUGES, MONO_RATIO } from '../../plant/index.ts';
import { quantity, say } from '../../service/message.ts';
import { heldIn, type Instant, part, type Told, there } from './instant.ts';
import { solidsOf } from './solids.ts';

const HOURS = 24;

/** How long until the high-water float rises, at the mean inflow of the last days. */
export function tank({ unit, now, y }: Instant): Told {
  const alarm_m = unit.spec.panel.floats.highWaterFloat.makes_m;
  const inflow_m3d = y[GAUGES.inflow_m3d] ?? 0;
  const value = quantity('length_m', now.pumpTank_m);
  const held = heldIn(unit, y).pump;
  const left_m3 = (alarm_m - now.pumpTank_m) * unit.spec.plant.pump.area_m2;
  if (left_m3 <= 0 || inflow_m3d <= 0)
    return { value, parts: [], how: say('because.how.tank-high', { v: quantity('volume_m3', held) }) };
  return {
    value,
    parts: [],
    how: say('because.how.tank', {
      v: quantity('volume_m3', held),
      left: quantity('volume_m3', left_m3),
      q: quantity('volume_m3', inflow_m3d),
      h: quantity('duration_h', (HOURS * left_m3) / inflow_m3d),
    }),
  };
}

/** Mean stay on the way to disinfection: in the trash tank, the aeration chamber and the clarifier. */
export function stay({ unit, y }: Instant): Told | undefined {
  const inflow_m3d = y[GAUGES.inflow_m3d] ?? 0;
  if (inflow_m3d <= 0) return undefined;
  const held = heldIn(unit, y);
  const hours = (m3: number) => (HOURS * m3) / inflow_m3d;
  const parts = (['trash', 'aeration', 'clarifier'] as const).map((place) =>
    part(`stay-${place}`, 'duration_h', hours(held[place])),
  );
  return {
    value: quantity(
      'duration_h',
      parts.reduce((sum, { value }) => sum + value.value, 0),
    ),
    parts,
    how: say('because.how.stay', { q: quantity('volume_m3', inflow_m3d) }),
  };
}

/** Chlorine in the stored water, free and bound. */
export function residual({ unit, now }: Instant): Told | undefined {
  if (unit.spec.plant.disinfection.kind === 'ultraviolet') return undefined;
  const { residual_mgL, freeChlorine_mgL, ammonia_mgL } = now.water.pump;
  return {
    value: quantity('concentration_mgL', residual_mgL, 0.01),
    parts: there([
      part('chlorine-free', 'concentration_mgL', freeChlorine_mgL, false, 0.01),
      part('chlorine-bound', 'concentration_mgL', residual_mgL - freeChlorine_mgL, false, 0.01),
    ]),
    how: say('because.how.residual', {
      n: quantity('concentration_mgL', ammonia_mgL, 0.1),
      most: quantity('concentration_mgL', MONO_RATIO * ammonia_mgL, 0.1),
    }),
  };
}

/** Solids that go out with the stored water, by what they are. */
export function solidsOut({ unit, y, now }: Instant): Told {
  return {
    value: quantity('concentration_mgL', now.water.pump.solids_mgL, 0.1),
    parts: solidsOf(unit.passage.composition(y, 'pump'), 0.1),
    how: say('because.how.solids-out', { b: quantity('length_m', now.blanket_m) }),
  };
}

/** Water that rises through the clarifier, over its whole surface. */
export function rise({ unit, now }: Instant): Told {
  const { area_m2 } = unit.spec.plant.clarifier;
  const flow_Ls = now.flows.clarifierOut * 1000;
  return {
    value: quantity('rise_mh', (3.6 * flow_Ls) / area_m2),
    parts: [],
    how: say('because.how.rise', { q: quantity('waterFlow_Ls', flow_Ls), a: quantity('count', area_m2, 0.01) }),
  };
}

/** Solids of the water that stands on top of the clarifier. */
export function clarified({ unit, y, now }: Instant): Told {
  return {
    value: quantity('concentration_mgL', now.water.clarifier.solids_mgL, 0.1),
    parts: solidsOf(unit.passage.composition(y, 'clarifier'), 0.1),
    how: say('because.how.clarified'),
  };
}

/** Water over the clarifier's slot: both stand as high as their way out, and a little over it while water runs. */
export function aerationLevel({ unit, now }: Instant): Told {
  const { aeration, clarifier } = unit.spec.plant;
  const slot_m = aeration.outlet_m - clarifier.straight_m - clarifier.hopper_m;
  const over_m = now.flows.aeration_m - aeration.outlet_m;
  return {
    value: quantity('length_m', now.flows.aeration_m - slot_m),
    parts: [
      part('level-outlet', 'length_m', aeration.outlet_m - slot_m),
      part(over_m < 0 ? 'level-short' : 'level-over', 'length_m', Math.abs(over_m), over_m < 0, 0.001),
    ],
    how: say('because.how.aeration-level', { q: quantity('waterFlow_Ls', now.flows.clarifierOut * 1000) }),
  };
}
