/** The round that ships, checked when first asked for. */
import ternlowYear from '../../../scenarios/round.json';
import { shippedClimates } from '../climates.ts';
import { problemLine } from '../problems.ts';
import { shippedLibrary } from '../shipped.ts';
import { checkRound } from './check.ts';
import { type Lot, makeLot } from './lot.ts';
import type { RoundFile } from './schema.ts';

let round: RoundFile | undefined;

export function shippedRound(): RoundFile {
  if (round) return round;
  const checked = checkRound(ternlowYear, shippedLibrary(), shippedClimates());
  if (!checked.ok) throw new Error(checked.problems.map((p) => problemLine('scenarios/round.json', p)).join('\n'));
  round = checked.value;
  return round;
}

/** The lots of a checked round. Throws when the library lacks what they name. */
export function lotsOf(file: RoundFile, seed = 0): readonly Lot[] {
  const { units, households } = shippedLibrary();
  const climates = shippedClimates();
  return file.lots.map((lot) => {
    const spec = units.get(lot.unit);
    const household = households.get(lot.household);
    const climate = climates.get(lot.climate);
    if (!spec || !household || !climate) throw new Error(`lot ${lot.lot}: unit, household or climate missing`);
    return makeLot(file, lot, { spec, household, climate }, seed);
  });
}
