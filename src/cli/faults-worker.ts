/** One thread's share of the signatures: which faults of which unit, with which household. */
import { parentPort, workerData } from 'node:worker_threads';
import { shippedLibrary } from '../calls/index.ts';
import { type Signature, signaturesOf } from '../diagnosis/index.ts';
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
/** Small, middling and full; a fault's usual severity comes first. */
const SEVERITIES = [0.4, 0.7, 1] as const;

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
  return faults.flatMap((key) => {
    const fault = placedFault(key);
    const graded = ['plant', 'floats', 'tethers', 'airSwitch_kPa', 'clock_h'].some((part) => part in fault.effect);
    const others = graded ? SEVERITIES.filter((s) => s !== fault.severity) : [];
    return signaturesOf(around, fault, [fault.severity, ...others]);
  });
}

parentPort?.postMessage(answer(workerData as SignatureJob));
