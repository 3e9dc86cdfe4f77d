/** `solve`: the scripted expert takes calls, and what it did is written into their files as the solution. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import {
  judged,
  loadCall,
  play,
  playSolution,
  prepareCall,
  problemLine,
  shippedLibrary,
  stepsDone,
} from '../calls/index.ts';
import { fileText } from '../share/index.ts';
import { readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export function solve(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  if (positionals.length === 0) throw new UsageError('solve needs a FILE; name the JSON file of a call');
  const solved = positionals.map((file) => solveFile(file, values.json));
  return solved.every((it) => it) ? GOOD : BAD;
}

function solveFile(file: string, json: boolean): boolean {
  const text = readText(file);
  const loaded = text.ok ? loadCall(text.value, shippedLibrary()) : text;
  if (!loaded.ok) {
    for (const problem of loaded.problems) process.stderr.write(`${problemLine(file, problem)}\n`);
    return false;
  }
  const solution = stepsDone(play(prepareCall(loaded.value), 'expert'));
  const call = { ...loaded.value, solution };
  const { passed, spent } = judged(playSolution(prepareCall(call)));
  writeFileSync(file, fileText(call));
  if (json) printJson({ file, passed, steps: solution.length, minutes: spent.minutes, cost: spent.money_usd });
  else print(`${file}: ${passed ? 'solved' : 'not solved'} in ${solution.length} steps, ${spent.minutes} min`);
  return passed;
}
