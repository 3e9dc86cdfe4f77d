/** The part of a service worker's global scope that ours uses; the DOM's own types leave it out. */

interface Extendable {
  waitUntil(work: Promise<unknown>): void;
}

export interface FetchAsked extends Extendable {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

export interface MessageHeard extends Extendable {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}

interface Client {
  readonly id: string;
  readonly url: string;
  postMessage(data: unknown): void;
}

export interface WorkerScope {
  readonly registration: {
    readonly scope: string;
    readonly installing: object | null;
    readonly waiting: object | null;
  };
  readonly clients: {
    claim(): Promise<void>;
    matchAll(which: { readonly includeUncontrolled: boolean; readonly type: string }): Promise<readonly Client[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', on: (event: Extendable) => void): void;
  addEventListener(type: 'fetch', on: (event: FetchAsked) => void): void;
  addEventListener(type: 'message', on: (event: MessageHeard) => void): void;
}
