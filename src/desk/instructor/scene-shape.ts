/** The shape of a Scene, for one that comes from another window. */
import type { PartId, Scene } from '../../scene/types.ts';
import { fields, finite, flag, oneOf, type Shape } from '../shape.ts';
import { message } from './message-shape.ts';
import { either, listOf, orNull } from './shaped.ts';

const number = orNull(finite);
const maybe = orNull(flag);

const ink = either(
  fields({ kind: oneOf('pencil', 'live') }),
  fields({ kind: oneOf('ink'), seen_s: finite, fresh: finite }),
) as Shape<Scene['house']['ink']>;

const body = { up: finite, across: finite } as const;

const partId: Shape<PartId> = oneOf(
  ...(['house', 'clean-out', 'trash-tank', 'aeration', 'clarifier', 'disinfection'] as const),
  ...(['pump-tank', 'disc-filter', 'spray-field', 'panel', 'compressor'] as const),
);

const basin = { inlet_m: finite, outlet_m: finite, floor_m: finite, ceiling_m: finite, area_m2: finite } as const;
const geometry: Shape<Scene['geometry']> = fields({
  fixtureRim_m: finite,
  cleanOut_m: finite,
  lid_m: finite,
  trash: fields(basin),
  aeration: fields({
    ...basin,
    diffuser_m: finite,
    clarifier: fields({ straight_m: finite, hopper_m: finite, area_m2: finite, slot_m2: finite }),
  }),
  riser: fields(basin),
  pump: fields(basin),
  fullAt: fields({ trash_m: finite, pump_m: finite }),
});

const water = fields({
  solids_mgL: finite,
  oxygen_mgL: finite,
  hoursWithoutOxygen: finite,
  residual_mgL: finite,
  raw: finite,
});

const chamber = fields({
  id: oneOf('trash-tank', 'aeration', 'clarifier', 'disinfection', 'pump-tank'),
  ink,
  lid: oneOf('closed', 'open'),
  level_m: number,
  water: orNull(water),
  scum_m: number,
  sludge_m: number,
  bubbles_Lmin: number,
  cores: listOf(fields({ across: finite, sludge_m: finite })),
});

const verdict = oneOf('scant', 'thin', 'satisfactory', 'thick', 'remove');
const jar: Shape<Scene['jar']> = fields({
  ink,
  minutes: finite,
  settled_mLL: number,
  sludge: orNull(water),
  above: orNull(water),
  specks: flag,
  floats: flag,
  verdict: orNull(verdict),
  curve: listOf(fields({ minutes: finite, settled_mLL: finite })),
  bands: listOf(fields({ verdict, to_mLL: finite })),
});

const float = fields({
  id: oneOf('redundant-off', 'stop', 'start-stop', 'dose', 'override', 'high-water'),
  ink,
  tether_m: finite,
  makes_m: finite,
  position: orNull(oneOf('hanging', 'up', 'held-down', 'held-up', 'lifted')),
  made: maybe,
});

const nightDial = fields({ clock_s: finite, starts_s: listOf(finite), run_min: finite });
const timedDial = fields({ every_min: finite, run_min: finite });
const timer = either(
  fields({ kind: oneOf('night'), dial: orNull(nightDial) }),
  fields({ kind: oneOf('timed'), dial: orNull(timedDial) }),
);

const panel: Shape<Scene['panel']> = fields({
  ink,
  door: orNull(oneOf('closed', 'open')),
  alarm: oneOf('latching', 'following'),
  lamps: listOf(fields({ id: oneOf('lamp', 'air', 'water'), ink, state: orNull(oneOf('lit', 'dark')) })),
  buzzer: maybe,
  testHeld: flag,
  breakers: listOf(
    fields({
      id: oneOf('alarm', 'compressor', 'pump'),
      ink,
      lever: orNull(oneOf('on', 'tripped', 'off')),
      locked: flag,
    }),
  ),
  selector: orNull(oneOf('hand', 'off', 'auto')),
  timer: orNull(timer),
  counters: orNull(fields({ pumpHours: finite, pumpCycles: finite })),
  gauge: fields({ kPa: number, low_kPa: finite, high_kPa: finite, falls_kPa: finite }),
});

const compressor: Shape<Scene['compressor']> = fields({
  ink,
  housing: oneOf('closed', 'open'),
  running: maybe,
  outlet: fields({ ink, gfci: flag, plugged: maybe, tripped: maybe }),
  load: number,
  rattle: flag,
  stroke: number,
  flow_Lmin: number,
  pressure_kPa: number,
  leak: orNull(fields({ where: oneOf('line', 'joint'), hole_m: finite })),
  foam: flag,
  intakeDirt: number,
});

const field: Shape<Scene['field']> = fields({
  ink,
  kind: oneOf('spray', 'drip'),
  headPressure_kPa: number,
  designPressure_kPa: finite,
  heads: finite,
  throw_m: finite,
  wet: number,
});

export const scene: Shape<Scene> = fields({
  kind: oneOf('known', 'xray'),
  clock_s: finite,
  sky: fields({
    daylight: finite,
    cloud: finite,
    rain_mmh: finite,
    wind_ms: finite,
    wet: finite,
    date: fields({ year: finite, month: finite, day: finite }),
    yearDay: finite,
    frost: finite,
    sun: fields(body),
    moon: fields({ ...body, age: finite }),
  }),
  geometry,
  standsAt: either(partId, oneOf('phone', 'yard')),
  house: fields({ ink, draw_Ls: number, backingUp: maybe }),
  chambers: fields({
    'trash-tank': chamber,
    aeration: chamber,
    clarifier: chamber,
    disinfection: chamber,
    'pump-tank': chamber,
  }),
  jar,
  floats: listOf(float),
  pump: fields({ ink, running: maybe, intake_m: finite }),
  panel,
  compressor,
  ultraviolet: fields({ ink, present: flag, lit: maybe }),
  discFilter: fields({ ink, open: flag, flowShare: number }),
  field,
  flows: fields({
    sewer_Ls: number,
    trashOut_Ls: number,
    clarifierOut_Ls: number,
    riserOut_Ls: number,
    discharge_Ls: number,
    relief_Ls: number,
  }),
  notes: listOf(fields({ part: partId, ink, text: message })),
});
