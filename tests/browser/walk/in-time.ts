/** Hands take time, and a delay that runs ends whether or not a path says so. */
import type { DelayId } from '../../../src/control/index.ts';
import { ACTION_BY_ID } from '../../../src/service/index.ts';
import type { Edge } from '../../control/spec/paths.ts';
import type { Handed } from './handed.ts';

/** Air takes a second or two to come or go, s: so much nearer to its end no delay is trusted. */
const MARGIN_s = 2;

/** For how long each delay has run, s. */
type Ran = ReadonlyMap<DelayId, number>;

/** Where hands are: a state, and how far its delays have come. */
export interface Spot {
  readonly key: string;
  readonly ran: Ran;
}

export interface Timing {
  readonly handed: Handed;
  readonly edges: ReadonlyMap<string, readonly Edge[]>;
  readonly delays_s: Readonly<Partial<Record<DelayId, number | undefined>>>;
  /** Delays that run in a state, of those that the promise is about. */
  readonly runs: (key: string) => readonly DelayId[];
}

export function secondsOf(action: string): number {
  const def = ACTION_BY_ID.get(action);
  if (!def) throw new Error(`no action "${action}"`);
  return def.minutes * 60;
}

/** Where a hand leads; undefined where a delay would end before it is done. */
export function onwards({ handed, delays_s, runs }: Timing, { ran }: Spot, edge: Edge): Spot | undefined {
  const { action } = handed.hand(edge.event);
  const takes_s = action === undefined ? 0 : secondsOf(action);
  const running = runs(edge.from);
  const limit = (id: DelayId): number => (delays_s[id] ?? 0) - MARGIN_s;
  const late = running.some((id) => (ran.get(id) ?? 0) + takes_s >= limit(id));
  if (action !== undefined && late) return undefined;
  const between = handed.within(edge).flatMap((one) => (one ? [one.to.runs] : []));
  const goesOn = (id: DelayId): boolean => running.includes(id) && between.every((here) => here.has(id));
  const after = runs(edge.to.key).map((id): [DelayId, number] => [id, goesOn(id) ? (ran.get(id) ?? 0) + takes_s : 0]);
  return { key: edge.to.key, ran: new Map(after) };
}

/** The part of a path that can be done before some delay ends by itself. */
export function inTime(timing: Timing, start: Spot, path: readonly Edge[]): Edge[] {
  const done: Edge[] = [];
  let spot = start;
  for (const edge of path) {
    const next = onwards(timing, spot, edge);
    if (!next) break;
    done.push(edge);
    spot = next;
  }
  return done;
}

export function endOf(timing: Timing, start: Spot, path: readonly Edge[]): Spot {
  return path.reduce((spot, edge) => onwards(timing, spot, edge) ?? spot, start);
}

/** The shortest way, in time, that ends with an edge of a kind; undefined where no way does. */
export function wayTo(timing: Timing, start: Spot, wanted: (edge: Edge) => boolean): Edge[] | undefined {
  const name = ({ key, ran }: Spot): string => `${key} ${JSON.stringify([...ran])}`;
  const queue: { spot: Spot; way: Edge[] }[] = [{ spot: start, way: [] }];
  const seen = new Set([name(start)]);
  for (const { spot, way } of queue) {
    for (const edge of timing.edges.get(spot.key) ?? []) {
      const next = onwards(timing, spot, edge);
      if (!next) continue;
      if (wanted(edge)) return [...way, edge];
      if (seen.has(name(next))) continue;
      seen.add(name(next));
      queue.push({ spot: next, way: [...way, edge] });
    }
  }
  return undefined;
}
