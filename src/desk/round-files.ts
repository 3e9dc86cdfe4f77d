/** The round's files, fetched when it is opened. They ship with the page, so they are taken as they are, like those of a call. */
import { type Lot, makeLot } from '../calls/round/lot.ts';
import type { RoundFile } from '../calls/round/schema.ts';
import type { WeatherSpec } from '../plant/index.ts';
import { fetched } from './fetched.ts';
import { fetchProperty, fileOf } from './shipped-files.ts';

const CLIMATES = import.meta.glob<WeatherSpec>('../../scenarios/weather/*.json', { import: 'default' });

export async function fetchLots(): Promise<readonly Lot[]> {
  const { default: file } = await fetched(import('../../scenarios/round.json'));
  const round = file as RoundFile;
  return Promise.all(
    round.lots.map(async (lot) => {
      const [property, climate] = await Promise.all([
        fetchProperty(lot.unit, lot.household),
        fileOf(CLIMATES, 'weather', lot.climate),
      ]);
      if (property === undefined || climate === undefined) throw new Error(`lot ${lot.lot}: a file is missing`);
      return makeLot(round, lot, { ...property, climate });
    }),
  );
}
