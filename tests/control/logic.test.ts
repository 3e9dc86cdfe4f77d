/** Relay logic: what an expression means, and what it is made of. */
import { expect, it } from 'vitest';
import { mentions } from '../../src/control/index.ts';
import { all, any, holds, is, never, none } from '../../src/control/logic.ts';

const supply = is('supply', 'on');
const breaker = is('breaker', 'on');
const on = { supply: 'on', breaker: 'on' };

it('in series all must be made, in parallel one', () => {
  expect(holds(all(supply, breaker), on)).toBe(true);
  expect(holds(all(supply, breaker), { ...on, breaker: 'off' })).toBe(false);
  expect(holds(any(supply, breaker), { ...on, breaker: 'off' })).toBe(true);
  expect(holds(any(supply, breaker), { supply: 'off', breaker: 'off' })).toBe(false);
});

it('a contact that opens is made where the other is not', () => {
  expect(holds(none(supply), on)).toBe(false);
  expect(holds(none(supply), { ...on, supply: 'off' })).toBe(true);
});

it('nothing in series is a wire, nothing in parallel a gap', () => {
  expect(holds(all(), on)).toBe(true);
  expect(holds(never, on)).toBe(false);
});

it('tells every region and state that it mentions, however deep, in order', () => {
  expect(mentions(never)).toEqual([]);
  expect(mentions(none(all(supply, any(breaker, none(is('relay', 'welded'))))))).toMatchObject([
    { region: 'supply', state: 'on' },
    { region: 'breaker', state: 'on' },
    { region: 'relay', state: 'welded' },
  ]);
});
