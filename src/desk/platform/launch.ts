/** A page that a course platform launched: opens the session there, takes up what was left, and goes straight to the call. */

import { signal } from '@preact/signals';
import { type LaunchedBy, readLaunched } from '../../records/package/entry.ts';
import type { Desk } from '../desk.ts';
import { writeRoute } from '../routes.ts';
import type { Host } from './host.ts';
import { type Note, noteView } from './note.tsx';
import { openScorm } from './scorm.ts';
import { takeUp } from './take-up.ts';
import { watch } from './watch.ts';

export interface CourseLaunch {
  readonly mode: LaunchedBy['mode'];
  /** To be done before the first screen. */
  readonly begin: (desk: Desk) => Promise<void>;
}

/** How the page was launched, from the line in its head; the address then leads to the call. */
export function courseOf(line: string): CourseLaunch | undefined {
  const launched = readLaunched(line);
  if (launched === undefined) return undefined;
  history.replaceState(null, '', writeRoute({ screen: 'call', callId: launched.call }));
  return { mode: launched.mode, begin: (desk) => begin(desk, launched) };
}

async function begin(desk: Desk, launched: LaunchedBy): Promise<void> {
  const note = signal<Note | null>(null);
  const started_ms = desk.wallClock();
  desk.courseNote.value = noteView(note);
  const own = launched.file === undefined ? undefined : await bring(desk, launched.file);
  const host = await open(desk, launched);
  if (host === undefined) {
    note.value = { tone: 'off', message: { id: 'course.silent' } };
    return;
  }
  if (Object.keys(host.wishes).length > 0) await desk.change(host.wishes);
  if (host.settled) note.value = { tone: 'plain', message: { id: 'course.review' } };
  else {
    const why = await takeUp(desk, launched.call, host.left, own);
    if (why !== undefined) note.value = { tone: 'off', message: why };
  }
  watch({ desk, host, launched, note, started_ms });
}

async function open(desk: Desk, { as, call, mode, uuid }: LaunchedBy): Promise<Host | undefined> {
  if (as !== 'cmi5') return openScorm(as, call, mode);
  const { openCmi5 } = await import('./cmi5.ts');
  return openCmi5(location.search, uuid, mode, desk.wallClock);
}

/** A call that does not ship lies in the package: taken in as one from a file is. Its text as it is kept. */
async function bring(desk: Desk, file: string): Promise<string | undefined> {
  try {
    const text = await (await fetch(file)).text();
    const { brought } = await desk.engine.ask({ kind: 'bring', from: 'file', text });
    const call = 'calls' in brought ? brought.calls[0] : undefined;
    if (call === undefined) return undefined;
    await desk.store.putBrought({ version: 1, ...call, from: 'file', broughtAt: desk.wallClock() });
    return call.text;
  } catch (error) {
    // The call's screen then says that there is no such call.
    console.error(error);
    return undefined;
  }
}
