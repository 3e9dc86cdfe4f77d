/**
 * The whole product of every unit's panel as the world may drive it, breadth first: sound, then under single faults,
 * then under pairs. The runs are bounded by MINUTES a unit and by STATES; each prints how far it came, and says "complete" only
 * when nothing was left. Every edge is held against the invariants, and one place in so many is healed.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ControlTable, panelOf } from '../../src/control/index.ts';
import { kindOf } from '../../src/unit/index.ts';
import { Ladder, type Place } from './ladder.ts';
import { SPECS } from './panels.ts';

/** The box of a unit, a third of half an hour, and the shares that its runs have of it. */
const BOX_ms = Number(process.env.MINUTES ?? 10) * 60_000;
const MOST_STATES = Number(process.env.STATES ?? 250_000);
const HEAL_EVERY = 20;
const RUNS = [
  ['sound', 0, 0.5],
  ['under single faults', 1, 0.3],
  ['under pairs of faults', 2, 0.2],
] as const;

interface Run {
  readonly places: number;
  readonly edges: number;
  /** Every history of so many steps was walked. */
  readonly depth: number;
  readonly complete: boolean;
  readonly healed: number;
  /** The shortest history to each breach, a few of them. */
  readonly breaches: readonly string[];
}

/** Places in order of their first meeting, each with the one it was met from. */
interface Met {
  readonly place: Place;
  readonly from: Met | undefined;
  readonly by: string;
  readonly depth: number;
}

function history(met: Met): string {
  const steps: string[] = [];
  for (let at: Met | undefined = met; at?.from; at = at.from) steps.unshift(at.by);
  return steps.length === 0 ? 'the start' : steps.join(' > ');
}

function explore(ladder: Ladder, most: number, box_ms: number): Run {
  const began = performance.now();
  const seen = new Set<string>();
  let queue: Met[] = [{ place: ladder.start(), from: undefined, by: '', depth: 0 }];
  seen.add(ladder.key(ladder.start()));
  const breaches: string[] = [];
  let edges = 0;
  let healed = 0;
  let depth = 0;
  for (; queue.length > 0; depth++) {
    const deeper: Met[] = [];
    for (const met of queue) {
      if (performance.now() - began > box_ms || ladder.met > MOST_STATES) {
        return { places: seen.size, edges, depth, complete: false, healed, breaches };
      }
      for (const { name, to, breaches: found } of ladder.next(met.place, most)) {
        edges += 1;
        const key = ladder.key(to);
        const known = seen.has(key);
        const next: Met = { place: to, from: met, by: name, depth: depth + 1 };
        if (breaches.length < 10) for (const says of found) breaches.push(`${history(next)}: ${says}`);
        if (known) continue;
        seen.add(key);
        deeper.push(next);
        if (seen.size % HEAL_EVERY !== 0) continue;
        healed += 1;
        const ill = ladder.unhealthy(ladder.healed(to));
        if (ill.length > 0 && breaches.length < 10) breaches.push(`${history(next)}: healed, and ${ill.join(', ')}`);
      }
    }
    queue = deeper;
  }
  return { places: seen.size, edges, depth, complete: true, healed, breaches };
}

describe.each(['u1', 'u2', 'u3'] as const)('the product of the panel of %s', (name) => {
  const spec = SPECS[name];
  // Let go after its runs: the states remembered of all three panels do not fit into one heap.
  let ladder: Ladder | undefined;
  beforeAll(() => {
    ladder = new Ladder(new ControlTable(panelOf(kindOf(spec.panel))), spec);
  });
  afterAll(() => {
    ladder = undefined;
  });

  it.each(RUNS)('%s', (title, most, share) => {
    if (!ladder) throw new Error('no ladder');
    const began = performance.now();
    const run = explore(ladder, most, share * BOX_ms);
    const { states, edges } = ladder.table.size();
    const seconds = Math.round((performance.now() - began) / 1000);
    const reached = run.complete ? 'complete' : `bounded, every history of ${run.depth} steps`;
    console.info(
      `${name} ${title}: ${reached}; ${run.places} places, ${run.edges} steps between them, ${run.healed} healed, ` +
        `${seconds} s; ${states} panel states and ${edges} edges remembered`,
    );
    expect(run.breaches).toEqual([]);
  });
});
