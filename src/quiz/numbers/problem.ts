/** A problem with numbers: its data sheet, its answer with a tolerance, its worked solution and its known slips. */
import { type Message, say } from '../../service/message.ts';
import { type Draws, untilFair } from '../draws.ts';
import { lastDigit, type Made, type NumberAsked, type Slip, type System } from '../drill.ts';
import { toldApart } from '../slips.ts';
import type { Skill } from '../topics.ts';
import { amount, type Term, type Working } from './terms.ts';

export interface Problem {
  readonly skill: Skill;
  readonly seed: number;
  readonly system: System;
  /** Where a family asks for more than one thing. */
  readonly variant?: string;
  /** What stands on the sheet, each under the end of a `drill.w.` id; texts may name it by that. */
  readonly sheet: Readonly<Record<string, Term>>;
  readonly working: Working;
  readonly answer: Term;
  readonly unit: string;
  readonly decimals: number;
  /** Numbers by the slips that lead to them. */
  readonly slips: Readonly<Record<string, number>>;
  /** Where the way differs with the system, and not only the units on it. */
  readonly waysDiffer?: true;
  /** Asked of a right answer. */
  readonly next?: Message;
}

/** Rounding on the way is no mistake (convention). */
const TOLERANCE_share = 0.02;
const FEWEST_SLIPS = 2;

/** The problem as a drill; none where its numbers leave too few slips that can be told apart. */
export function asDrill(problem: Problem): Made | undefined {
  const { skill, seed, system, sheet, working, answer, unit, decimals } = problem;
  const id = problem.variant === undefined ? skill : `${skill}.${problem.variant}`;
  const result = amount(answer.value, decimals, unit);
  const values = {
    ...Object.fromEntries(Object.entries(sheet).map(([what, { said }]) => [what, said])),
    r: result.said,
    ...(problem.next ? { next: problem.next } : {}),
  };
  const tolerance = Number(Math.max(TOLERANCE_share * answer.value, 0.5 * lastDigit(decimals)).toPrecision(2));
  const named = Object.entries(problem.slips).map(
    ([slip, value]): Slip => ({ value, why: say(`drill.${id}.slip.${slip}`, values) }),
  );
  const slips = toldApart(named, { value: answer.value, tolerance, decimals });
  if (slips.length < FEWEST_SLIPS) return undefined;
  const ask: NumberAsked = {
    kind: 'number',
    unit: say(`drill.unit.${unit}`),
    value: answer.value,
    decimals,
    tolerance,
    right: say(`drill.${id}.right`, values),
    slips,
    other: say(problem.waysDiffer ? `drill.${id}.other.${system}` : `drill.${id}.other`, values),
    worked: working.lines,
  };
  const rows = Object.entries(sheet).map(([what, { said }]) =>
    say('drill.given', { what: say(`drill.w.${what}`), n: said }),
  );
  return { skill, seed, prompt: say(`drill.${id}.ask`, values), figure: { kind: 'sheet', rows }, ask };
}

/**
 * The first draw that makes a fair problem in both systems, in the one asked for: so the same seed is the same tank and
 * the same water, whatever they are measured in.
 */
export function fairInBoth(draws: Draws, asked: System, attempt: (system: System) => Made | undefined): Made {
  return untilFair(() => {
    const other = draws.twice(() => attempt(asked === 'us' ? 'si' : 'us'));
    const made = attempt(asked);
    return other && made;
  });
}
