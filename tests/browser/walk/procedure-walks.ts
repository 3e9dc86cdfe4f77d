/** The service procedure in shipped calls: which paths are taken on the page, and by what. */
import type { Action } from '../../../src/calls/index.ts';
import { PROCEDURES, type Procedure, planOfProcedure, type Screen, wholeCalls } from '../../control/spec/call-walk.ts';
import { type Edge, edgeKey } from '../../control/spec/paths.ts';
import type { CallEvent } from '../../control/spec/whole-call.ts';

export interface ProcedureWalk {
  readonly procedure: Procedure;
  /** By phone a call whose buzzer sounds, so that there is something to silence; on site the split air line. */
  readonly call: string;
  readonly before: readonly Action[];
}

const VISIT: Action = { id: 'decide-visit', fill: { urgency: 'before-dosing', load: ['tubing', 'diaphragm-kit'] } };

export const PROCEDURE_WALKS: readonly ProcedureWalk[] = PROCEDURES.map((procedure) =>
  procedure.name === 'procedure by phone'
    ? { procedure, call: 'wash-day-light', before: [] }
    : { procedure, call: 'sunny-line', before: [VISIT] },
);

type Path = readonly Edge<Screen>[];

export interface ProcedureChoice {
  readonly start: Screen;
  readonly paths: readonly Path[];
  /** Keys of all states and transitions of the specification. */
  readonly whole: { readonly states: ReadonlySet<string>; readonly transitions: ReadonlySet<string> };
  /** Arrows of its drawings, all regions together. */
  readonly arrows: ReadonlySet<string>;
}

/** Taking a call anew costs as much as so many steps. */
const ANEW = 15;

/** Of the generator's paths, again and again the one that has most new arrows of the drawings for its steps. */
export function chooseProcedure({ procedure }: ProcedureWalk): ProcedureChoice {
  const plan = planOfProcedure(procedure);
  const edges = [...plan.edges.values()].flat();
  const arrows = new Set(edges.flatMap(arrowsOf));
  const left = new Set(arrows);
  const isNew = (edge: Edge<Screen>): boolean => arrowsOf(edge).some((arrow) => left.has(arrow));
  const cut = (path: Path): Path => path.slice(0, path.findLastIndex(isNew) + 1);
  const worth = (path: Path): number =>
    new Set(path.flatMap(arrowsOf).filter((arrow) => left.has(arrow))).size / (path.length + ANEW);
  const paths: Path[] = [];
  while (left.size > 0) {
    const best = plan.paths.map(cut).reduce((a, b) => (worth(b) > worth(a) ? b : a));
    paths.push(best);
    for (const arrow of best.flatMap(arrowsOf)) left.delete(arrow);
  }
  const whole = { states: new Set(plan.edges.keys()), transitions: new Set(edges.map(edgeKey)) };
  return { start: plan.start, paths, whole, arrows };
}

/** What changes in each region of the machine. */
export function arrowsOf({ from, event, to }: Edge<Screen>): string[] {
  const before = JSON.parse(from) as Readonly<Record<string, string>>;
  const after = JSON.parse(to.key) as Readonly<Record<string, string>>;
  return Object.keys(before).flatMap((region) =>
    before[region] === after[region] ? [] : [`${region}: ${before[region]} to ${after[region]} by ${event}`],
  );
}

/** A whole call with a stop float held down, its alarm sounding: what its steps are there. */
export const WHOLE_CALL = 'wash-day-light';

const of = (...ids: string[]): Action[] => ids.map((id) => ({ id }));

export const WHOLE_STEPS: Readonly<Record<CallEvent, readonly Action[]>> = {
  'danger and history asked': of('ask-danger', 'ask-history'),
  silenced: of('guide-silence'),
  'breakers read out': of('ask-breakers'),
  reset: of('guide-reset'),
  'five minutes watched': of('guide-watch'),
  'closed by phone': [{ id: 'decide-close', fill: { 'follow-up': ['call-tomorrow', 'count-trip', 'visit-if-again'] } }],
  'visit decided': [{ id: 'decide-visit', fill: { urgency: 'before-dosing', load: ['float', 'pump'] } }],
  // Here it is the open pump tank that tells.
  'site made safe, pressure read': of('make-safe', 'read-panel', 'open-lid:pump', 'look-into-pump-tank'),
  'cause named': [{ id: 'state-cause', fill: { cause: ['stuck-down:stopFloat'], evidence: [] } }],
  // And the float's cord that is freed.
  'line spliced': of(
    'lock-out:pumpBreaker',
    'free-float:stopFloat',
    'clear-field',
    'unlock:pumpBreaker',
    'breaker-on:pumpBreaker',
    'close-lid:pump',
  ),
  'cure proved': of(
    'advance-timer',
    'look-at-field',
    'open-lid:pump',
    'lift-float:stopFloat',
    'lift-float:doseFloat',
    'lift-float:overrideFloat',
    'reset-panel',
    'lift-float:highWaterFloat',
    'close-lid:pump',
    'reset-panel',
    'watch-panel',
  ),
  'record written': [
    {
      id: 'write-record',
      fill: { lines: ['found', 'readings', 'mended', 'parts', 'proved', 'left-on-auto', 'follow-up'] },
    },
  ],
  'household told': [
    { id: 'tell-household', fill: { told: ['what-was-wrong', 'what-alarm-means', 'keep-lids-shut'] } },
  ],
  left: of('leave-site'),
};

export type WholeCall = ReturnType<typeof wholeCalls>[number];

/** What happens at which stage of a whole call. */
export function stagesOf({ events, stages }: WholeCall): string[] {
  return events.map((event, i) => `${stages[i - 1] ?? 'ring'}: ${event}`);
}

/** Of all ways through a whole call, again and again the one that has most new steps for its length, and two at least. */
export function chooseWholeCalls(): { readonly ways: readonly WholeCall[]; readonly all: ReadonlySet<string> } {
  const calls = wholeCalls();
  const all = new Set(calls.flatMap(stagesOf));
  const left = new Set(all);
  const news = (call: WholeCall): number => stagesOf(call).filter((step) => left.has(step)).length;
  const worth = (call: WholeCall): number => (news(call) < 2 ? 0 : news(call) / (call.events.length + ANEW));
  const ways: WholeCall[] = [];
  for (;;) {
    const best = calls.reduce((a, b) => (worth(b) > worth(a) ? b : a));
    if (worth(best) === 0) return { ways, all };
    ways.push(best);
    for (const step of stagesOf(best)) left.delete(step);
  }
}
