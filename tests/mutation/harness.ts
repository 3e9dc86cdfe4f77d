/**
 * Takes the place of Vitest while mutants are tried: a thousand processes, each over at its first failed test, must start
 * at once. The assertions are Vitest's own; the tests are plain functions, called in the order in which they are written.
 */
import { format } from 'node:util';
import { chai, type ExpectStatic, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from '@vitest/expect';

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
export const expect = chai.expect as unknown as ExpectStatic;

type Body = (...given: never[]) => unknown;
interface Test {
  readonly name: string;
  readonly body: () => unknown;
}

const tests: Test[] = [];
const around: string[] = [];

export function describe(name: string, body: () => void): void {
  around.push(name);
  body();
  around.pop();
}

export function it(name: string, body: () => unknown): void {
  tests.push({ name: [...around, name].join(' > '), body });
}

/** Once for each row; a row that is a list gives its entries one by one, to the name and to the body. */
function each(once: (name: string, body: () => void) => void) {
  return (rows: readonly unknown[]) =>
    (name: string, body: Body): void => {
      for (const row of rows) {
        const given = Array.isArray(row) ? row : [row];
        once(format(name, ...given.filter((g) => typeof g === 'string')), () => body(...(given as never[])));
      }
    };
}
describe.each = each(describe);
it.each = each(it);

/** Runs the tests until one fails. Returns what to exit with. */
export function run(): number {
  for (const { name, body } of tests) {
    try {
      // A promise nobody waits for would pass whatever comes of it.
      if (body() instanceof Promise) throw new Error('a test that waits cannot be run here');
    } catch (error) {
      console.error(`${name}\n${error}`);
      return 1;
    }
  }
  console.log(`${tests.length} tests passed`);
  return tests.length > 0 ? 0 : 1;
}
