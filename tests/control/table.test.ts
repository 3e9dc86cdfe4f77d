/** The remembered table is XState's own answer, kept. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyMachineSnapshot, initialTransition, transition } from 'xstate';
import { type ControlState, ControlTable, EVENTS, eventNumber, outputsOf } from '../../src/control/index.ts';
import { PANELS, tableOf } from './panels.ts';
import { Bench } from './walk.ts';

const walks = fc.array(fc.nat({ max: EVENTS.length - 1 }), { minLength: 1, maxLength: 80 });

/** What XState says, in the table's words. */
function asked(actions: readonly { type: string; params?: unknown }[]): unknown[] {
  return actions.map(({ type, params }) =>
    params === undefined ? { kind: type } : { kind: type, delay: (params as { delay: string }).delay },
  );
}

describe.each(PANELS)('the table of %s against the machine', (_, panel) => {
  it('gives the state and the commands that transition() gives, at first and when remembered', () => {
    const table = new ControlTable(panel);
    fc.assert(
      fc.property(walks, (walk) => {
        const [first, actions] = initialTransition(panel.machine);
        let truth = first as AnyMachineSnapshot;
        let state = table.initial().to;
        expect(table.initial().commands).toEqual(asked(actions));
        for (const event of walk) {
          const [next, wanted] = transition(panel.machine, truth as typeof first, {
            type: EVENTS[event] ?? 'dose.ends',
          });
          for (const edge of [table.step(state, event), table.step(state, event)]) {
            expect(edge.to.regions).toEqual(next.value);
            expect(edge.commands).toEqual(asked(wanted));
          }
          truth = next as AnyMachineSnapshot;
          state = table.step(state, event).to;
        }
      }),
      { numRuns: 30, seed: 20310514 },
    );
  });

  it('derives the outputs of a state from its regions alone', () => {
    const table = new ControlTable(panel);
    fc.assert(
      fc.property(walks, (walk) => {
        const end = walk.reduce((state, event) => table.step(state, event).to, table.initial().to);
        expect(end.outputs).toEqual(outputsOf(panel.wiring, end.regions));
      }),
      { numRuns: 20, seed: 7 },
    );
  });

  it('never arms a delay that runs, nor disarms one that does not, but for one that just fell due', () => {
    const table = new ControlTable(panel);
    fc.assert(
      fc.property(walks, (walk) => {
        const running = new Set<string>();
        const obey = (commands: ReturnType<typeof table.initial>['commands']) => {
          for (const c of commands) {
            if (c.kind === 'arm') {
              expect(running, `armed twice: ${c.delay}`).not.toContain(c.delay);
              running.add(c.delay);
            } else if (c.kind === 'disarm') running.delete(c.delay);
          }
        };
        obey(table.initial().commands);
        let state = table.initial().to;
        for (const event of walk) {
          const edge = table.step(state, event);
          obey(edge.commands);
          state = edge.to;
        }
      }),
      { numRuns: 40, seed: 11 },
    );
  });
});

describe('what the table remembers', () => {
  const { panel } = tableOf('u1');

  it('keeps an edge once it was taken, also one that changes nothing', () => {
    const table = new ControlTable(panel);
    const state = table.initial().to;
    const idle = eventNumber('silence.pressed');
    expect(state.edges[idle]).toBeUndefined();
    const edge = table.step(state, idle);
    expect(edge.to).toBe(state);
    expect(edge.commands).toEqual([]);
    expect(table.size()).toEqual({ states: 1, edges: 1 });
    expect(table.step(state, idle)).toBe(edge);
    expect(table.size()).toEqual({ states: 1, edges: 1 });
  });

  it('keeps commands of an edge that leads back to its own state', () => {
    const waiting = new Bench('air.falls', 'lowAir.due', 'dialler.due');
    const { state } = waiting;
    const calls = waiting.times('dial');
    expect(waiting.send('dialler.again').state).toBe(state);
    expect(waiting.send('dialler.again').state).toBe(state);
    expect(waiting.times('dial')).toBe(calls + 2);
  });

  it('meets one state by different ways', () => {
    const one = new ControlTable(panel);
    const go = (...names: Parameters<typeof eventNumber>[0][]): ControlState =>
      names.reduce((s, n) => one.step(s, eventNumber(n)).to, one.initial().to);
    expect(go('lamp.dies', 'horn.dies')).toBe(go('horn.dies', 'lamp.dies'));
    expect(go('selector.off', 'selector.auto')).toBe(one.initial().to);
  });

  it('restores a state from its key in a table that never met it, and goes on alike', () => {
    fc.assert(
      fc.property(walks, walks, (before, after) => {
        const [a, b] = [new ControlTable(panel), new ControlTable(panel)];
        let left = before.reduce((s, e) => a.step(s, e).to, a.initial().to);
        let right = b.restore(left.key);
        expect(right.outputs).toEqual(left.outputs);
        for (const e of after.slice(0, 20)) {
          const [l, r] = [a.step(left, e), b.step(right, e)];
          expect(r.to.key).toBe(l.to.key);
          expect(r.commands).toEqual(l.commands);
          [left, right] = [l.to, r.to];
        }
      }),
      { numRuns: 20, seed: 3 },
    );
  });

  it('refuses a state of another table, an unknown event and an unknown key', () => {
    const table = new ControlTable(panel);
    expect(() => table.step(new ControlTable(panel).initial().to, 0)).toThrow(/foreign/);
    expect(() => table.step(table.initial().to, EVENTS.length)).toThrow();
    expect(() => eventNumber('nothing' as 'dose.ends')).toThrow(/nothing/);
    const key = table.initial().to.key;
    for (const other of [
      '',
      '{}',
      '{"supply":"nowhere"}',
      '{"supply":"on"}',
      key.replace('{', '{"more":"on",'),
      ` ${key}`,
    ]) {
      expect(() => new ControlTable(panel).restore(other), other).toThrow();
    }
  });
});
