/**
 * Sums that are done and written down at once: a term has its value and how it is written, so that the worked solution
 * is what was computed. The written one is rounded; the value goes on whole.
 */
import { type Message, type Quantity, quantity, say } from '../../service/message.ts';
import { lastDigit, type System } from '../drill.ts';

export interface Term {
  readonly value: number;
  readonly said: Message;
  /** How firmly it holds together: a sum, a product, a number. */
  readonly firm: 1 | 2 | 3;
}

/** A number as it is written, with its unit where it has one: `unit` is the end of a `drill.unit.` id. */
export function amount(value: number, decimals: number, unit?: string): Term {
  const n = quantity('count', value, lastDigit(decimals));
  return { value, said: written(n, unit), firm: 3 };
}

function written(n: Quantity, unit: string | undefined): Message {
  if (unit === undefined) return say('drill.figure', { n });
  // The sign of percent follows at once.
  return unit === 'pct' ? say('drill.percent', { n }) : say('drill.amount', { n, u: say(`drill.unit.${unit}`) });
}

/** A plain number, with the decimals that it has. */
export function plain(value: number, decimals = 0): Term {
  return amount(value, decimals);
}

function grouped({ said, firm }: Term, least: number): Message {
  return firm < least ? say('drill.group', { a: said }) : said;
}

function two(id: string, firm: Term['firm'], value: number, a: Message, b: Message): Term {
  return { value, said: say(`drill.${id}`, { a, b }), firm };
}

export function times(first: Term, ...others: readonly Term[]): Term {
  return others.reduce((a, b) => two('times', 2, a.value * b.value, grouped(a, 2), grouped(b, 2)), first);
}

export function over(a: Term, b: Term): Term {
  return two('over', 2, a.value / b.value, grouped(a, 2), grouped(b, 3));
}

export function plus(first: Term, ...others: readonly Term[]): Term {
  return others.reduce((a, b) => two('plus', 1, a.value + b.value, a.said, b.said), first);
}

export function minus(a: Term, b: Term): Term {
  return two('minus', 1, a.value - b.value, a.said, grouped(b, 2));
}

export function root(a: Term): Term {
  return { value: Math.sqrt(a.value), said: say('drill.root', { a: a.said }), firm: 3 };
}

/** A worked solution as it grows. */
export class Working {
  readonly lines: Message[] = [];

  /** Writes a line down and gives its result, to go on with. `what` is the end of a `drill.w.` id. */
  line(what: string, sum: Term, decimals: number, unit?: string): Term {
    const result = amount(sum.value, decimals, unit);
    this.lines.push(say('drill.line', { what: say(`drill.w.${what}`), sum: sum.said, result: result.said }));
    return result;
  }
}

interface Shape {
  readonly unit: string;
  /** So much of it in the SI unit of the name, and the step in which it is given. */
  readonly per: number;
  readonly step: number;
}

export type Scale = Readonly<Record<System, Shape>>;

/** A quantity as it is given in a system: rounded to the step that people use there. */
export function given(system: System, scale: Scale, value: number): Term {
  const { unit, per, step } = scale[system];
  return amount(Math.round((value * per) / step) * step, decimalsOf(step), unit);
}

function decimalsOf(step: number): number {
  const [, part = ''] = String(step).split('.');
  return part.length;
}
