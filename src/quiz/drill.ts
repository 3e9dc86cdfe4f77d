/**
 * Two-minute drills: one skill at a time, with numbers from a seed and an answer that the simulation, the control or the
 * planner works out. The same skill, seed and unit give the same drill.
 */
import type { Message } from '../service/message.ts';
import type { Figure } from './figure.ts';

export const SKILLS = ['floats', 'air-line', 'jar', 'panel', 'meter'] as const;
export type Skill = (typeof SKILLS)[number];

export interface Option {
  readonly id: string;
  readonly label: Message;
  /** What it would take for this to be so, what the figure shows instead (or that it does), and what to ask next. */
  readonly why: Message;
}

export interface Choice {
  readonly kind: 'choice';
  /** Three to five, one of them right. */
  readonly options: readonly Option[];
  readonly right: string;
}

/** A number that people come to by a known slip, and what went astray on the way. */
export interface Slip {
  readonly value: number;
  readonly why: Message;
}

export interface NumberAsked {
  readonly kind: 'number';
  readonly unit: Message;
  readonly value: number;
  /** How far off still counts as right, in the same unit. */
  readonly tolerance: number;
  readonly right: Message;
  readonly slips: readonly Slip[];
  readonly other: Message;
}

export interface Drill {
  readonly skill: Skill;
  readonly seed: number;
  readonly prompt: Message;
  readonly figure: Figure;
  readonly ask: Choice | NumberAsked;
}

export interface Checked {
  readonly right: boolean;
  readonly why: Message;
}

/** A slip is known by its number within this share (convention). */
const SLIP_SHARE = 0.05;

/** How far off a number may be and still be that slip. */
export function slipReach({ value }: Slip): number {
  return Math.max(SLIP_SHARE * Math.abs(value), 1);
}

/** What an answer is worth: the id of an option, or a number in the unit asked for. */
export function checked({ ask }: Drill, given: string | number): Checked {
  if (ask.kind === 'choice') {
    const option = ask.options.find(({ id }) => id === given);
    if (!option) throw new Error(`no option ${given}`);
    return { right: option.id === ask.right, why: option.why };
  }
  const value = Number(given);
  if (Math.abs(value - ask.value) <= ask.tolerance) return { right: true, why: ask.right };
  const slip = ask.slips.find((one) => Math.abs(value - one.value) <= slipReach(one));
  return { right: false, why: slip?.why ?? ask.other };
}
