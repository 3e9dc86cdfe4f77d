/** Air: its pressure, what reaches the diffusers, how the compressor works for it, and the oxygen it brings. */
import { deadHead, fieldSaturation, openingPressure, oxygenAt, oxygenTransfer, staticHead } from '../../plant/index.ts';
import { quantity, say } from '../../service/message.ts';
import { intakeShare, strokeOf } from '../geometry.ts';
import { heldIn, type Instant, part, type Told, there } from './instant.ts';

export function air({ unit, now, y, t }: Instant): Told {
  const { air: spec } = unit.spec.plant;
  const { condition, compressorRuns } = unit.driveAt(t);
  const depth_m = unit.works.diffuserDepth(y);
  const value = quantity('pressure_kPa', now.airPressure_kPa);
  if (!compressorRuns) return { value, parts: [], how: say('because.how.air-standing') };
  const opening = openingPressure(spec, condition, depth_m);
  const flow = now.flows.air.diffuser_Lmin;
  if (flow <= 0) {
    return { value, parts: [], how: say('because.how.air-short', { p: quantity('pressure_kPa', opening) }) };
  }
  return {
    value,
    parts: there([
      part('air-depth', 'pressure_kPa', staticHead(depth_m)),
      part('air-cracking', 'pressure_kPa', spec.cracking_kPa),
      part('air-line-water', 'pressure_kPa', staticHead(condition.lineWater_m)),
      part('air-loss', 'pressure_kPa', condition.diffuserLoss * spec.loss_kPa_per_Lmin2 * flow * flow),
    ]),
    how: say('because.how.air', { d: quantity('length_m', depth_m), q: quantity('airFlow_Lmin', flow) }),
  };
}

export function airFlow({ unit, now, t }: Instant): Told | undefined {
  const { pump_Lmin, leak_Lmin, diffuser_Lmin } = now.flows.air;
  const { condition, compressorRuns } = unit.driveAt(t);
  if (!compressorRuns) return undefined;
  const { air: spec } = unit.spec.plant;
  return {
    value: quantity('airFlow_Lmin', diffuser_Lmin),
    parts: there([part('air-moved', 'airFlow_Lmin', pump_Lmin), part('air-leaks', 'airFlow_Lmin', leak_Lmin, true)]),
    how: say('because.how.air-flow', {
      free: quantity('airFlow_Lmin', spec.free_Lmin * condition.compressorFlow),
      dead: quantity('pressure_kPa', deadHead(spec, condition)),
    }),
  };
}

/** How far the compressor's armature swings; what the line holds against it keeps it from its whole stroke. */
export function stroke({ unit, now, t }: Instant): Told | undefined {
  if (!unit.driveAt(t).compressorRuns) return undefined;
  const { deadHead_kPa, exponent } = unit.spec.plant.air;
  const share = strokeOf(unit.spec, now.airPressure_kPa / deadHead_kPa);
  if (share === null) return undefined;
  return {
    value: quantity('share', share),
    parts: there([part('stroke-open', 'share', 1), part('stroke-held', 'share', 1 - share, true)]),
    how: say('because.how.stroke', {
      p: quantity('pressure_kPa', now.airPressure_kPa),
      dead: quantity('pressure_kPa', deadHead_kPa),
      n: quantity('count', exponent, 0.1),
    }),
  };
}

/** How far the dirt of the intake filter goes towards blocking it, as the picture has it. */
export function intake({ unit, now, t }: Instant): Told {
  const { intakeLoss_kPa_per_Lmin2: loss } = unit.driveAt(t).condition;
  const moved = now.flows.air.pump_Lmin;
  return {
    value: quantity('share', intakeShare(loss)),
    parts: [],
    how: say('because.how.intake', {
      p: quantity('pressure_kPa', loss * moved * moved),
      q: quantity('airFlow_Lmin', moved),
    }),
  };
}

export function oxygen({ unit, now, y, t }: Instant): Told {
  const { air: spec } = unit.spec.plant;
  const drive = unit.driveAt(t);
  const depth_m = unit.works.diffuserDepth(y);
  const water = oxygenAt(drive.temperature_C);
  const volume_m3 = heldIn(unit, y).aeration;
  const perHour =
    3600 * drive.condition.transfer * oxygenTransfer(spec, water, now.flows.air.diffuser_Lmin, depth_m, volume_m3);
  const value = quantity('concentration_mgL', now.oxygen_mgL, 0.01);
  if (perHour <= 0) return { value, parts: [], how: say('because.how.oxygen-none') };
  const saturation = fieldSaturation(spec, water, depth_m);
  const short = saturation - now.oxygen_mgL;
  return {
    value,
    parts: [
      part('oxygen-full', 'concentration_mgL', saturation, false, 0.01),
      part('oxygen-breathed', 'concentration_mgL', short, true, 0.01),
    ],
    how: say('because.how.oxygen', {
      t: quantity('temperature_C', drive.temperature_C),
      k: quantity('count', perHour, 0.1),
      r: quantity('concentration_mgL', perHour * short),
    }),
  };
}
