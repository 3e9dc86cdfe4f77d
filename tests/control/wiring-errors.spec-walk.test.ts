/** Each deliberate wiring error is caught by a path of the specification: told which, and after which step. */
import { afterAll, expect, it } from 'vitest';
import { PROMISES } from './spec/promises.ts';
import { spoiled } from './spec/spoiled.ts';
import { SOUND } from './spec/vocabulary.ts';
import { type Failure, walk } from './spec/walk.ts';
import { WIRING_ERRORS } from './spec/wiring-errors.ts';

const caught: string[] = [];

it.each(WIRING_ERRORS.map((e) => [`${e.error} (${e.unit})`, e] as const))(
  '%s',
  (name, { unit, breaks, fault, spoil }) => {
    const promised = PROMISES.find((p) => p.name === breaks && p.unit === unit);
    if (!promised) throw new Error(`${unit} has no promise "${breaks}"`);
    const { failures, shortest } = walk(promised, fault ?? SOUND, spoiled(unit, spoil));
    expect(failures.length).toBeGreaterThan(0);
    const [first] = failures as [Failure, ...Failure[]];
    caught.push(
      `${name}\n  caught by "${breaks}" on ${failures.length} paths, the shortest: ${first.path.join(' > ')}\n  ${first.problems[0]}`,
    );
  },
);

afterAll(() => console.log(caught.join('\n')));
