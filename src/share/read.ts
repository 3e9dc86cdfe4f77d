/** Reads what somebody handed on: one call or a set of them, checked as a whole. */
import { type Checked, checkCall, isNewer, type Library } from '../calls/check.ts';
import { type Problem, parseJson, problemsOf } from '../calls/problems.ts';
import type { CallFile } from '../calls/schema.ts';
import { type Message, say } from '../service/index.ts';
import { coverSchema, type SharedFile } from './set.ts';

/** Why a file or a link is not taken, and where that can be told, what to mend in it. */
export interface Refusal {
  readonly why: Message;
  readonly problems: readonly Problem[];
}

export type Received = { readonly ok: true; readonly file: SharedFile } | ({ readonly ok: false } & Refusal);

export function refused(why: string, problems: readonly Problem[] = []): Received {
  return { ok: false, why: say(`share.${why}`), problems };
}

export function readShared(text: string, library: Library): Received {
  const parsed = parseJson(text);
  if ('problem' in parsed) return refused('not-a-call', [parsed.problem]);
  const { value } = parsed;
  if (isNewer(value, 'version') || isNewer(value, 'set')) return refused('newer');
  if (isSet(value)) return setIn(value, library);
  const call = checkCall(value, library);
  return call.ok ? { ok: true, file: call.value } : refused('not-a-call', call.problems);
}

function setIn(value: unknown, library: Library): Received {
  const cover = coverSchema.safeParse(value, { reportInput: true });
  if (!cover.success) return refused('not-a-set', problemsOf(cover.error).map(pointed('')));
  if (cover.data.calls.some((call) => isNewer(call, 'version'))) return refused('newer');
  const checked = cover.data.calls.map((call) => checkCall(call, library));
  const problems = [...checked.flatMap(problemsOfCall), ...twins(checked)];
  if (problems.length > 0) return refused('not-a-set', problems);
  const calls = checked.flatMap((one) => (one.ok ? [one.value] : []));
  return { ok: true, file: { ...cover.data, calls } };
}

function problemsOfCall(checked: Checked<CallFile>, at: number): readonly Problem[] {
  return checked.ok ? [] : checked.problems.map(pointed(`/calls/${at}`));
}

/** Calls of one set that could not be told apart by their ids. */
function twins(checked: readonly Checked<CallFile>[]): readonly Problem[] {
  const ids = checked.map((one) => (one.ok ? one.value.id : undefined));
  return ids.flatMap((id, at): Problem[] => {
    const first = ids.indexOf(id);
    if (id === undefined || first === at) return [];
    return [
      {
        path: `/calls/${at}/id`,
        message: `the id "${id}" is that of /calls/${first} too`,
        mend: 'give each call an id of its own, or take one of them out',
      },
    ];
  });
}

/** In a set a path is a JSON Pointer (RFC 6901) from the top: `faults[0].onset` of the fourth call is `/calls/3/faults/0/onset`. */
function pointed(before: string): (problem: Problem) => Problem {
  return (problem) => {
    const keys = problem.path.replaceAll(/\[(\d+)\]/g, '.$1').split('.');
    return { ...problem, path: problem.path === '' ? before : [before, ...keys].join('/') };
  };
}

function isSet(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'set' in value;
}
