import { describe, expect, it } from 'vitest';
import { linesFor } from '../../../src/desk/next-time.ts';
import type { CallCard } from '../../../src/desk/protocol.ts';
import { Line } from '../../../src/desk/stored.ts';

const card = (id: string, kind: CallCard['kind']) => ({ id, kind }) as CallCard;
const CARDS = [card('red', 'alarm'), card('storm', 'alarm'), card('wash', 'alarm'), card('noon', 'complaint')];
const line = (callId: string, nextTime: string, savedAt: number, family?: string): Line => ({
  version: 1,
  callId,
  toldMost: '',
  costMost: '',
  nextTime,
  savedAt,
  ...(family === undefined ? {} : { family }),
});

describe('what one wrote for next time', () => {
  it('comes back before calls whose trouble shows itself alike, whatever their fault is', () => {
    const lines = [line('red', 'Soap first', 1, 'air'), line('noon', 'Read the timer', 2, 'floats')];
    expect(linesFor(lines, CARDS, 'storm')).toEqual(['Soap first']);
    expect(linesFor(lines, CARDS, 'wash')).toEqual(['Soap first']);
    expect(linesFor(lines, CARDS, 'noon')).toEqual(['Read the timer']);
  });

  it('gives no cause away: the same lines stand before every call that begins alike', () => {
    const lines = [line('red', 'Soap first', 1, 'air'), line('wash', 'Lift the floats', 2, 'floats')];
    const shown = ['red', 'storm', 'wash'].map((id) => linesFor(lines, CARDS, id));
    expect(new Set(shown.map((one) => one.join('|')))).toEqual(new Set(['Lift the floats|Soap first']));
  });

  it('shows the last three, each once, and none that is empty', () => {
    const lines = ['a', 'b', 'b', 'c', '', 'd'].map((text, i) => line('red', text, i, `family-${i}`));
    expect(linesFor(lines, CARDS, 'storm')).toEqual(['d', 'c', 'b']);
  });

  it('keeps a line of an earlier Underlawn with its call', () => {
    const { savedAt: _, ...old } = line('red', 'Read the levers', 0);
    expect(Line(old)).toBe(true);
    expect(linesFor([old], CARDS, 'red')).toEqual(['Read the levers']);
    expect(linesFor([old], CARDS, 'storm')).toEqual([]);
  });

  it('of a call that is not on the list any more is let be', () => {
    expect(linesFor([line('gone', 'Soap first', 1, 'air')], CARDS, 'storm')).toEqual([]);
    expect(linesFor([line('gone', 'Soap first', 1, 'air')], CARDS, 'gone')).toEqual([]);
  });
});
