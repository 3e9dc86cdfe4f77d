import { signal } from '@preact/signals';
import type { Desk } from '../desk.ts';
import { viewsOf } from './views.tsx';
import { type Watching, watchCopy } from './watching.ts';

/** Where the browser has no service workers: in a private window of some, at an address without https. */
const NOT_HERE: Watching = {
  copy: signal({ kind: 'not', why: 'denied' }),
  newer: signal(null),
  begin: async () => {},
  look: async () => {},
  takeUp: async () => {},
};

/** Has the browser keep a copy of the page, all of it, and shows how that stands. */
export function keepOffline(desk: Desk): void {
  const container: ServiceWorkerContainer | undefined = navigator.serviceWorker;
  const watching = container === undefined ? NOT_HERE : watchCopy(container);
  desk.offline.value = viewsOf(watching);
  void watching.begin();
}
