/**
 * The days of a call as the property lives them, and as it would live them without its faults: curves, what happened, what
 * the household can have noticed when it calls, and the works opened at any instant.
 */
import { CURVES, type CurveId, curvesOn, type Mark, marksOf } from '../calls/curves.ts';
import { type Prepared, sourceOf, unitSetup } from '../calls/setup.ts';
import { eventLabel } from '../calls/timeline.ts';
import { type Measure, type Message, SYMPTOM_IDS, SYMPTOMS, type SymptomId } from '../service/index.ts';
import { readout, restore, type Snapshot, snapshot, Unit, type UnitSetup } from '../unit/index.ts';

/** Of the curves there are these are drawn. */
const DRAWN = ['pumpTank_m', 'airPressure_kPa', 'oxygen_mgL', 'residual_mgL'] as const satisfies readonly CurveId[];
export type DrawnId = (typeof DRAWN)[number];

export interface Curve {
  readonly id: DrawnId;
  readonly measure: Measure;
  /** Instants in s from the first midnight, and values. */
  readonly faulty: readonly (readonly [number, number])[];
  readonly sound: readonly (readonly [number, number])[];
  /** Heights at which something turns. */
  readonly marks: readonly Mark[];
}

export interface Preview {
  /** Day number of second 0. */
  readonly firstDay: number;
  readonly report_s: number;
  readonly end_s: number;
  readonly curves: readonly Curve[];
  readonly events: readonly { readonly at_s: number; readonly what: string; readonly label: Message }[];
  /** Water that the household let run, L in each hour. */
  readonly use_L: readonly number[];
  /** What is so when the phone rings. */
  readonly symptoms: readonly SymptomId[];
}

/** What happens if nobody comes is shown for so long after the report, s. */
const AFTER_s = 86_400;
/** Seconds between two points of a curve at least, and the most points. */
const LEAST_s = 600;
const MOST = 900;
/** Whole states are kept so far apart to go on from. */
const KEPT_EVERY_s = 6 * 3600;
/** Of what happens these are told. */
const TOLD = /^(lamp|airLamp|waterLamp)\.|^dialled$|^fault\.|^mended\.|^mark\./;

export class PreviewDays {
  readonly preview: Preview;
  private readonly setup: UnitSetup;
  private readonly kept: readonly Snapshot[];

  constructor(prepared: Prepared) {
    this.setup = unitSetup(prepared);
    const { report_s, firstDay, household, call } = prepared;
    const end_s = report_s + AFTER_s;
    const sound = { ...this.setup, faults: [], source: sourceOf(household, call.seed, []) };
    const faulty = lived(this.setup, report_s, end_s, call.report.silenced);
    this.kept = faulty.kept;
    this.preview = {
      firstDay,
      report_s,
      end_s,
      curves: curvesOf(this.setup, faulty, lived(sound, report_s, end_s, false)),
      events: faulty.events,
      use_L: faulty.use_L,
      symptoms: faulty.symptoms,
    };
  }

  /** The property as it was at an instant (s). */
  unitAt(at_s: number): Unit {
    const at = Math.min(Math.max(0, at_s), this.preview.end_s);
    const from = this.kept.findLast((one) => one.t <= at);
    const unit = from ? restore(this.setup, from) : new Unit(this.setup);
    unit.advance(at);
    return unit;
  }
}

type Points = [number, number][];
interface Life {
  readonly points: Readonly<Record<DrawnId, Points>>;
  readonly events: Preview['events'];
  readonly use_L: readonly number[];
  readonly symptoms: readonly SymptomId[];
  readonly kept: readonly Snapshot[];
}

function lived(setup: UnitSetup, report_s: number, end_s: number, silenced: boolean): Life {
  const unit = new Unit(setup);
  const points: Record<DrawnId, Points> = { pumpTank_m: [], airPressure_kPa: [], oxygen_mgL: [], residual_mgL: [] };
  const kept: Snapshot[] = [];
  const drawn_L: number[] = [];
  let symptoms: readonly SymptomId[] = [];
  const every = Math.max(LEAST_s, Math.ceil(end_s / MOST / 60) * 60);
  for (const at of instants(every, report_s, end_s)) {
    unit.advance(at);
    if (at === report_s) {
      unit.cutAt(at);
      symptoms = SYMPTOM_IDS.filter((id) => SYMPTOMS[id](unit));
      if (silenced) unit.send('silence.pressed');
    }
    const now = readout(unit, at);
    for (const id of DRAWN) points[id].push([at, CURVES[id].of(now)]);
    if (at % 3600 === 0) drawn_L.push(now.drawn_m3 * 1000);
    if (unit.t >= (kept.at(-1)?.t ?? -KEPT_EVERY_s) + KEPT_EVERY_s) kept.push(snapshot(unit));
  }
  return {
    points,
    kept,
    symptoms,
    use_L: drawn_L.slice(1).map((drawn, hour) => drawn - (drawn_L[hour] ?? 0)),
    events: unit.log
      .filter(({ what }) => TOLD.test(what))
      .map(({ what, t }) => ({ what, at_s: t, label: eventLabel(what) })),
  };
}

/** Every so many seconds, on every hour, and at the report. */
function instants(every: number, report_s: number, end_s: number): readonly number[] {
  const all = new Set<number>([report_s]);
  for (let at = 0; at <= end_s; at += every) all.add(at);
  for (let at = 0; at <= end_s; at += 3600) all.add(at);
  return [...all].sort((a, b) => a - b);
}

function curvesOf({ spec }: UnitSetup, faulty: Life, sound: Life): readonly Curve[] {
  const drawn = curvesOn(spec);
  return DRAWN.filter((id) => drawn.includes(id)).map((id) => ({
    id,
    measure: CURVES[id].measure,
    faulty: faulty.points[id],
    sound: sound.points[id],
    marks: marksOf(spec, id),
  }));
}
