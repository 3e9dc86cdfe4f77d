/** The remembered table is XState's own answer, kept. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnyMachineSnapshot, initialTransition, transition } from 'xstate';
import { ControlTable, EVENTS, outputsOf } from '../../src/control/index.ts';
import { PANELS } from './panels.ts';

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
