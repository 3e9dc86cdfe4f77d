/** The Scene with everything open: for the debrief, the walk and the trainer. */
import { BREAKERS } from '../control/index.ts';
import { effluentColour, SPOTS } from '../plant/index.ts';
import { outletSeen } from '../service/index.ts';
import { type Readout, readout, type Unit } from '../unit/index.ts';
import {
  fieldOf,
  floatHeights,
  floatNames,
  flowShare,
  gaugeOf,
  geometryOf,
  intakeShare,
  lampNames,
  strokeOf,
  timerOf,
} from './geometry.ts';
import { type Surroundings, skyOf } from './light.ts';
import { jarOf } from './settling.ts';
import type { BreakerId, ChamberId, ChamberScene, FloatScene, Ink, Scene, WaterLook } from './types.ts';

const LIVE: Ink = { kind: 'live' };

/** The unit as it is at an instant (s) between its last event and its horizon. */
export function xray(unit: Unit, t: number, around: Surroundings): Scene {
  const now = readout(unit, t);
  const { spec } = unit;
  const out = now.control.outputs;
  const condition = unit.driveAt(t).condition;
  const discharge_Ls = now.flows.discharge * 1000;
  const load = out.compressorRuns ? now.airPressure_kPa / spec.plant.air.deadHead_kPa : null;
  return {
    kind: 'xray',
    clock_s: around.secondOfDay,
    sky: skyOf(around),
    geometry: geometryOf(spec),
    standsAt: 'yard',
    house: { ink: LIVE, draw_Ls: now.inflow_m3s * 1000, backingUp: now.flows.indoors > 0 },
    chambers: chambers(unit, now),
    jar: { ink: LIVE, ...jarOf(now) },
    floats: floatNames(spec).map(
      ([name, id]): FloatScene => ({
        ...floatHeights(spec, name, id),
        ink: LIVE,
        position: positionOf(now.control.regions[name] ?? 'down'),
        made: ['up', 'lifted', 'heldUp'].includes(now.control.regions[name] ?? ''),
      }),
    ),
    pump: { ink: LIVE, running: out.pumpRuns, intake_m: spec.plant.pump.floor_m + spec.plant.effluentPump.intake_m },
    panel: {
      ink: LIVE,
      door: 'open',
      alarm: spec.panel.alarm,
      lamps: lampNames(spec).map(([id, name]) => ({ id, ink: LIVE, state: out[name] ? 'lit' : 'dark' })),
      buzzer: out.buzzer,
      testHeld: now.control.regions.test === 'held',
      breakers: BREAKERS.map((b) => ({
        id: b.replace('Breaker', '') as BreakerId,
        ink: LIVE,
        lever: now.control.regions[b] as 'on' | 'tripped' | 'off',
        locked: false,
      })),
      selector: now.control.regions.selector as 'hand' | 'off' | 'auto',
      timer: timerOf(spec, around.secondOfDay + unit.clockAhead(t), true),
      counters: { pumpHours: now.pumpRun_s / 3600, pumpCycles: unit.registers.pumpCycles },
      gauge: gaugeOf(spec, now.airPressure_kPa),
    },
    compressor: {
      ink: LIVE,
      housing: 'open',
      running: out.compressorRuns,
      outlet: { ink: LIVE, gfci: spec.panel.gfci, ...outletSeen(now) },
      load,
      stroke: strokeOf(spec, load),
      rattle: out.compressorRuns && condition.compressorPressure < 0.6,
      flow_Lmin: now.flows.air.diffuser_Lmin,
      pressure_kPa: now.airPressure_kPa,
      leak: leakOf(condition.lineHole_m, condition.jointHole_m),
      foam: false,
      intakeDirt: intakeShare(condition.intakeLoss_kPa_per_Lmin2),
    },
    ultraviolet: { ink: LIVE, present: spec.panel.ultraviolet, lit: out.ultravioletLit },
    discFilter: { ink: LIVE, open: true, flowShare: condition.filterFlow },
    field: {
      ink: LIVE,
      ...fieldOf(spec),
      headPressure_kPa: now.headPressure_kPa,
      wet: flowShare(spec, now.headPressure_kPa),
    },
    flows: {
      sewer_Ls: now.inflow_m3s * 1000,
      trashOut_Ls: now.flows.trashOut * 1000,
      clarifierOut_Ls: now.flows.clarifierOut * 1000,
      riserOut_Ls: now.flows.riserOut * 1000,
      discharge_Ls,
      relief_Ls: now.flows.relieved * 1000,
    },
    notes: [],
  };
}

function chambers(unit: Unit, now: Readout): Record<ChamberId, ChamberScene> {
  const { flows, sediment_m } = now;
  const inlet = unit.spec.plant.pump.inlet_m;
  const chamber = (
    id: ChamberId,
    level_m: number,
    water: WaterLook,
    more: Partial<ChamberScene> = {},
  ): ChamberScene => ({
    id,
    ink: LIVE,
    lid: 'closed',
    level_m,
    water,
    scum_m: 0,
    sludge_m: 0,
    bubbles_Lmin: null,
    cores: [],
    ...more,
  });
  /** Water without solids to speak of stays clear, however long the liquor was without oxygen. */
  const cleared = (place: 'clarifier' | 'riser' | 'pump') => {
    const { hoursWithoutOxygen } = now;
    const clear = effluentColour({ ...now.water[place], hoursWithoutOxygen }) === 'clear';
    return look(now.water[place], clear ? 0 : hoursWithoutOxygen, 0);
  };
  return {
    'trash-tank': chamber('trash-tank', flows.trash_m, look(now.water.trash, 0, 1), {
      scum_m: now.trashScum_m,
      sludge_m: now.trashSludge_m,
    }),
    aeration: chamber('aeration', flows.aeration_m, look(now.water.aeration, now.hoursWithoutOxygen, 0), {
      bubbles_Lmin: flows.air.diffuser_Lmin,
    }),
    clarifier: chamber('clarifier', flows.aeration_m, cleared('clarifier'), { sludge_m: now.blanket_m }),
    disinfection: chamber('disinfection', Math.max(flows.pump_m, inlet), cleared('riser')),
    'pump-tank': chamber('pump-tank', flows.pump_m, cleared('pump'), {
      sludge_m: SPOTS.reduce((sum, spot) => sum + sediment_m[spot], 0) / SPOTS.length,
    }),
  };
}

function look(water: Readout['water']['pump'], hoursWithoutOxygen: number, raw: number): WaterLook {
  const { solids_mgL, oxygen_mgL, residual_mgL } = water;
  return { solids_mgL, oxygen_mgL, hoursWithoutOxygen, residual_mgL, raw };
}

function positionOf(state: string): FloatScene['position'] {
  return (
    ({ up: 'up', lifted: 'lifted', heldUp: 'held-up', heldDown: 'held-down' } as const)[state as 'up'] ?? 'hanging'
  );
}

function leakOf(line_m: number, joint_m: number): Scene['compressor']['leak'] {
  if (line_m > 0) return { where: 'line', hole_m: line_m };
  return joint_m > 0 ? { where: 'joint', hole_m: joint_m } : null;
}
