import type { Message } from '../service/message.ts';
import type { Numbered, Reply, Request } from './protocol.ts';

interface ReplyKind {
  list: 'list';
  ofDay: 'ofDay';
  open: 'view';
  resume: 'view';
  advance: 'view';
  nextChange: 'view';
  act: 'view';
  tick: 'view';
  save: 'saved';
  record: 'record';
  learnt: 'learnt';
  pack: 'packed';
  unpack: 'unpacked';
  debrief: 'debrief';
  xray: 'xray';
  hood: 'hood';
  round: 'round';
  roundLive: 'round';
  roundClose: 'round';
  bring: 'brought';
  sheet: 'sheet';
}

/** The reply that a request of kind `K` gets when all is well. */
export type ReplyTo<K extends Request['kind']> = Extract<Reply, { kind: ReplyKind[K] }>;

/** Whoever answers requests: the worker, or a stand-in in a test. */
export interface Engine {
  ask<R extends Request>(request: R): Promise<ReplyTo<R['kind']>>;
}

/** The engine said no, in words that can be shown. */
export class EngineError extends Error {
  readonly told: Message;
  constructor(told: Message) {
    super(told.id);
    this.told = told;
  }
}

/** What to say of whatever went wrong. */
export function toldOf(error: unknown): Message {
  return error instanceof EngineError ? error.told : { id: 'trouble.engine' };
}

/** What this page needs of a worker. */
interface Port {
  postMessage(data: unknown): void;
  addEventListener(type: 'message', on: (event: MessageEvent) => void): void;
  addEventListener(type: 'error' | 'messageerror', on: (event: Event) => void): void;
}

interface Waiting {
  readonly kind: Request['kind'];
  readonly resolve: (reply: Reply) => void;
  readonly reject: (why: EngineError) => void;
}

const EXPECTED: ReplyKind = {
  list: 'list',
  ofDay: 'ofDay',
  open: 'view',
  resume: 'view',
  advance: 'view',
  nextChange: 'view',
  act: 'view',
  tick: 'view',
  save: 'saved',
  record: 'record',
  learnt: 'learnt',
  pack: 'packed',
  unpack: 'unpacked',
  debrief: 'debrief',
  xray: 'xray',
  hood: 'hood',
  round: 'round',
  roundLive: 'round',
  roundClose: 'round',
  bring: 'brought',
  sheet: 'sheet',
};

/** Speaks `protocol.ts` over a worker: each request waits for the one reply that carries its number. */
export function connect(port: Port): Engine {
  const waiting = new Map<number, Waiting>();
  let next = 1;
  let broken: EngineError | undefined;

  port.addEventListener('message', (event) => {
    const { id, body } = event.data as Numbered<Reply>;
    const asked = waiting.get(id);
    if (asked === undefined) return;
    waiting.delete(id);
    if (body.kind === 'error') asked.reject(new EngineError(body.message));
    else if (body.kind === EXPECTED[asked.kind]) asked.resolve(body);
    else asked.reject(new EngineError({ id: 'trouble.engine' }));
  });
  const fail = () => {
    broken = new EngineError({ id: 'trouble.engine' });
    for (const one of waiting.values()) one.reject(broken);
    waiting.clear();
  };
  port.addEventListener('error', fail);
  port.addEventListener('messageerror', fail);

  return {
    ask<R extends Request>(request: R): Promise<ReplyTo<R['kind']>> {
      if (broken !== undefined) return Promise.reject(broken);
      const id = next++;
      return new Promise((resolve, reject) => {
        // The kind was compared with EXPECTED before resolve is called.
        waiting.set(id, { kind: request.kind, resolve: resolve as (reply: Reply) => void, reject });
        port.postMessage({ id, body: request } satisfies Numbered<Request>);
      });
    },
  };
}
