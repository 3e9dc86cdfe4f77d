/** The way to the field: the pump's pressure and current, and what the disc filter lets through. */
import { pow, pressureOf, primed, pumpCurrentShare } from '../../plant/index.ts';
import { quantity, say } from '../../service/message.ts';
import { type Instant, part, type Told, there } from './instant.ts';

/** Where the running pump's pressure goes, from its outlet to the field; a pump that has lost its prime makes none to speak of. */
export function head({ unit, now, t }: Instant): Told | undefined {
  const { pumpRuns, line } = unit.driveAt(t);
  if (!pumpRuns || primed(unit.spec.plant, now.flows.pump_m) < 1) return undefined;
  const flow = now.flows.discharge * 1000;
  const square = (loss: number) => pressureOf(loss * flow * flow);
  return {
    value: quantity('pressure_kPa', pressureOf(line.shutoff_m - line.pump * flow * flow)),
    parts: there([
      part('head-lift', 'pressure_kPa', pressureOf(line.nozzleElevation_m - now.flows.pump_m)),
      part('head-filter', 'pressure_kPa', square(line.filter + line.check)),
      part('head-pipe', 'pressure_kPa', pressureOf(line.friction * pow(flow, 1.852))),
      part('head-end', 'pressure_kPa', now.headPressure_kPa),
    ]),
    how: say('because.how.head', {
      q: quantity('waterFlow_Ls', flow),
      h: quantity('pressure_kPa', pressureOf(line.shutoff_m)),
    }),
  };
}

/** Share of its clean flow that the disc filter lets through. */
export function passage({ unit, now, t }: Instant): Told {
  const { pumpRuns, condition, line } = unit.driveAt(t);
  const value = quantity('share', condition.filterFlow);
  const flow = now.flows.discharge * 1000;
  if (!pumpRuns || flow <= 0) return { value, parts: [], how: say('because.how.passage-rests') };
  return {
    value,
    parts: [],
    how: say('because.how.passage', {
      q: quantity('waterFlow_Ls', flow),
      p: quantity('pressure_kPa', pressureOf(line.filter * flow * flow)),
    }),
  };
}

/** Pressure at the field, from what runs out there. */
export function field({ unit, now, t }: Instant): Told | undefined {
  if (!unit.driveAt(t).pumpRuns) return undefined;
  const { designPressure_kPa } = unit.spec.plant.discharge;
  return {
    value: quantity('pressure_kPa', now.headPressure_kPa),
    parts: [],
    how: say('because.how.field', {
      q: quantity('waterFlow_Ls', now.flows.discharge * 1000),
      d: quantity('pressure_kPa', designPressure_kPa),
    }),
  };
}

/** Where the pump's curve meets what the line asks for. */
export function flow({ unit, now, t }: Instant): Told | undefined {
  const { pumpRuns, line } = unit.driveAt(t);
  if (!pumpRuns) return undefined;
  const lift_m = line.nozzleElevation_m - now.flows.pump_m;
  return {
    value: quantity('waterFlow_Ls', now.flows.discharge * 1000),
    parts: [],
    how: say('because.how.flow', {
      h: quantity('length_m', line.shutoff_m),
      l: quantity('length_m', lift_m),
      p: quantity('pressure_kPa', now.headPressure_kPa),
    }),
  };
}

export function current({ unit, now, t }: Instant): Told | undefined {
  const { pumpRuns, pumpStalls } = unit.control.outputs;
  if (!pumpRuns && !pumpStalls) return undefined;
  const rated_A = unit.spec.plant.effluentPump.ratedCurrent_A;
  const value = quantity('current_A', now.pumpCurrent_A);
  const rated = quantity('current_A', rated_A);
  if (pumpStalls) return { value, parts: [], how: say('because.how.current-stalled', { a: rated }) };
  const share = pumpCurrentShare(unit.works.line, unit.driveAt(t).condition.pumpHead, now.flows.discharge * 1000);
  const idle_A = rated_A * pumpCurrentShare(unit.works.line, 0, 0);
  return {
    value,
    parts: [part('current-turning', 'current_A', idle_A), part('current-water', 'current_A', rated_A * share - idle_A)],
    how: say('because.how.current', { a: rated }),
  };
}
