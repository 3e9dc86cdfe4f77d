/** `course`: proves every call under a folder and writes them down by difficulty. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import {
  type CourseEntry,
  difficulty,
  loadCall,
  prepareCall,
  problemLine,
  proveCall,
  shippedLibrary,
  unitSetup,
} from '../calls/index.ts';
import { placedFault } from '../faults/index.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export function course(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { out: { type: 'string' }, json: { type: 'boolean', default: false } },
  });
  const [folder] = positionals;
  if (!folder)
    throw new UsageError('course needs a FOLDER of calls; try: course scenarios/calls --out scenarios/course.json');
  const files = readdirSync(folder)
    .filter((f) => f.endsWith('.json'))
    .sort();
  const entries = files.map((file) => entryOf(join(folder, file)));
  const whole = entries.flatMap((entry) => entry ?? []).sort((a, b) => difficulty(a) - difficulty(b));
  if (values.out) writeFileSync(values.out, `${JSON.stringify(whole, null, 2)}\n`);
  if (values.json) printJson(whole);
  else for (const e of whole) print(`${e.call}: ${e.bits} bits, ${e.minutes} min, ${e.families.join(' and ')}`);
  return whole.length === files.length ? GOOD : BAD;
}

function entryOf(file: string): CourseEntry | undefined {
  const loaded = loadCall(readFileSync(file, 'utf8'), shippedLibrary());
  if (!loaded.ok) {
    for (const problem of loaded.problems) process.stderr.write(`${problemLine(file, problem)}\n`);
    return undefined;
  }
  const prepared = prepareCall(loaded.value);
  const { problems, difficulty: hard } = proveCall(prepared);
  for (const problem of problems) process.stderr.write(`${problemLine(basename(file), problem)}\n`);
  if (problems.length > 0 || !hard) return undefined;
  const families = unitSetup(prepared)
    .faults.map((f) => placedFault(f.id).family)
    .filter((f) => f !== 'use');
  return { call: loaded.value.id, bits: hard.bits, minutes: hard.expectedMinutes, families: [...new Set(families)] };
}
