/** Pencil and ink in words: a part is not seen, known as of an instant, or in sight, and never more than the picture shows. */
import { expect, it } from 'vitest';
import { CallSession, prepareCall, shippedCalls, viewOf } from '../../../src/calls/index.ts';
import { asAction } from '../../../src/calls/solution.ts';
import { drawnOf } from '../../../src/desk/call/drawn-of.ts';
import { partState } from '../../../src/desk/call/part-state.ts';
import { PLACES } from '../../../src/service/index.ts';
import { sceneOf } from './scene-of.ts';

const call = shippedCalls().find(({ id }) => id === 'sunny-line');
if (call === undefined) throw new Error('the call does not ship');

it('leaves every part in pencil until something was seen or read there, and then gives the time of the newest', () => {
  const session = new CallSession(prepareCall(call), 'practice');
  const states = () => {
    const view = viewOf(session, sceneOf(session));
    return { view, of: new Map(PLACES.map((place) => [place, partState(view, place)])) };
  };
  for (const [place, state] of states().of)
    if (place !== 'phone') expect([place, state]).toEqual([place, { kind: 'pencil' }]);
  const met = new Set<string>();
  for (const step of call.solution) {
    session.act(asAction(session, step));
    const { view, of } = states();
    for (const [place, state] of of) {
      met.add(state.kind);
      const notes = view.notebook.filter(({ part }) => part === place);
      // Of what nobody has seen nothing is told.
      if (state.kind === 'pencil') expect([place, drawnOf(view.scene, place)]).toEqual([place, []]);
      // What was read there is known from then on; who knows nothing was told nothing there.
      if (state.kind === 'pencil') expect([place, notes]).toEqual([place, []]);
      if (state.kind === 'ink') {
        expect(state.seen_s).toBeLessThanOrEqual(view.now_ms / 1000);
        for (const { at_s } of notes) expect(state.seen_s).toBeGreaterThanOrEqual(at_s);
      }
    }
  }
  expect([...met].sort()).toEqual(['ink', 'live', 'pencil']);
});
