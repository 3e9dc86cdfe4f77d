/** The house rules that keep every panel's control finite, and the proof that nothing in it is dead. */
import { describe, expect, it } from 'vitest';
import { createMachine } from 'xstate';
import { getAdjacencyMap } from 'xstate/graph';
import { type ControlEventName, DELAYS, EVENTS, mentions } from '../../src/control/index.ts';
import { PANELS } from './panels.ts';
import { statesRead, type Written, written } from './walk.ts';

const name = (region: string, t: Written) =>
  `${region}: ${t.from} -${t.event ?? 'always'}${t.dials ? '/dial' : ''}-> ${t.target}`;

describe('nothing is listed that nothing handles', () => {
  const handled = new Set(
    PANELS.flatMap(([, { parts }]) =>
      Object.values(parts).flatMap((part) => written(part.states).flatMap((t) => t.event ?? [])),
    ),
  );

  it('handles every event of the list in some region of some panel', () => {
    expect(EVENTS.filter((event) => !handled.has(event))).toEqual([]);
    expect(new Set(EVENTS).size).toBe(EVENTS.length);
  });

  it('lists every event that a region handles', () => {
    expect([...handled].filter((event) => !EVENTS.includes(event as ControlEventName))).toEqual([]);
  });

  it('lists the event of every delay', () => {
    for (const event of Object.values(DELAYS)) expect(EVENTS).toContain(event);
  });
});

interface Move {
  readonly event: { readonly type: string };
  readonly state: { readonly value: unknown };
}

describe.each(PANELS)('the panel of %s', (_, panel) => {
  it('answers the events that are written in its parts, and tells which', () => {
    const answered = Object.values(panel.parts).flatMap((part) => written(part.states).flatMap((t) => t.event ?? []));
    expect(panel.events).toEqual(new Set(answered));
    expect(panel.events.size).toBeGreaterThan(50);
  });

  const parts = Object.entries(panel.parts);
  const states = parts.flatMap(([region, part]) =>
    Object.entries(part.states).map(([state, node]) => ({ region, state, node })),
  );
  describe('the control is finite', () => {
    it('is one parallel machine of flat regions with an empty context', () => {
      expect(panel.machine.config.type).toBe('parallel');
      expect(panel.machine.config.context).toEqual({});
      expect(Object.keys(panel.machine.states)).toEqual(Object.keys(panel.parts));
      for (const region of Object.values(panel.machine.states)) {
        for (const state of Object.values(region.states)) expect(state.type, state.id).toBe('atomic');
      }
    });

    it.each(states)('$region.$state waits for nothing, calls nobody, remembers nothing', ({ node }) => {
      expect(Object.keys(node).filter((key) => !['on', 'always', 'entry', 'exit'].includes(key))).toEqual([]);
    });

    it('asks the engine for delays, calls and its clock only', () => {
      const actions = states.flatMap(({ node }) => [
        ...[node.entry, node.exit].filter((a) => a !== undefined),
        ...[...Object.values(node.on ?? {}), node.always ?? []]
          .flat()
          .flatMap((t) => (typeof t === 'string' || t.actions === undefined ? [] : [t.actions])),
      ]) as { type: string; params?: { delay: string } }[];
      expect(actions.length).toBeGreaterThan(15);
      for (const { type, params } of actions) {
        if (['dial', 'stopClock', 'startClock'].includes(type)) continue;
        expect(['arm', 'disarm']).toContain(type);
        expect(Object.keys(DELAYS)).toContain(params?.delay);
      }
    });

    it('arms a delay, or stops the clock, where a state is entered, and undoes it where that state is left', () => {
      for (const { region, state, node } of states) {
        const entry = node.entry as { type: string; params?: { delay: string } } | undefined;
        const exit = node.exit as typeof entry;
        expect(entry?.params?.delay, `${region}.${state}`).toBe(exit?.params?.delay);
        const pair = entry?.type === 'arm' ? ['arm', 'disarm'] : ['stopClock', 'startClock'];
        if (entry || exit) expect([entry?.type, exit?.type], `${region}.${state}`).toEqual(pair);
      }
    });

    it('has guards that read states that the machine has, and nothing else', () => {
      for (const [region, part] of parts) {
        for (const t of written(part.states)) {
          for (const [read, state] of statesRead(t.guard)) {
            expect(Object.keys(panel.parts[read]?.states ?? {}), `${name(region, t)} if ${read}`).toContain(state);
          }
        }
      }
    });
  });

  describe('nothing leads nowhere', () => {
    it.each(Object.entries(panel.wiring))('%s is wired to regions and states that exist', (_, logic) => {
      for (const { region, state } of mentions(logic)) {
        expect(Object.keys(panel.parts[region]?.states ?? {}), `${region}.${state}`).toContain(state);
      }
    });

    it('has no part that nothing reads: each is read by an output or a guard, or dials', () => {
      const reads = new Set([
        ...Object.values(panel.wiring).flatMap((logic) => mentions(logic).map(({ region }) => region)),
        ...parts.flatMap(([, part]) =>
          written(part.states).flatMap((t) => statesRead(t.guard).map(([region]) => region)),
        ),
      ]);
      const dials = parts.filter(([, part]) => written(part.states).some((t) => t.dials)).map(([region]) => region);
      expect(parts.map(([region]) => region).filter((region) => !reads.has(region))).toEqual(dials);
    });

    it('keeps nothing for ever: from every state of a part some events lead back to its first, and from there to it', () => {
      for (const [region, { initial, states: own }] of parts) {
        const ways = written(own);
        const reach = (from: string): Set<string> => {
          const met = new Set([from]);
          for (const at of met) for (const t of ways) if (t.from === at) met.add(t.target);
          return met;
        };
        for (const state of Object.keys(own)) {
          expect([...reach(state)], `${region}.${state}`).toContain(initial);
          expect([...reach(initial)], `${region}.${state}`).toContain(state);
        }
      }
    });

    it('has a name for every part and every state', () => {
      for (const { region, state } of states) expect(`${region}.${state}`).toMatch(/^[a-z]\w+\.[a-z]\w+$/);
    });

    it('leads every transition to a state of its region', () => {
      for (const [region, part] of parts) {
        expect(Object.keys(part.states)).toContain(part.initial);
        for (const t of written(part.states)) expect(Object.keys(part.states), name(region, t)).toContain(t.target);
      }
    });
  });

  /** A region with all that its guards read, and what those read in turn. */
  function closure(region: string, into = new Set<string>()): Set<string> {
    if (into.has(region)) return into;
    into.add(region);
    for (const t of written(panel.parts[region]?.states ?? {})) {
      for (const [read] of statesRead(t.guard)) closure(read, into);
    }
    return into;
  }

  const SMALL = 200;
  const size = (regions: Iterable<string>) =>
    [...regions].reduce((n, r) => n * Object.keys(panel.parts[r]?.states ?? {}).length, 1);
  const small = parts.map(([region]) => region).filter((region) => size(closure(region)) <= SMALL);

  describe('every state is reached and every transition taken', () => {
    it.each(small)('%s, exhaustively, with what it reads', (region) => {
      const needed = closure(region);
      const machine = createMachine({
        type: 'parallel',
        states: Object.fromEntries(parts.filter(([r]) => needed.has(r))) as Record<string, object>,
      });
      const map = getAdjacencyMap(machine, { serializeState: (s) => JSON.stringify(s.value), limit: 100_000 });
      const regions = (s: { value: unknown }) => s.value as Record<string, string>;
      const reached = new Set<string | undefined>();
      const moves = new Set<string>();
      for (const { state, transitions } of Object.values(map)) {
        const from = regions(state)[region];
        reached.add(from);
        for (const { event, state: next } of Object.values(transitions as Record<string, Move>)) {
          moves.add(`${from} ${event.type} ${regions(next)[region]}`);
          moves.add(`${from} any ${regions(next)[region]}`);
        }
      }
      const part = panel.parts[region];
      expect([...reached].sort()).toEqual(Object.keys(part?.states ?? {}).sort());
      // A state left by itself at once is never stood in with the way out open: seen as a move on some event.
      for (const t of written(part?.states ?? {})) {
        expect(moves, name(region, t)).toContain(`${t.from} ${t.event ?? 'any'} ${t.target}`);
      }
    });
  });
});
