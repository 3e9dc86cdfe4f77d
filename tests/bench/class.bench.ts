/**
 * How long a class's sheet takes: 200 records of shipped calls, made by scripted people and some of them forged, replayed by
 * as many workers as the page starts on two and on three processors; and the regret of a few of them. Through the page's own
 * pools and its own workers' code, with threads in place of the workers.
 */
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import {
  CallSession,
  COURSE,
  makeRecord,
  type Prepared,
  play,
  prepareCall,
  shippedCalls,
} from '../../src/calls/index.ts';
import { Hand } from '../../src/calls/players/hand.ts';
import { playRandom } from '../../src/calls/players/others.ts';
import type { CallRecord } from '../../src/calls/schema.ts';
import { asAction } from '../../src/calls/solution.ts';
import type { Port } from '../../src/desk/class/crew.ts';
import { Marker } from '../../src/desk/class/marker.ts';
import { markAll, workersFor } from '../../src/desk/class/pool.ts';
import type { MarkReply, MarkRequest } from '../../src/desk/class/protocol.ts';
import { reviewEach, type ToReview } from '../../src/desk/class/review-pool.ts';
import { asSaved } from '../../src/desk/class/saved-record.ts';
import type { Review } from '../../src/desk/debrief/review-shape.ts';
import { Expert } from '../../src/desk/expert-answer.ts';
import type { ExpertRequest } from '../../src/desk/expert-protocol.ts';
import { draw } from '../../src/plant/index.ts';
import { type Handed, regretIn } from '../../src/records/index.ts';
import { ACTIONS, fits } from '../../src/service/index.ts';

const RECORDS = 200;
/** Calls a class has taken: the course's first. */
const CALLS = 20;
/** How often somebody makes a check that the solution does without. */
const EXTRA = 0.15;
/** Records whose regret is worked out: so many people each of a few calls. */
const REGRET = { calls: ['storm-light', 'damp-outlet', 'sunny-line', 'wash-day-light'], people: [2, 4, 5, 6] };

if (!isMainThread) {
  const marker = new Marker((reply) => parentPort?.postMessage(reply));
  const expert = new Expert((reply) => parentPort?.postMessage(reply));
  parentPort?.on('message', (request: MarkRequest | ExpertRequest) => {
    if (request.kind === 'brought' || request.kind === 'mark') void marker.hear(request);
    else void expert.answer(request);
  });
}

export async function run(print: (line: string) => void): Promise<void> {
  await replay(print);
  await regret(print);
}

async function replay(print: (line: string) => void): Promise<void> {
  const handed = handedIn();
  const acts = handed.map(({ text }) => (JSON.parse(text) as CallRecord).actions.length).sort((a, b) => a - b);
  for (const processors of [2, 3]) {
    const workers = workersFor(processors);
    const { result: marked, seconds, cpu_s } = await timed(() => markedBy(workers, handed));
    const counted = marked.filter(({ state }) => state === 'counts').length;
    print(
      JSON.stringify({
        bench: 'class',
        part: 'replay',
        processors,
        workers,
        records: handed.length,
        calls: CALLS,
        counted,
        passed: marked.filter((one) => one.state === 'counts' && one.passed).length,
        medianActs: acts[acts.length >> 1],
        seconds: round(seconds),
        cpu_s: round(cpu_s),
        recordsPerSecond: round(handed.length / seconds),
      }),
    );
  }
}

async function regret(print: (line: string) => void): Promise<void> {
  const records = toReview();
  for (const processors of [2, 3]) {
    const workers = workersFor(processors);
    const { result: reviews, seconds, cpu_s } = await timed(() => reviewedBy(workers, records));
    const regrets = reviews.map(({ steps }) => regretIn(steps)).sort((a, b) => a - b);
    print(
      JSON.stringify({
        bench: 'class',
        part: 'regret',
        processors,
        workers,
        records: records.length,
        calls: REGRET.calls.length,
        steps: reviews.reduce((sum, { steps }) => sum + steps.length, 0),
        medianRegret_min: round(regrets[regrets.length >> 1] ?? 0),
        seconds: round(seconds),
        cpu_s: round(cpu_s),
        secondsPerRecord: round(seconds / records.length),
      }),
    );
  }
}

function toReview(): readonly ToReview[] {
  return REGRET.calls.flatMap((id) => {
    const call = shippedCalls().find((one) => one.id === id);
    if (!call) throw new Error(`${id} does not ship`);
    const prepared = prepareCall(call);
    return REGRET.people.map((i): ToReview => {
      const record = recordBy(prepared, i, i);
      return { deeds: `${id} ${i}`, callHash: record.callHash, saved: asSaved(record) };
    });
  });
}

function handedIn(): readonly Handed[] {
  const shipped = new Map(shippedCalls().map((call) => [call.id, call]));
  const calls = COURSE.slice(0, CALLS).flatMap(({ call }) => shipped.get(call) ?? []);
  const each = RECORDS / CALLS;
  return calls.flatMap((call, c) => {
    const prepared = prepareCall(call);
    return Array.from({ length: each }, (_, i): Handed => {
      const seed = c * each + i;
      return { who: `P${seed}`, text: JSON.stringify(recordBy(prepared, i, seed)) };
    });
  });
}

/** What the how manieth of a call's people hands in. */
function recordBy(prepared: Prepared, i: number, seed: number): CallRecord {
  if (i === 0) return makeRecord(play(prepared, 'reset-only'));
  if (i === 1) return makeRecord(play(prepared, 'parts-swapper'));
  const session = new CallSession(prepared, 'practice');
  if (i === 2) playRandom(session, seed);
  else playRoundabout(session, seed);
  const record = makeRecord(session);
  return i === 3 ? { ...record, claims: { ...record.claims, score: record.claims.score + 1 } } : record;
}

/** Does the call's solution as people do: with pauses for thought, and with checks between that it does not ask for. */
function playRoundabout(session: CallSession, seed: number): void {
  const { call, spec } = session.prepared;
  const hand = new Hand(session);
  const checks = ACTIONS.filter((a) => (a.group === 'look' || a.group === 'measure') && fits(a, spec));
  for (const [i, step] of call.solution.entries()) {
    const chance = (what: string) => draw(seed, `class/${what}`, i);
    session.advance(session.now_ms + Math.round(chance('pause') * 60_000));
    const check = checks[Math.floor(chance('which') * checks.length)];
    if (check && chance('whether') < EXTRA) hand.doSafely(check.id);
    session.act(asAction(session, step));
  }
  if (!session.ended) throw new Error(`${call.id} does not come to its end`);
}

function markedBy(workers: number, handed: readonly Handed[]): Promise<readonly MarkReply[]> {
  return new Promise((done) => {
    const came: MarkReply[] = [];
    markAll(handed, {
      start: inThread,
      workers,
      brought: new Map(),
      heard(_at, marked) {
        came.push(marked);
        if (came.length === handed.length) done(came);
      },
    });
  });
}

function reviewedBy(workers: number, records: readonly ToReview[]): Promise<readonly Review[]> {
  return new Promise((done, fail) => {
    const came: Review[] = [];
    reviewEach(records, {
      start: inThread,
      workers,
      known: () => false,
      heard({ deeds }, review) {
        if (review === undefined) return fail(new Error(`no review of ${deeds}`));
        came.push(review);
        if (came.length === records.length) done(came);
      },
    });
  });
}

/** A thread in place of a worker of the page. */
function inThread<Request>(): Port<Request> {
  const thread = new Worker(new URL(import.meta.url));
  return {
    postMessage: (request) => thread.postMessage(request),
    addEventListener: (type: string, on: (event: never) => void) =>
      void thread.on(type, (data) => on((type === 'message' ? { data } : data) as never)),
    terminate: () => void thread.terminate(),
  };
}

/** Seconds by the clock, and of all processors together: what others have the machine do tells in the first only. */
async function timed<T>(work: () => Promise<T>): Promise<{ result: T; seconds: number; cpu_s: number }> {
  const before = process.cpuUsage();
  const began = performance.now();
  const result = await work();
  const seconds = (performance.now() - began) / 1000;
  const { user, system } = process.cpuUsage(before);
  return { result, seconds, cpu_s: (user + system) / 1e6 };
}

function round(x: number): number {
  return Math.round(x * 100) / 100;
}
