/**
 * Why a number is what it is: the parts it is made of at that instant, the equation that joins them, and where that comes
 * from. Everything open: for the debrief and for a trainer, never on a call. Each sum adds up to its number.
 */
import {
  ASM,
  CHAMBERS,
  deadHead,
  fieldSaturation,
  GAUGES,
  openingPressure,
  oxygenAt,
  oxygenTransfer,
  pow,
  pressureOf,
  primed,
  pumpCurrentShare,
  SOLIDS_PER_COD,
  STATE_SIZE,
  staticHead,
} from '../plant/index.ts';
import { type Measure, type Message, type Quantity, quantity, say } from '../service/message.ts';
import { type Readout, readout, type Unit } from '../unit/index.ts';
import { WHY_IDS, type WhyId } from './why-ids.ts';

/** One part of a sum, with its sign. */
export interface WhyPart {
  readonly label: Message;
  readonly value: Quantity;
  readonly minus: boolean;
}

export interface Why {
  readonly id: WhyId;
  readonly value: Quantity;
  /** Parts that add up to the value; none where it is no sum. */
  readonly parts: readonly WhyPart[];
  /** The equation or the reason, in words. */
  readonly how: Message;
}

interface Instant {
  readonly unit: Unit;
  readonly t: number;
  readonly now: Readout;
  /** The state, with the processes caught up. */
  readonly y: Float64Array;
}

const HOURS = 24;

/** Every number that can be told why, of a unit at an instant (s) between its last event and its horizon. */
export function whysOf(unit: Unit, t: number): readonly Why[] {
  const y = unit.stateAt(t, new Float64Array(STATE_SIZE));
  unit.passage.advance(y, t, unit.driveAt(t));
  const here: Instant = { unit, t, now: readout(unit, t), y };
  const told: Readonly<Record<WhyId, (here: Instant) => Omit<Why, 'id'> | undefined>> = {
    air,
    'air-flow': airFlow,
    oxygen,
    liquor,
    head,
    current,
    tank,
    stay,
    sludge,
  };
  return WHY_IDS.flatMap((id) => {
    const why = told[id](here);
    return why === undefined ? [] : [{ id, ...why }];
  });
}

/** `resolution`: the smallest step it is told in, where the measure's own is too coarse or too fine. */
function part(id: string, measure: Measure, value: number, minus = false, resolution?: number): WhyPart {
  return { label: say(`because.part.${id}`), value: quantity(measure, value, resolution), minus };
}

/** Small terms are left out of a sum only where they are nothing. */
const there = (parts: readonly WhyPart[]) => parts.filter(({ value }) => value.value !== 0);

function air({ unit, now, y, t }: Instant): Omit<Why, 'id'> {
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

function airFlow({ unit, now, t }: Instant): Omit<Why, 'id'> | undefined {
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

function oxygen({ unit, now, y, t }: Instant): Omit<Why, 'id'> {
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

/** Solids of the liquor by what they are. */
function liquor({ unit, y, now }: Instant): Omit<Why, 'id'> {
  const c = unit.passage.composition(y, 'aeration');
  const solids = (id: string, ...components: number[]) => {
    const mgL = components.reduce((sum, i) => sum + SOLIDS_PER_COD * (c[i] ?? 0), 0);
    return part(id, 'concentration_mgL', mgL, false, 10);
  };
  return {
    value: quantity('concentration_mgL', now.water.aeration.solids_mgL, 10),
    parts: [
      solids('living', ASM.heterotrophs, ASM.autotrophs),
      solids('remains', ASM.decayProducts),
      solids('inert', ASM.inertParticulate),
      solids('uneaten', ASM.slowSubstrate),
    ],
    how: say('because.how.liquor'),
  };
}

/** Where the running pump's pressure goes, from its outlet to the field; a pump that has lost its prime makes none to speak of. */
function head({ unit, now, t }: Instant): Omit<Why, 'id'> | undefined {
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

function current({ unit, now, t }: Instant): Omit<Why, 'id'> | undefined {
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

/** How long until the high-water float rises, at the mean inflow of the last days. */
function tank({ unit, now, y }: Instant): Omit<Why, 'id'> {
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
function stay({ unit, y }: Instant): Omit<Why, 'id'> | undefined {
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

function sludge({ unit, y, now }: Instant): Omit<Why, 'id'> {
  const { sludge: m3 } = unit.passage.lying_m3(y);
  return {
    value: quantity('length_m', now.trashSludge_m),
    parts: [],
    how: say('because.how.sludge', { v: quantity('volume_m3', m3) }),
  };
}

type Held = Readonly<Record<'trash' | 'aeration' | 'clarifier' | 'riser' | 'pump', number>>;

function heldIn(unit: Unit, y: Float64Array): Held {
  const [trash = 0, aeration = 0, clarifier = 0, riser = 0, pump = 0] = unit.works.volumes(
    y,
    new Float64Array(CHAMBERS),
  );
  return { trash, aeration, clarifier, riser, pump };
}
