import { describe, expect, it } from 'vitest';
import { planOf, targetsOf } from '../../../src/desk/call/meter/plan.ts';
import { stepTo } from '../../../src/desk/call/meter/walk.ts';
import { CONDUCTORS, terminalsOf } from '../../../src/unit/index.ts';
import { KINDS, type PanelName } from '../../control/panels.ts';

describe.each(Object.keys(KINDS) as PanelName[])('the drawn panel of %s', (name) => {
  const has = new Set<string>(terminalsOf(KINDS[name]));

  it('shows every terminal that the panel has once, and no other', () => {
    const shown = targetsOf(
      planOf((id) => has.has(id), 'terminal'),
      'terminal',
    );
    expect([...shown].sort()).toEqual([...has].sort());
  });

  it('shows every wire that a clamp goes round once', () => {
    const shown = targetsOf(
      planOf((id) => has.has(id), 'clamp'),
      'clamp',
    );
    expect([...shown].sort()).toEqual([...CONDUCTORS].sort());
  });
});

describe('arrow keys on the drawn panel', () => {
  const spots = [
    { x: 0, y: 0 },
    { x: 40, y: 0 },
    { x: 80, y: 0 },
    { x: 20, y: 50 },
  ];

  it('go along a row, and to the nearest of the next', () => {
    expect(stepTo('ArrowRight', 0, spots)).toBe(1);
    expect(stepTo('ArrowRight', 1, spots)).toBe(2);
    expect(stepTo('ArrowLeft', 2, spots)).toBe(1);
    expect(stepTo('ArrowDown', 0, spots)).toBe(3);
    expect(stepTo('ArrowUp', 3, spots)).toBe(0);
  });

  it('stay where nothing lies that way, and leave other keys alone', () => {
    expect(stepTo('ArrowLeft', 0, spots)).toBeUndefined();
    expect(stepTo('ArrowDown', 3, spots)).toBeUndefined();
    expect(stepTo('Enter', 0, spots)).toBeUndefined();
  });
});
