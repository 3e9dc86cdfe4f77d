import { type ReadonlySignal, signal } from '@preact/signals';
import type { Asked, Standing, Told, WhyNot } from './line.ts';

/** How the copy of the page stands that the browser keeps. */
export type Copy =
  | { readonly kind: 'coming'; readonly done: number; readonly of: number }
  | { readonly kind: 'kept'; readonly bytes: number; readonly noRoomForNewer: boolean }
  | { readonly kind: 'not'; readonly why: WhyNot };

/** A version that waits to be taken up. */
export interface Newer {
  /** What was left half way and it could not go on with. */
  readonly ends: readonly string[];
}

export interface Watching {
  /** Null while there is nothing to say yet. */
  readonly copy: ReadonlySignal<Copy | null>;
  readonly newer: ReadonlySignal<Newer | null>;
  /** Begins to keep the page, or tries again. */
  begin(): Promise<void>;
  /** Looks again at how things stand. */
  look(): Promise<void>;
  /** Has the newer version shown from the next load on. */
  takeUp(): Promise<void>;
}

const WORKER = './sw.js';
/** What is over sooner is not worth a word. */
const UNSAID_ms = 500;
/** A page that stays open for days asks for a newer version now and then; a load of the page asks by itself. */
const ASK_AGAIN_ms = 3_600_000;

/** Registers the service worker of this page, and follows what it does. */
export function watchCopy(container: ServiceWorkerContainer): Watching {
  const copy = signal<Copy | null>(null);
  const newer = signal<Newer | null>(null);
  let registration: ServiceWorkerRegistration | undefined;
  let waits: ServiceWorker | undefined;
  let latest: Copy | undefined;
  let began_ms = performance.now();
  let asked_ms = began_ms;

  const not = (why: WhyNot) => {
    const { value } = copy;
    if (value?.kind !== 'kept') copy.value = { kind: 'not', why };
    else if (why === 'full') copy.value = { ...value, noRoomForNewer: true };
  };

  /** Also where nothing more is heard: what stands still is to be seen. */
  const coming = (far: Copy) => {
    latest = far;
    if (performance.now() - began_ms > UNSAID_ms) copy.value = far;
  };

  container.addEventListener('message', ({ data }: MessageEvent<Told>) => {
    if (data.kind === 'broke-off') not(data.why);
    else if (copy.value?.kind !== 'kept') {
      const { done, of } = data;
      if (done === of) void look();
      // The last words of a try that has broken off.
      else if (copy.value?.kind !== 'not') coming({ kind: 'coming', done, of });
    }
  });
  container.startMessages();

  function follow(worker: ServiceWorker | null): void {
    worker?.addEventListener('statechange', () => {
      if (worker.state !== 'redundant') void look();
      else if (copy.value?.kind !== 'not' && registration?.active === null) not('network');
    });
  }

  async function look(): Promise<void> {
    if (registration === undefined) return;
    const { active, waiting } = registration;
    if (active !== null) {
      const standing = await ask<Standing>(active, { kind: 'how' });
      if (standing.whole) copy.value = { kind: 'kept', bytes: standing.bytes, noRoomForNewer: false };
      waits = standing.waits ? active : undefined;
      newer.value = standing.waits ? standing : null;
    }
    // One that waits to be started is newer than any that waits to be shown.
    if (active !== null && waiting !== null) {
      const standing = await ask<Standing>(waiting, { kind: 'how' });
      waits = waiting;
      newer.value = standing;
    }
  }

  async function begin(): Promise<void> {
    began_ms = performance.now();
    copy.value = null;
    latest = undefined;
    setTimeout(() => {
      if (copy.value === null && latest !== undefined) copy.value = latest;
    }, UNSAID_ms);
    try {
      const address = new URL(WORKER, document.baseURI);
      const found = await container.register(address, { updateViaCache: 'none' });
      if (registration === undefined) {
        found.addEventListener('updatefound', () => follow(found.installing));
        follow(found.installing);
        follow(found.waiting);
      }
      registration = found;
      await look();
    } catch (error) {
      not((error as Error).name === 'SecurityError' ? 'denied' : 'network');
    }
  }

  addEventListener('online', () => {
    if (copy.value?.kind === 'not' && copy.value.why === 'network') void begin();
  });
  document.addEventListener('visibilitychange', () => {
    const now_ms = performance.now();
    if (document.visibilityState !== 'visible' || now_ms - asked_ms < ASK_AGAIN_ms) return;
    asked_ms = now_ms;
    registration?.update().catch(() => {});
  });

  return {
    copy,
    newer,
    begin,
    look,
    async takeUp() {
      if (waits !== undefined) await ask<true>(waits, { kind: 'take-up' });
    },
  };
}

function ask<Answer>(worker: ServiceWorker, asked: Asked): Promise<Answer> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }: MessageEvent<Answer>) => {
      resolve(data);
      port1.close();
    };
    worker.postMessage(asked, [port2]);
  });
}
