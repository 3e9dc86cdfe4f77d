/** `prove`: is a call file whole and correct? */
import { parseArgs } from 'node:util';
import { loadCall, type Problem, problemLine, shippedCalls, shippedLibrary } from '../calls/index.ts';
import { readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export function prove(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  if (positionals.length === 0) throw new UsageError('prove needs a CALL; name a file or the id of a shipped call');
  let bad = false;
  for (const name of positionals) {
    const problems = problemsIn(name);
    bad ||= problems.length > 0;
    if (values.json) printJson({ file: name, ok: problems.length === 0, problems });
    else if (problems.length === 0) print(`${name}: whole and correct`);
    else for (const problem of problems) print(problemLine(name, problem));
  }
  return bad ? BAD : GOOD;
}

function problemsIn(name: string): readonly Problem[] {
  if (shippedCalls().some((c) => c.id === name)) return [];
  const text = readText(name);
  const checked = text.ok ? loadCall(text.value, shippedLibrary()) : text;
  return checked.ok ? [] : checked.problems;
}
