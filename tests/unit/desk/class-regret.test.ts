import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { StepReviewView } from '../../../src/calls/lesson.ts';
import { LONGEST_SILENCE_ms, reviewEach, type ToReview } from '../../../src/desk/class/review-pool.ts';
import { Waiting } from '../../../src/desk/class/waiting.ts';
import type { Review } from '../../../src/desk/debrief/review-shape.ts';
import type { ExpertPort } from '../../../src/desk/expert.ts';
import type { ExpertReply, ExpertRequest } from '../../../src/desk/expert-protocol.ts';
import type { SavedCall } from '../../../src/desk/protocol.ts';

/** A record of a call, both named by letters: `a1` is the first of call a. */
const job = (name: string): ToReview => ({
  deeds: name,
  callHash: name.charAt(0),
  saved: { callId: name } as SavedCall,
});

describe('records that wait for their review', () => {
  it('go to a worker that has set their call up, then to one that sets up a new call', () => {
    const waiting = new Waiting(['a1', 'b1', 'a2', 'b2', 'a3'].map(job));
    const given: string[] = [];
    for (let one = waiting.next(); one !== undefined; one = waiting.next(one)) given.push(one.deeds);
    expect(given).toEqual(['a1', 'a2', 'a3', 'b1', 'b2']);
  });

  it('go to a second worker call by call, and in the end it helps where most are left', () => {
    const waiting = new Waiting(['a1', 'a2', 'b1', 'b2', 'b3', 'b4', 'c1'].map(job));
    const [one, other] = [waiting.next(), waiting.next()];
    expect([one?.deeds, other?.deeds]).toEqual(['a1', 'b1']);
    expect(waiting.next(one)?.deeds).toBe('a2');
    expect(waiting.next(one)?.deeds).toBe('c1');
    expect(waiting.next(job('c1'))?.deeds).toBe('b2');
  });
});

/** An expert's worker that says what it is told to. */
class Port implements ExpertPort {
  asked: string[] = [];
  ended = false;
  private readonly on = new Map<string, (event: MessageEvent) => void>();

  postMessage({ saved }: ExpertRequest): void {
    this.asked.push(saved.callId);
  }
  addEventListener(type: string, on: (event: MessageEvent) => void): void {
    this.on.set(type, on);
  }
  terminate(): void {
    this.ended = true;
  }
  say(reply: ExpertReply): void {
    this.on.get('message')?.({ data: reply } as MessageEvent);
  }
  step(step: number): void {
    this.say({ kind: 'step', review: { step } as StepReviewView, of: 2 });
  }
  done(): void {
    this.say({ kind: 'reviewed', together: { of: 9, readings: [], end: { id: 'together.none' } } });
  }
  break(): void {
    this.on.get('error')?.({} as MessageEvent);
  }
}

function begin(names: readonly string[], workers: number, known: (deeds: string) => boolean = () => false) {
  const ports: Port[] = [];
  const came: (readonly [string, Review | undefined])[] = [];
  const end = reviewEach(names.map(job), {
    start: () => ports[ports.push(new Port()) - 1] as Port,
    workers,
    known,
    heard: ({ deeds }, review) => came.push([deeds, review]),
  });
  return { ports, came, end };
}

describe('the experts of a class', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('tell a record when they have been through all of its steps, and get the next of its call', () => {
    const { ports, came } = begin(['a1', 'b1', 'a2'], 1);
    ports[0]?.say({ kind: 'lived', done: 0, of: 900 });
    ports[0]?.step(0);
    ports[0]?.step(1);
    expect(came).toEqual([]);
    ports[0]?.done();
    expect(came.map(([deeds, review]) => [deeds, review?.steps.map(({ step }) => step)])).toEqual([['a1', [0, 1]]]);
    ports[0]?.done();
    ports[0]?.done();
    expect(ports.map(({ asked, ended }) => [asked, ended])).toEqual([[['a1', 'a2', 'b1'], true]]);
    expect(came.map(([deeds, review]) => [deeds, review?.steps.length])).toEqual([
      ['a1', 2],
      ['a2', 0],
      ['b1', 0],
    ]);
  });

  it('pass over what is known by the time its turn comes', () => {
    const known = new Set<string>();
    const { ports } = begin(['a1', 'a2', 'a3'], 1, (deeds) => known.has(deeds));
    known.add('a2');
    ports[0]?.done();
    expect(ports[0]?.asked).toEqual(['a1', 'a3']);
  });

  it('give up a record that cannot be reviewed, and one over which they break or fall silent, and go on', () => {
    const { ports, came } = begin(['a1', 'a2', 'a3', 'a4'], 1);
    ports[0]?.say({ kind: 'error', message: { id: 'trouble.expert' } });
    ports[0]?.step(0);
    ports[0]?.break();
    expect(ports.map(({ asked, ended }) => [asked, ended])).toEqual([
      [['a1', 'a2'], true],
      [['a3'], false],
    ]);
    vi.advanceTimersByTime(LONGEST_SILENCE_ms - 1);
    ports[1]?.step(0);
    vi.advanceTimersByTime(LONGEST_SILENCE_ms - 1);
    expect(came).toHaveLength(2);
    vi.advanceTimersByTime(1);
    ports[2]?.done();
    expect(came.map(([deeds, review]) => [deeds, review !== undefined])).toEqual([
      ['a1', false],
      ['a2', false],
      ['a3', false],
      ['a4', true],
    ]);
  });

  it('say nothing any more once they are stopped', () => {
    const { ports, came, end } = begin(['a1', 'b1', 'a2'], 2);
    end();
    for (const port of ports) port.done();
    vi.advanceTimersByTime(LONGEST_SILENCE_ms);
    expect(came).toEqual([]);
    expect(ports.map(({ asked, ended }) => [asked, ended])).toEqual([
      [['a1'], true],
      [['b1'], true],
    ]);
  });
});
