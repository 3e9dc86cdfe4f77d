/**
 * The Scene of a call: pencil until seen, ink when seen. It is made of facts (what was learnt and when), of what can
 * be seen or heard from where the person stands, and of the property's drawings; never of the unit itself. Two units
 * with the same facts give the same Scene.
 */
import { BREAKERS } from '../control/index.ts';
import { SPOTS } from '../plant/index.ts';
import type { Core, Facts, FactValues, LidId, LiveFacts, Message, Person } from '../service/index.ts';
import { say } from '../service/index.ts';
import type { UnitSpec } from '../unit/index.ts';
import {
  fieldOf,
  floatHeights,
  floatNames,
  flowShare,
  gaugeOf,
  geometryOf,
  lampNames,
  strokeOf,
  timerOf,
} from './geometry.ts';
import { jarSeen } from './jar.ts';
import { inkOf, type Surroundings, skyOf } from './light.ts';
import { lookOf, ORDINARY, ordinaryResidual } from './ordinary.ts';
import type {
  BreakerId,
  ChamberId,
  ChamberScene,
  CompressorScene,
  FieldScene,
  FloatScene,
  Ink,
  NoteScene,
  PanelScene,
  PartId,
  Scene,
  WaterLook,
} from './types.ts';

export interface Knowledge {
  readonly spec: UnitSpec;
  readonly person: Person;
  readonly live: LiveFacts;
  /** Engine seconds now. */
  readonly now_s: number;
  readonly around: Surroundings;
}

const PENCIL: Ink = { kind: 'pencil' };
const LIVE: Ink = { kind: 'live' };

type Key = keyof FactValues;

/** Best knowledge of a fact: what is seen now, else what was seen last, else nothing. */
function best<K extends Key>(know: Knowledge, key: K): FactValues[K] | null {
  const live = know.live[key] as FactValues[K] | undefined;
  if (live !== undefined) return live;
  const seen = know.person.facts[key] as Facts[K];
  return seen === undefined ? null : (seen.value as FactValues[K]);
}

/** Ink of a drawing that rests on some facts: live if any is seen now, else as fresh as the newest. */
function inkFor(know: Knowledge, keys: readonly Key[]): Ink {
  if (keys.some((k) => know.live[k] !== undefined)) return LIVE;
  const seen = keys.flatMap((k) => know.person.facts[k]?.at_s ?? []);
  return seen.length === 0 ? PENCIL : inkOf(Math.max(...seen), know.now_s);
}

export function known(know: Knowledge): Scene {
  const { spec, around, person } = know;
  return {
    kind: 'known',
    clock_s: around.secondOfDay,
    sky: skyOf(around),
    geometry: geometryOf(spec),
    standsAt: person.place,
    house: { ink: inkFor(know, ['backingUp']), draw_Ls: null, backingUp: best(know, 'backingUp') },
    chambers: chambers(know),
    jar: { ink: inkFor(know, ['jar']), ...jarSeen(best(know, 'jar')) },
    floats: floats(know),
    pump: {
      ink: inkFor(know, ['pumpRuns']),
      running: best(know, 'pumpRuns'),
      intake_m: spec.plant.pump.floor_m + spec.plant.effluentPump.intake_m,
    },
    panel: panel(know),
    compressor: compressor(know),
    ultraviolet: {
      ink: inkFor(know, ['ultravioletLit']),
      present: spec.panel.ultraviolet,
      lit: best(know, 'ultravioletLit'),
    },
    discFilter: { ink: inkFor(know, ['filterFlow']), open: person.filterOpen, flowShare: best(know, 'filterFlow') },
    field: field(know),
    flows: {
      sewer_Ls: null,
      trashOut_Ls: null,
      clarifierOut_Ls: null,
      riserOut_Ls: null,
      discharge_Ls: null,
      relief_Ls: best(know, 'relief_Ls'),
    },
    notes: notes(know),
  };
}

/** Nobody sees a drip field work: only a gauge tells. */
function field(know: Knowledge): FieldScene {
  const headPressure_kPa = best(know, 'headPressure_kPa');
  return {
    ...fieldOf(know.spec),
    ink: inkFor(know, ['headPressure_kPa']),
    headPressure_kPa,
    wet: headPressure_kPa === null ? null : flowShare(know.spec, headPressure_kPa),
  };
}

function chambers(know: Knowledge): Record<ChamberId, ChamberScene> {
  const { trash, mixedLiquor, clarified } = ORDINARY;
  const { riser_mgL, pumpTank_mgL } = ordinaryResidual(know.spec);
  const liquor = { ...mixedLiquor, oxygen_mgL: best(know, 'oxygen_mgL') ?? mixedLiquor.oxygen_mgL };
  const stored = { ...clarified, residual_mgL: best(know, 'residual_mgL') ?? pumpTank_mgL };
  const water = {
    liquor: lookOf(best(know, 'liquorColour'), liquor),
    clarified: lookOf(best(know, 'clarifierColour'), clarified),
    riser: lookOf(best(know, 'riserColour'), { ...clarified, residual_mgL: riser_mgL }),
    stored: lookOf(best(know, 'pumpTankColour'), stored),
  };
  return {
    'trash-tank': {
      ...chamber(know, 'trash-tank', 'trash', 'trashLevel_m', trash),
      sludge_m: best(know, 'trashSludge_m'),
      scum_m: best(know, 'trashScum_m'),
    },
    aeration: {
      ...chamber(know, 'aeration', 'aeration', 'aerationLevel_m', water.liquor),
      bubbles_Lmin: best(know, 'bubbles_Lmin'),
    },
    clarifier: chamber(know, 'clarifier', 'aeration', 'aerationLevel_m', water.clarified),
    disinfection: chamber(know, 'disinfection', 'riser', 'riserLevel_m', water.riser),
    'pump-tank': {
      ...chamber(know, 'pump-tank', 'pump', 'pumpTankLevel_m', water.stored),
      ...cored(best(know, 'pumpTankCores') ?? []),
    },
  };
}

/** Sludge as it was cored: each tube at the middle of its part of the floor, and the average. */
function cored(cores: readonly Core[]): Pick<ChamberScene, 'sludge_m' | 'cores'> {
  const total_m = cores.reduce((sum, core) => sum + core.sludge_m, 0);
  return {
    sludge_m: cores.length === 0 ? null : total_m / cores.length,
    cores: cores.map(({ spot, sludge_m }) => ({ across: (SPOTS.indexOf(spot) + 0.5) / SPOTS.length, sludge_m })),
  };
}

function chamber(
  know: Knowledge,
  id: ChamberId,
  lid: LidId,
  level: 'trashLevel_m' | 'aerationLevel_m' | 'riserLevel_m' | 'pumpTankLevel_m',
  water: WaterLook,
): ChamberScene {
  const level_m = best(know, level);
  return {
    id,
    ink: inkFor(know, [level]),
    lid: know.person.lids.has(lid) ? 'open' : 'closed',
    level_m,
    water: level_m === null ? null : water,
    scum_m: null,
    sludge_m: null,
    bubbles_Lmin: null,
    cores: [],
  };
}

function floats(know: Knowledge): FloatScene[] {
  return floatNames(know.spec).map(
    ([name, id]): FloatScene => ({
      ...floatHeights(know.spec, name, id),
      ink: inkFor(know, [`float.${name}`, `contact.${name}`]),
      position: best(know, `float.${name}`),
      made: best(know, `contact.${name}`),
    }),
  );
}

function panel(know: Knowledge): PanelScene {
  const { spec } = know;
  const ahead = best(know, 'clockAhead_s');
  const panel_s = ahead === null ? null : know.around.secondOfDay + ahead;
  return {
    ink: inkFor(know, ['lamp', 'selector', 'lever.alarmBreaker']),
    door: know.person.onSite ? 'open' : null,
    alarm: spec.panel.alarm,
    lamps: lampNames(spec).map(([id, name]) => ({ id, ink: inkFor(know, [name]), state: best(know, name) })),
    buzzer: best(know, 'buzzer'),
    testHeld: false,
    breakers: BREAKERS.map((b) => ({
      id: b.replace('Breaker', '') as BreakerId,
      ink: inkFor(know, [`lever.${b}`]),
      lever: best(know, `lever.${b}`),
      locked: know.person.locks.has(b),
    })),
    selector: best(know, 'selector'),
    timer: timerOf(spec, panel_s, best(know, 'selector') !== null),
    counters: best(know, 'counters'),
    gauge: gaugeOf(spec, best(know, 'airPressure_kPa')),
  };
}

function compressor(know: Knowledge): CompressorScene {
  const load = best(know, 'compressorLoad');
  return {
    ink: inkFor(know, ['compressorRuns', 'airPressure_kPa', 'leak', 'intakeDirt']),
    housing: know.person.housingOpen ? 'open' : 'closed',
    running: best(know, 'compressorRuns'),
    outlet: {
      ink: inkFor(know, ['outletPlugged', 'outletTripped']),
      gfci: know.spec.panel.gfci,
      plugged: best(know, 'outletPlugged'),
      tripped: best(know, 'outletTripped'),
    },
    load,
    stroke: strokeOf(know.spec, load),
    rattle: best(know, 'rattle') === true,
    flow_Lmin: best(know, 'bubbles_Lmin'),
    pressure_kPa: best(know, 'airPressure_kPa'),
    leak: best(know, 'leak'),
    foam: best(know, 'foam') === true,
    intakeDirt: best(know, 'intakeDirt'),
  };
}

/** Parts that carry their newest note as a slip of paper. */
const NOTED: readonly PartId[] = [
  'clean-out',
  'trash-tank',
  'aeration',
  'compressor',
  'pump-tank',
  'disc-filter',
  'spray-field',
];

function notes(know: Knowledge): NoteScene[] {
  const { notebook } = know.person;
  return NOTED.flatMap((part): NoteScene[] => {
    const last = notebook.findLast((n) => n.place === part && n.what.id !== 'note.lid' && n.what.id !== 'note.mended');
    if (!last) return [];
    return [
      {
        part,
        ink: inkOf(last.at_s, know.now_s),
        text: say('scene.note', { reading: last.reading, clock: clockOf(last.at_s) }),
      },
    ];
  });
}

function clockOf(at_s: number): Message {
  return say('word.clock', { clock: { measure: 'clock_s', value: ((at_s % 86_400) + 86_400) % 86_400 } });
}
