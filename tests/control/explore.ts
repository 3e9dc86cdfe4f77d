/**
 * Walks the whole product of a panel's regions, guided by novelty: a state is gone on from when it shows some pair of
 * region states for the first time. It ends by itself; what it met was really reached, by events from the start.
 */
import { type ControlState, ControlTable, EVENTS, eventNumber, type Panel } from '../../src/control/index.ts';

export interface Explored {
  readonly states: number;
  readonly edges: number;
  /** "region.state", reached. */
  readonly reached: ReadonlySet<string>;
  /** "region: from event to" for every step seen, and the same with "any" for the event. */
  readonly moves: ReadonlySet<string>;
  /** Pairs of region states reached, and those never met: "region.state & region.state". */
  readonly pairs: number;
  readonly unmet: readonly string[];
}

export function explore(panel: Panel): Explored {
  const table = new ControlTable(panel);
  const regions = Object.keys(panel.parts);
  const parts = Object.values(panel.parts);
  const events = EVENTS.flatMap((event, i) => (panel.events.has(event) ? [{ event, i }] : []));

  // Region states by number, so that a pair is one cell of a square.
  const names = regions.flatMap((r, k) => Object.keys(parts[k]?.states ?? {}).map((s) => `${r}.${s}`));
  const number = new Map(names.map((name, i) => [name, i]));
  const met = new Uint8Array(names.length * names.length);
  const codes = new Map<ControlState, Uint16Array>();
  const codeOf = (state: ControlState): Uint16Array => {
    const code = Uint16Array.from(regions, (r) => number.get(`${r}.${state.regions[r]}`) ?? 0);
    codes.set(state, code);
    return code;
  };

  const moves = new Set<string>();
  const open: ControlState[] = [];
  let edges = 0;
  const meet = (state: ControlState) => {
    if (codes.has(state)) return;
    const code = codeOf(state);
    let novel = false;
    for (let a = 0; a < code.length; a++) {
      const row = (code[a] as number) * names.length;
      for (let b = a; b < code.length; b++) {
        const cell = row + (code[b] as number);
        if (met[cell] === 1) continue;
        met[cell] = 1;
        novel = true;
      }
    }
    if (novel) open.push(state);
  };

  // From the start, and from every rung of the water's own ladder.
  let rung = table.initial().to;
  meet(rung);
  for (const float of panel.kind.floats) {
    rung = table.step(rung, eventNumber(`${float}.rises`)).to;
    open.push(rung);
  }
  for (let state = open.shift(); state; state = open.shift()) {
    const from = codes.get(state) ?? codeOf(state);
    const on = regions.map((r, k) => parts[k]?.states[state.regions[r] as string]?.on);
    for (const { event, i } of events) {
      // An event that no region answers where it is leads nowhere: XState need not be asked.
      if (!on.some((answers) => answers?.[event] !== undefined)) continue;
      const { to } = table.step(state, i);
      edges += 1;
      meet(to);
      const after = codes.get(to) as Uint16Array;
      for (let k = 0; k < regions.length; k++) {
        const answered = on[k]?.[event] !== undefined;
        if (!answered && from[k] === after[k]) continue;
        const [one, other] = [state.regions[regions[k] as string], to.regions[regions[k] as string]];
        moves.add(`${regions[k]}: ${one} any ${other}`);
        if (answered) moves.add(`${regions[k]}: ${one} ${event} ${other}`);
      }
    }
  }

  const pairs = names.flatMap((a, i) =>
    names
      .slice(i + 1)
      .flatMap((b, j) => (sameRegion(a, b) ? [] : [{ pair: `${a} & ${b}`, at: i * names.length + i + 1 + j }])),
  );
  const unmet = pairs.filter(({ at }) => met[at] !== 1).map(({ pair }) => pair);
  return {
    states: codes.size,
    edges,
    reached: new Set(names.filter((_, i) => met[i * names.length + i] === 1)),
    moves,
    pairs: pairs.length - unmet.length,
    unmet,
  };
}

function sameRegion(a: string, b: string): boolean {
  return a.split('.')[0] === b.split('.')[0];
}
