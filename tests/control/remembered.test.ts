/** What the remembered table keeps, how it comes back to a state from its key, and what it refuses. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ControlState, ControlTable, EVENTS, eventNumber } from '../../src/control/index.ts';
import { tableOf } from './panels.ts';
import { Bench } from './walk.ts';

const walks = fc.array(fc.nat({ max: EVENTS.length - 1 }), { minLength: 1, maxLength: 80 });

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

  it('computes its start once', () => {
    const table = new ControlTable(panel);
    expect(table.initial()).toBe(table.initial());
  });

  it('writes a key in alphabetical order, so that it outlives a change in the order of the parts', () => {
    const regions = Object.keys(JSON.parse(new ControlTable(panel).initial().to.key));
    expect(regions).toEqual(Object.keys(panel.parts).sort());
    expect(regions).not.toEqual(Object.keys(panel.parts));
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
    expect(() => table.step(table.initial().to, EVENTS.length)).toThrow(`no edge for event ${EVENTS.length}`);
    expect(() => eventNumber('nothing' as 'dose.ends')).toThrow(/nothing/);
    const key = table.initial().to.key;
    for (const other of ['', '{}', '{"supply":"nowhere"}', key.replace('{', '{"more":"on",')]) {
      expect(() => new ControlTable(panel).restore(other), other).toThrow();
    }
    for (const other of ['{"supply":"on"}', ` ${key}`]) {
      expect(() => new ControlTable(panel).restore(other), other).toThrow('the key of no control state');
    }
  });
});
