/** How the command line speaks: results on stdout, one plain line on stderr when it was called wrongly. */

/** Exit codes: good, the thing checked is bad, called wrongly. */
export const GOOD = 0;
export const BAD = 1;
export const WRONG_USE = 2;

/** Called wrongly: says what and how to mend it, without a stack trace. */
export class UsageError extends Error {}

export function print(line: string): void {
  process.stdout.write(`${line}\n`);
}

export function printJson(value: unknown): void {
  print(JSON.stringify(value));
}
