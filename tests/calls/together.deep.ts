/** Over all shipped calls, solved as their files solve them: what is really wrong is among what the readings leave. */
import { expect, it } from 'vitest';
import { trueFaults } from '../../src/calls/flags.ts';
import { playSolution, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { siftedAfter } from './sifted.ts';

it.each(shippedCalls().map((call) => [call.id, call] as const))('%s', (_id, call) => {
  const session = playSolution(prepareCall(call));
  const { explanations } = siftedAfter(session);
  const truth = [...trueFaults(session)].sort();
  expect(explanations.map((keys) => [...keys].sort().join())).toContain(truth.join());
});
