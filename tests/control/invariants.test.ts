/** The invariants of a panel over random events of every kind, in any order the world could never send them in. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ControlTable, EVENTS, eventNumber } from '../../src/control/index.ts';
import { moveBreaches, stateBreaches } from './invariants.ts';
import { PANELS } from './panels.ts';

const SEED = 20310514;

describe.each(PANELS)('the panel of %s', (_, panel) => {
  const events = EVENTS.filter((event) => panel.events.has(event));

  it('breaks no invariant, whatever happens to it', () => {
    const table = new ControlTable(panel);
    expect(stateBreaches(panel.kind, table.initial().to)).toEqual([]);
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...events), { minLength: 40, maxLength: 120 }), (walk) => {
        let from = table.initial().to;
        for (const event of walk) {
          const { to, commands } = table.step(from, eventNumber(event));
          expect([
            ...moveBreaches(panel.kind, { from, event, to, commands }),
            ...stateBreaches(panel.kind, to),
          ]).toEqual([]);
          from = to;
        }
      }),
      { numRuns: 100, seed: SEED },
    );
  });
});
