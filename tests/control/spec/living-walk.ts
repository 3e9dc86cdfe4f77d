/**
 * Walks a specification on the whole unit: water fills and drains, air leaks, delays run out. Time has its say in what
 * can follow on what: of several delays the first due ends first, and what takes water hours cannot happen within a
 * minute. So the paths are searched for on the living unit itself, breadth first, with what it keeps at every instant
 * to come back to; beside the events of the specification, a person may wait until shortly before a delay ends.
 */
import type { ControlEventName, DelayId } from '../../../src/control/index.ts';
import type { UnitSpec } from '../../../src/unit/index.ts';
import { ENDINGS, type Kept, Living } from '../living.ts';
import { type Edge, edgeKey, type Plan, planOf } from './paths.ts';
import { sees } from './sights.ts';
import type { Promised } from './vocabulary.ts';
import type { Failure } from './walk.ts';
import type { Wanted } from './wanted.ts';

export interface LivingRow {
  readonly promise: string;
  readonly unit: string;
  readonly fault: string;
  readonly transitions: number;
  readonly done: number;
  /** Transitions that nature forbids: air neither comes nor stays without a compressor that runs. */
  readonly airless: number;
  /** Ways to a state that were gone: the same state of the specification with other delays about to end. */
  readonly places: number;
  readonly steps: number;
  readonly ms: number;
}

export interface LivingWalk {
  readonly row: LivingRow;
  readonly failures: readonly Failure[];
  /** Transitions neither taken nor forbidden by nature. */
  readonly missed: readonly string[];
}

/** Where a living unit and its specification stand together. */
interface Place {
  readonly kept: Kept;
  readonly wanted: Wanted;
  readonly from: Place | undefined;
  readonly by: string;
}

const WAIT = 'wait until a delay is about to end';
/** So long before its end a delay is about to end: less than the shortest delay lasts, s. */
const ABOUT_s = 2;
/** Water comes and goes by itself while no delay ends within this, s. */
const TIME_ENOUGH_s = 1200;

export function walkLiving(promised: Promised, fault: string, spec: UnitSpec): LivingWalk {
  const search = new Search(promised, planOf(promised, fault), spec);
  return search.run(fault);
}

class Search {
  private readonly promised: Promised;
  private readonly plan: Plan;
  private readonly living: Living;
  /** What happens by itself that the specification has a word for. */
  private readonly words: ReadonlySet<string>;
  /** Transitions not taken yet, and those of them that nature forbade where they were tried. */
  private readonly left: Set<string>;
  private readonly airless = new Set<string>();
  private readonly seen = new Set<string>();
  private readonly queue: Place[] = [];
  private readonly failures: Failure[] = [];
  private steps = 0;

  constructor(promised: Promised, plan: Plan, spec: UnitSpec) {
    this.promised = promised;
    this.plan = plan;
    this.living = new Living(spec).send(promised.before ?? [], true);
    this.words = new Set(Object.values(promised.does).flat());
    this.left = new Set([...plan.edges.values()].flat().map(edgeKey));
  }

  run(fault: string): LivingWalk {
    const began = performance.now();
    const { promised, plan } = this;
    this.arrive(plan.start, undefined, '');
    for (const place of this.queue) {
      for (const edge of plan.edges.get(place.wanted.key) ?? []) this.take(place, edge);
      this.waitAt(place);
      if (this.isDone() || this.failures.length > 0) break;
    }
    const missed = [...this.left].filter((e) => !this.airless.has(e));
    const row: LivingRow = {
      promise: promised.name,
      unit: promised.unit,
      fault,
      transitions: plan.transitions,
      done: plan.transitions - this.left.size,
      airless: this.left.size - missed.length,
      places: this.queue.length,
      steps: this.steps,
      ms: performance.now() - began,
    };
    return { row, failures: this.failures, missed };
  }

  private isDone(): boolean {
    return this.left.size <= this.airless.size && [...this.left].every((e) => this.airless.has(e));
  }

  /** Takes a transition, if it happens here as it is meant to. */
  private take(place: Place, edge: Edge): void {
    const { unit } = place.kept;
    const enough = unit.due.every(([id, at]) => !this.watches(id) || at > unit.t + TIME_ENOUGH_s);
    if (!(enough && this.tries(place, edge, false))) this.tries(place, edge, true);
  }

  /** True when just that happened. In a hurry water does not come and go by itself. */
  private tries(place: Place, edge: Edge, hurry: boolean): boolean {
    const living = this.living.back(place.kept);
    const does = this.promised.does[edge.event] ?? [];
    if (this.isAirless(does)) this.airless.add(edgeKey(edge));
    const before = living.dialled;
    this.steps++;
    living.send(does, hurry);
    const happened = [...living.happened];
    const spoken = happened.filter((what) => this.words.has(what));
    if (this.isCutOut()) return false;
    const way = this.followed(place.wanted, edge, spoken);
    const last = way?.at(-1);
    if (!way || !last) return false;
    const calls = way.reduce((sum, e) => sum + e.calls, 0);
    const problems = differences(this.promised, living, last.to, calls, before);
    if (problems.length > 0) {
      // What the specification has no word for may have come in between: then this was another transition.
      if (spoken.length === happened.length) this.fail(place, edge.event, problems);
      return false;
    }
    for (const e of way) this.left.delete(edgeKey(e));
    this.arrive(last.to, place, edge.event);
    return way.includes(edge);
  }

  /** Without a compressor that runs, air does not come back, and what stands in the line is gone before a delay ends. */
  private isAirless(does: readonly ControlEventName[]): boolean {
    const { state } = this.living;
    if (state.outputs.compressorRuns || !this.words.has('air.falls')) return false;
    return does.includes('air.rises') || (this.living.stands('air') && does.some((e) => ENDINGS.includes(e)));
  }

  /** A motor was cut out by its heat, and this promise has no word for it: another one tells of that. */
  private isCutOut(): boolean {
    return this.living.happened.some((what) => CUT_OUTS.includes(what) && !this.words.has(what));
  }

  private waitAt(place: Place): void {
    const living = this.living.back(place.kept);
    const first = this.due()[0];
    const left = first ? first[1] - living.unit.t - ABOUT_s : 0;
    if (left <= 0) return;
    const before = living.dialled;
    living.hold(left);
    if (living.happened.some((what) => this.words.has(what)) || this.isCutOut()) return;
    const problems = differences(this.promised, living, place.wanted, 0, before);
    if (problems.length === 0) this.arrive(place.wanted, place, WAIT);
    else if (living.happened.length === 0) this.fail(place, WAIT, problems);
  }

  private arrive(wanted: Wanted, from: Place | undefined, by: string): void {
    const { unit, state } = this.living;
    const due = this.due();
    const order = due.map(([id, at], i) => (at === due[i - 1]?.[1] ? `=${id}` : id));
    const soon = due[0] !== undefined && due[0][1] <= unit.t + ABOUT_s + 0.5;
    const name = [wanted.key, state.key, order, soon, unit.switches.above, unit.registers.clockStopped_s < 0].join(' ');
    if (this.seen.has(name)) return;
    this.seen.add(name);
    this.queue.push({ kept: this.living.keep(), wanted, from, by });
  }

  /**
   * The transitions that were really taken: the one that was meant, and those of what happened by itself with it, two
   * delays that end at one instant say. Undefined when something happened that the specification has no word for.
   */
  private followed(from: Wanted, meant: Edge, happened: readonly string[]): Edge[] | undefined {
    const own = (this.promised.does[meant.event] ?? []).filter(byItself);
    const way: Edge[] = [];
    let rest = happened;
    let done = false;
    while (!done || rest.length > 0) {
      const here = this.plan.edges.get(way.at(-1)?.to.key ?? from.key) ?? [];
      const isNow: boolean = !done && own.every((what, i) => rest[i] === what);
      const next = here.find((e) => (isNow ? e.event === meant.event : this.isJust(e, rest[0])));
      if (!next) return undefined;
      way.push(next);
      rest = rest.slice(isNow ? own.length : 1);
      done ||= isNow;
    }
    return way;
  }

  private watches(id: DelayId): boolean {
    return this.promised.delays.includes(id);
  }

  /** The delays that the promise watches and that run, the first to end first. */
  private due(): [DelayId, number][] {
    return [...this.living.unit.due].filter(([id]) => this.watches(id)).sort(([, a], [, b]) => a - b);
  }

  private isJust(edge: Edge, what: string | undefined): boolean {
    const does = this.promised.does[edge.event] ?? [];
    return does.length === 1 && does[0] === what;
  }

  private fail(place: Place, event: string, problems: readonly string[]): void {
    this.failures.push({ path: [...history(place), event], problems });
  }
}

const CUT_OUTS: readonly ControlEventName[] = ['protector.hot', 'cutout.hot'];
const OF_NATURE = /^(?:\w+Float|air)\.(?:rises|falls)$/;

/** What no hand does: water, air and time. */
function byItself(what: string): boolean {
  return OF_NATURE.test(what) || ENDINGS.some((e) => e === what);
}

function history(place: Place): string[] {
  return place.from ? [...history(place.from), place.by] : [];
}

function differences(promised: Promised, living: Living, wanted: Wanted, calls: number, before: number): string[] {
  const found: string[] = [];
  const clockGoes = living.unit.registers.clockStopped_s < 0;
  for (const sight of promised.sights) {
    const claim = wanted.sees.get(sight);
    if (claim && sees(living.state, clockGoes, sight) !== claim.want) {
      found.push(`${sight} is not as it must be: ${claim.says}`);
    }
  }
  for (const delay of promised.delays) {
    const runs = living.unit.due.has(delay);
    if (runs !== wanted.runs.has(delay)) found.push(`the delay ${delay} ${runs ? 'runs' : 'does not run'}`);
  }
  if (living.dialled - before !== calls) found.push(`${living.dialled - before} calls went out, want ${calls}`);
  return found;
}
