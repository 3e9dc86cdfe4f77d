import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  allShipped,
  lotsOf,
  prepareCall,
  shippedCalls,
  shippedLibrary,
  shippedRound,
  shippedVisits,
} from '../../../src/calls/index.ts';
import { fetchCall } from '../../../src/desk/call-files.ts';
import { listIn } from '../../../src/desk/list.ts';
import { fetchLots } from '../../../src/desk/round-files.ts';

/** The page takes its data files as they are. They have to be those that stand the check of their schemas. */
function filesIn(folder: string): readonly string[] {
  const files = readdirSync(`scenarios/${folder}`);
  return files.map((name) => name.replace(/\.json$/, '')).sort();
}

it.each(allShipped().map((call) => [call.id, call] as const))('%s is fetched as it was checked', async (id, call) => {
  expect(await fetchCall(id)).toEqual(prepareCall(call));
});

it.each([
  ['calls', shippedCalls().map(({ id }) => id)],
  ['visits', shippedVisits().map(({ id }) => id)],
  ['units', [...shippedLibrary().units.keys()]],
  ['households', [...shippedLibrary().households.keys()]],
] as const)('no file of %s lies there that was not checked', (folder, checked) => {
  expect(filesIn(folder)).toEqual([...checked].sort());
});

it('a call that does not ship is not there, whatever its name looks like', async () => {
  expect(await fetchCall('no-such-call')).toBeUndefined();
  expect(await fetchCall('../units/u1')).toBeUndefined();
});

it('the list has a card for every call, in the order in which they are best taken, and then for every routine visit, in either language', async () => {
  for (const language of ['en', 'es'] as const) {
    const cards = await listIn(language);
    expect(cards.map(({ id }) => id)).toEqual(allShipped().map(({ id }) => id));
    expect(cards.map(({ title }) => title[language])).toEqual(allShipped().map(({ title }) => title[language]));
  }
});

it('the lots of the round are fetched as they were checked', async () => {
  const plain = (lots: readonly unknown[]) => JSON.parse(JSON.stringify(lots));
  expect(plain(await fetchLots())).toEqual(plain(lotsOf(shippedRound())));
});
