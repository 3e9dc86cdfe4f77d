/** How much of each specification the chosen paths go through on the page; nothing here needs a page. */
import { type Edge, edgeKey } from '../../control/spec/paths.ts';
import { type Choice, choose } from './chosen.ts';
import { PANEL_WALKS, type PanelWalk } from './panel-walks.ts';
import {
  arrowsOf,
  chooseProcedure,
  chooseWholeCalls,
  PROCEDURE_WALKS,
  type ProcedureWalk,
  stagesOf,
  WHOLE_CALL,
} from './procedure-walks.ts';

interface Share {
  readonly met: number;
  readonly all: number;
}

export interface Extent {
  readonly promise: string;
  readonly call: string;
  readonly where: string;
  /** How often the call is taken. */
  readonly calls: number;
  readonly paths: number;
  readonly steps: number;
  /** States and transitions of the specification with everything in it, also what no hand does. */
  readonly states?: Share;
  readonly transitions?: Share;
  /** Of what can be done there: transitions of hands, arrows of the procedure's drawings, steps of a whole call. */
  readonly doable: Share;
}

const share = (met: ReadonlySet<string>, all: ReadonlySet<string>): Share => ({
  met: [...met].filter((key) => all.has(key)).length,
  all: all.size,
});

export function panelExtent(walk: PanelWalk, choice: Choice, done: readonly Edge[]): Extent {
  const { handed, paths, takes, byHand, whole } = choice;
  const { states, transitions } = handed.reach(done);
  return {
    promise: walk.promised.name,
    call: walk.call,
    where: walk.where,
    calls: takes.length,
    paths,
    steps: done.length,
    states: share(states, whole.states),
    transitions: share(transitions, whole.transitions),
    doable: share(new Set(done.map(edgeKey)), byHand),
  };
}

export function procedureExtent(walk: ProcedureWalk): Extent {
  const { start, paths, whole, arrows } = chooseProcedure(walk);
  const edges = paths.flat();
  return {
    promise: walk.procedure.name,
    call: walk.call,
    where: walk.procedure.order.includes('safe') ? 'on site' : 'by phone',
    calls: paths.length,
    paths: paths.length,
    steps: edges.length,
    states: share(new Set([start.key, ...edges.map((edge) => edge.to.key)]), whole.states),
    transitions: share(new Set(edges.map(edgeKey)), whole.transitions),
    doable: share(new Set(edges.flatMap(arrowsOf)), arrows),
  };
}

export function wholeExtent(): Extent {
  const { ways, all } = chooseWholeCalls();
  return {
    promise: 'a whole call',
    call: WHOLE_CALL,
    where: 'ring to record',
    calls: ways.length,
    paths: ways.length,
    steps: ways.reduce((sum, way) => sum + way.events.length, 0),
    doable: share(new Set(ways.flatMap(stagesOf)), all),
  };
}

/** What a run on the page goes through, in its order. */
export function pageExtents(): Extent[] {
  const panels = PANEL_WALKS.map((walk) => {
    const choice = choose(walk);
    return panelExtent(walk, choice, choice.takes.flat());
  });
  return [...panels, ...PROCEDURE_WALKS.map(procedureExtent), wholeExtent()];
}

/** As a table in Markdown: for the page of the control model, and printed by every run. */
export function extentTable(extents: readonly Extent[]): string {
  const of = (part: Share | undefined): string => (part ? `${part.met} of ${part.all}` : '');
  return [
    '| promise | call | where | calls | paths | steps | states | transitions | of what can be done there |',
    '|---|---|---|--:|--:|--:|--:|--:|--:|',
    ...extents.map(
      (e) =>
        `| ${e.promise} | ${e.call} | ${e.where} | ${e.calls} | ${e.paths} | ${e.steps} | ${of(e.states)} | ${of(e.transitions)} | ${of(e.doable)} |`,
    ),
  ].join('\n');
}
