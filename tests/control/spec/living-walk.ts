/**
 * Walks a specification on the whole unit: water fills and drains, air leaks, delays run out. What takes water hours
 * cannot happen within a delay of a minute: a path is followed as far as time lets it, and the part done is counted.
 */
import { DELAYS, type DelayId } from '../../../src/control/index.ts';
import type { UnitSpec } from '../../../src/unit/index.ts';
import { Living } from '../living.ts';
import { type Edge, edgeKey, planOf } from './paths.ts';
import type { Promised, Sight } from './vocabulary.ts';
import type { Failure } from './walk.ts';
import type { Wanted } from './wanted.ts';

export interface LivingRow {
  readonly promise: string;
  readonly unit: string;
  readonly paths: number;
  readonly steps: number;
  readonly transitions: number;
  readonly transitionsDone: number;
  readonly ms: number;
}

const HANDLES = {
  alarmHandle: 'alarmBreaker',
  compressorHandle: 'compressorBreaker',
  pumpHandle: 'pumpBreaker',
} as const;

export function walkLiving(promised: Promised, fault: string, spec: UnitSpec): { row: LivingRow; failures: Failure[] } {
  const began = performance.now();
  const plan = planOf(promised, fault);
  const taken = new Set<string>();
  const failures: Failure[] = [];
  let steps = 0;
  for (const path of plan.paths) {
    const living = new Living(spec);
    living.send(...(promised.before ?? []));
    let problems = differences(promised, living, plan.start, 0, living.dialled);
    let done = 0;
    for (const edge of path) {
      if (problems.length > 0 || !inTime(promised, living, edge)) break;
      const before = living.dialled;
      const since = living.unit.log.length;
      living.send(...(promised.does[edge.event] ?? []));
      if (!asMeant(promised, living, edge, since)) break;
      problems = differences(promised, living, edge.to, edge.calls, before);
      taken.add(edgeKey(edge));
      done++;
    }
    steps += done;
    if (problems.length > 0) failures.push({ path: path.slice(0, done).map((e) => e.event), problems });
  }
  const { name, unit } = promised;
  const ms = performance.now() - began;
  return {
    row: {
      promise: name,
      unit,
      paths: plan.paths.length,
      steps,
      transitions: plan.transitions,
      transitionsDone: taken.size,
      ms,
    },
    failures,
  };
}

/** Water moves while nothing else is due; of several delays the first one due ends first. */
function inTime(promised: Promised, { unit }: Living, edge: Edge): boolean {
  const does = promised.does[edge.event] ?? [];
  const due = [...unit.due];
  if (does.some((e) => OF_NATURE.test(e) && !e.startsWith('air'))) return due.length === 0;
  const ends = due.filter(([id]) => does.some((e) => e === DELAYS[id]));
  if (ends.length === 0) return true;
  const first = Math.min(...due.map(([, at]) => at));
  return ends.some(([, at]) => at === first);
}

const ENDINGS: readonly string[] = Object.values(DELAYS);
const OF_NATURE = /^(?:\w+Float|air)\.(?:rises|falls)$/;

/** Whether what water, air and time did is what was meant: on the way a pump may have emptied a tank, a delay run out. */
function asMeant(promised: Promised, { unit }: Living, edge: Edge, since: number): boolean {
  const does: readonly string[] = promised.does[edge.event] ?? [];
  const happened = unit.log.slice(since).map((h) => h.what as string);
  const own = happened.filter((what) => OF_NATURE.test(what) || ENDINGS.includes(what));
  return own.every((what) => does.includes(what)) && does.every((e) => !OF_NATURE.test(e) || happened.includes(e));
}

function differences(promised: Promised, living: Living, wanted: Wanted, calls: number, before: number): string[] {
  const found: string[] = [];
  for (const sight of promised.sights) {
    const claim = wanted.sees.get(sight);
    if (claim && sees(living, sight) !== claim.want) found.push(`${sight} is not as it must be: ${claim.says}`);
  }
  for (const delay of promised.delays) {
    const runs = living.unit.due.has(delay as DelayId);
    if (runs !== wanted.runs.has(delay)) found.push(`the delay ${delay} ${runs ? 'runs' : 'does not run'}`);
  }
  if (living.dialled - before !== calls) found.push(`${living.dialled - before} calls went out, want ${calls}`);
  return found;
}

function sees({ state, unit }: Living, sight: Sight): boolean {
  const { outputs, regions } = state;
  switch (sight) {
    case 'pump':
      return outputs.pumpRuns;
    case 'stalledPump':
      return outputs.pumpStalls;
    case 'compressor':
      return outputs.compressorRuns;
    case 'ultraviolet':
      return outputs.ultravioletLit;
    case 'clock':
      return unit.registers.clockStopped_s < 0;
    case 'alarmHandle':
    case 'compressorHandle':
    case 'pumpHandle':
      return regions[HANDLES[sight]] === 'on';
    default:
      return outputs[sight];
  }
}
