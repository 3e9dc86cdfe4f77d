/** Work that can hurt warns where it is offered: before it is done, not in what it leaves behind. */
import { expect, it } from 'vitest';
import { CallSession, prepareCall, shippedCalls, shippedVisits, viewOf } from '../../src/calls/index.ts';

/** What can be done stands beside the picture, whatever it shows. */
const NO_SCENE = {} as Parameters<typeof viewOf>[1];

/** The cautions that stand beside a place's work as the call begins, nothing done yet. */
function cautionsAt(id: string, place: string): string[] {
  const call = [...shippedCalls(), ...shippedVisits()].find((one) => one.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  const { parts } = viewOf(new CallSession(prepareCall(call), 'practice'), NO_SCENE);
  return parts.flatMap((part) => (part.id === place ? part.cautions.map((caution) => caution.id) : []));
}

it('warns of buried lines where a lid has to be dug for, and only there', () => {
  expect(cautionsAt('under-the-sod', 'house')).toContain('caution.dig');
  expect(cautionsAt('march-round', 'house')).not.toContain('caution.dig');
  expect(cautionsAt('sunny-line', 'house')).not.toContain('caution.dig');
});

it('warns at the pump tank that the end of a hose stays out of the water', () => {
  expect(cautionsAt('sunny-line', 'pump-tank')).toContain('caution.hose');
});
