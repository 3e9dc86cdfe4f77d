/**
 * Two-minute drills: one skill at a time, with numbers from a seed and an answer that the simulation, the control or the
 * planner works out. The same skill, seed, unit and system of units give the same drill.
 */
import type { Message } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import type { Figure } from './figure.ts';
import type { Skill, Topic } from './topics.ts';

export { SKILLS, type Skill } from './topics.ts';

/** A sum is done in one system of units, so a question of numbers is made for one. */
export type System = 'us' | 'si';

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

/** One part of the works, marked in its plan and named in a list. */
export interface Pointing {
  readonly kind: 'point';
  readonly options: readonly Option[];
  readonly right: string;
}

/** Things to be put in sequence. */
export interface Ordering {
  readonly kind: 'order';
  /** As they are shown, out of order; `why` tells what puts each in its place. */
  readonly items: readonly Option[];
  readonly right: readonly string[];
  /** Said where every one is in its place. */
  readonly whole: Message;
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
  /** Decimals that the answer earns. */
  readonly decimals: number;
  /** How far off still counts as right, in the same unit. */
  readonly tolerance: number;
  readonly right: Message;
  readonly slips: readonly Slip[];
  readonly other: Message;
  /** The way to the number, line by line, each with its numbers and units. */
  readonly worked: readonly Message[];
}

export type Ask = Choice | Pointing | Ordering | NumberAsked;

/** A drill as its family makes it. */
export interface Made {
  readonly skill: Skill;
  readonly seed: number;
  readonly prompt: Message;
  readonly figure: Figure;
  readonly ask: Ask;
}

export interface Drill extends Made {
  readonly topic: Topic;
  /** Where its rule or its numbers are published, or that they are common practice. */
  readonly source: Message;
}

export type Maker = (seed: number, spec: UnitSpec, system: System) => Made;

/** The id of an option, the ids of all items in their order, or a number in the unit asked for. */
export type Answer = string | number | readonly string[];

export interface Checked {
  readonly right: boolean;
  readonly why: Message;
}

/** A slip is known by its number within this share (convention). */
const SLIP_SHARE = 0.05;

/** One in the last of so many decimals. */
export function lastDigit(decimals: number): number {
  return Number(`1e-${decimals}`);
}

/** How far off a number may be and still be that slip: at least by one in the last decimal of the answer. */
export function slipReach({ value }: Slip, { decimals }: Pick<NumberAsked, 'decimals'>): number {
  return Math.max(SLIP_SHARE * Math.abs(value), lastDigit(decimals));
}

/** What an answer is worth. */
export function checked({ ask }: Pick<Drill, 'ask'>, given: Answer): Checked {
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return { right: given === ask.right, why: optionOf(ask.options, String(given)).why };
    case 'order':
      return inSequence(ask, Array.isArray(given) ? given : []);
    case 'number':
      return counted(ask, Number(given));
  }
}

function optionOf(options: readonly Option[], id: string): Option {
  const option = options.find((one) => one.id === id);
  if (!option) throw new Error(`no option ${id}`);
  return option;
}

/** Of a wrong sequence it is told what belongs in the first place that is wrong. */
function inSequence({ items, right, whole }: Ordering, given: readonly string[]): Checked {
  const wrong = right.find((id, i) => given[i] !== id);
  return wrong === undefined ? { right: true, why: whole } : { right: false, why: optionOf(items, wrong).why };
}

function counted(ask: NumberAsked, value: number): Checked {
  if (Math.abs(value - ask.value) <= ask.tolerance) return { right: true, why: ask.right };
  const slip = ask.slips.find((one) => Math.abs(value - one.value) <= slipReach(one, ask));
  return { right: false, why: slip?.why ?? ask.other };
}
