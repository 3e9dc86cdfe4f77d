/**
 * Calls that did not ship: read from a link or a file, and again from what the browser kept, checked each time. A file of
 * its own, for only they need all of the validator.
 */
// Has the validator keep to the page's policy, and shares it with whoever takes up a kept call.
import './resume.ts';
import { type Library, loadCall, preparedIn } from '../calls/check.ts';
import type { Problem } from '../calls/problems.ts';
import type { Prepared } from '../calls/setup.ts';
import { say } from '../service/index.ts';
import { openLink } from '../share/link.ts';
import { type Refusal, readShared } from '../share/read.ts';
import { callsIn } from '../share/set.ts';
import { fileText, sameCall } from '../share/text.ts';
import { cardOf } from './card-of.ts';
import { EngineError } from './engine.ts';
import { fetched } from './fetched.ts';
import type { BroughtCalls, Reply } from './protocol.ts';
import { isRoundCall } from './round-call.ts';
import { fetchCallFile, HOUSEHOLDS, UNITS } from './shipped-files.ts';

/** A brought call from its kept file. Whoever kept it may have changed it. */
export async function broughtCall(text: string): Promise<Prepared> {
  const library = await fetchLibrary();
  const loaded = loadCall(text, library);
  if (!loaded.ok) throw new EngineError({ id: 'trouble.brought-broken' });
  return preparedIn(loaded.value, library);
}

/** Reads a link or the text of a file: either all of its calls can be taken, or none is. */
export async function bring(from: 'link' | 'file', text: string): Promise<Reply> {
  const library = await fetchLibrary();
  const received = from === 'link' ? await openLink(text, library) : readShared(text, library);
  if (!received.ok) return { kind: 'brought', brought: { why: received.why, problems: received.problems } };
  const { file } = received;
  const calls: BroughtCalls['calls'][number][] = [];
  const own: string[] = [];
  const problems: Problem[] = [];
  for (const [at, call] of callsIn(file).entries()) {
    const path = 'set' in file ? `/calls/${at}/id` : 'id';
    const shipped = await fetchCallFile(call.id);
    if (shipped !== undefined && sameCall(shipped, call)) own.push(call.id);
    else if (shipped !== undefined || isRoundCall(call.id)) problems.push(taken(path, call.id));
    else calls.push({ card: cardOf(preparedIn(call, library)), text: fileText(call) });
  }
  const brought: BroughtCalls | Refusal =
    problems.length > 0
      ? { why: say('share.id-taken'), problems }
      : { calls, own, ...('set' in file ? { set: file.title } : {}) };
  return { kind: 'brought', brought };
}

function taken(path: string, id: string): Problem {
  return {
    path,
    message: `"${id}" is the id of another call, which ships with Underlawn`,
    mend: `give this one an id of its own, such as ${id.slice(0, 50)}-own`,
  };
}

export async function fetchLibrary(): Promise<Library> {
  const [units, households] = await Promise.all([allOf(UNITS), allOf(HOUSEHOLDS)]);
  return { units, households };
}

/** Every file of a kind, by the name it has: its id. */
async function allOf<T>(files: Readonly<Record<string, () => Promise<T>>>): Promise<ReadonlyMap<string, T>> {
  const all = Object.entries(files).map(async ([path, open]) => [nameOf(path), await fetched(open())] as const);
  return new Map(await Promise.all(all));
}

function nameOf(path: string): string {
  return path.replace(/^.*\/|\.json$/g, '');
}
