/** `prove`: is a call file whole and correct, and does playing it bear out what a call must do? */
import { parseArgs } from 'node:util';
import {
  allShipped,
  type CallProof,
  loadCall,
  type Problem,
  prepareCall,
  problemLine,
  proveCall,
  shippedLibrary,
} from '../calls/index.ts';
import { findCall, readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export function prove(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  if (positionals.length === 0) throw new UsageError('prove needs a CALL; name a file or the id of a shipped call');
  let bad = false;
  for (const file of positionals) {
    const { problems, proof } = proveFile(file);
    bad ||= problems.length > 0;
    if (values.json) printJson({ file, ok: problems.length === 0, problems, ...(proof ? { proof } : {}) });
    else {
      for (const problem of problems) print(problemLine(file, problem));
      if (problems.length === 0 && proof) print(`${file}: holds; ${summary(proof)}`);
    }
  }
  return bad ? BAD : GOOD;
}

function proveFile(name: string): {
  readonly problems: readonly Problem[];
  readonly proof?: Omit<CallProof, 'problems'>;
} {
  const checked = allShipped().some((c) => c.id === name) ? findCall(name) : fromFile(name);
  if (!checked.ok) return { problems: checked.problems };
  const { problems, ...proof } = proveCall(prepareCall(checked.value));
  return { problems, proof };
}

function fromFile(name: string) {
  const text = readText(name);
  return text.ok ? loadCall(text.value, shippedLibrary()) : text;
}

function summary({ difficulty, solvedBy }: Omit<CallProof, 'problems'>): string {
  const { bits = 0, expectedMinutes = 0 } = difficulty ?? {};
  return `${bits} bits, ${expectedMinutes} min, solved by ${solvedBy.join(' and ')}, no shortcut passes`;
}
