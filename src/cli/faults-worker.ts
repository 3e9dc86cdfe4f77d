/** One thread's share of the signatures: which faults of which unit, with which household. */
import { parentPort, workerData } from 'node:worker_threads';
import { shippedLibrary } from '../calls/index.ts';
import { type Signature, severitiesOf, signaturesOf } from '../diagnosis/index.ts';
import { placedFault } from '../faults/index.ts';
import { householdSource, steadyWeather } from '../plant/index.ts';

export interface SignatureJob {
  readonly unit: string;
  readonly household: string;
  readonly faults: readonly string[];
}

/** Tanks at an ordinary temperature, one household's draws by one seed (convention). */
const TEMPERATURE_C = 18;
const SEED = 1;

function answer({ unit, household, faults }: SignatureJob): readonly Signature[] {
  const library = shippedLibrary();
  const spec = library.units.get(unit);
  const people = library.households.get(household);
  if (!spec || !people) throw new Error(`no unit ${unit} or household ${household}`);
  const around = {
    spec,
    source: householdSource(people, SEED),
    seed: SEED,
    weather: steadyWeather(TEMPERATURE_C),
  };
  return signaturesOf(around, faults.map(placedFault), severitiesOf);
}

parentPort?.postMessage(answer(workerData as SignatureJob));
