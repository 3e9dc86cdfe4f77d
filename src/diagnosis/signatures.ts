/**
 * What each fault shows, by simulation: a property with it, looked at by every check, beside the same property without it.
 * Nothing here is typed in; a fault that no check tells is a fault of the catalogue or of the checks.
 */
import type { PlacedFault } from '../faults/index.ts';
import { newPerson } from '../service/index.ts';
import type { UnitFault, UnitSetup } from '../unit/index.ts';
import { formOf } from './hypotheses.ts';
import { type Probe, probesOf } from './probes.ts';
import { alikeInItself, NO_READING, type Reading } from './reading.ts';
import { type Property, Twin } from './twin.ts';

const DAY_s = 86_400;
/** The property lives sound for three days; a fault comes on the fourth morning and is looked at on the next (convention). */
const ONSET_s = 3 * DAY_s + 8 * 3600;
const LOOKED_AT_s = 26 * 3600;
/** One that grows is looked at when it has grown, one that shows late when it shows. */
const GROWN = 1.05;

export interface CheckShown {
  readonly check: string;
  readonly healthy: Reading;
  readonly faulty: Reading;
  /** Whether the two would be told apart. */
  readonly tells: boolean;
}

export interface Signature {
  readonly fault: string;
  readonly severity: number;
  readonly checks: readonly CheckShown[];
  /** Lamps that came on by it, and hours from the onset to the first; none where it stays silent. */
  readonly alarms: readonly string[];
  readonly alarm_h: number | undefined;
}

/** A unit with its household, weather and seed. */
export type Surroundings = Omit<UnitSetup, 'faults'>;

/** Signatures of faults at some severities, in their order. */
export function signaturesOf(
  around: Surroundings,
  faults: readonly PlacedFault[],
  severitiesFor: (fault: PlacedFault) => readonly number[],
): Signature[] {
  const probes = probesOf(around.spec);
  const sound = new Map<number, readonly Reading[]>();
  return faults.flatMap((fault) => {
    const property = lookedAt(around, fault);
    const healthy = sound.get(property.report_s) ?? shownBy(visitor(property, []), probes);
    sound.set(property.report_s, healthy);
    return severitiesFor(fault).map((severity) => signatureOf(property, fault, severity, probes, healthy));
  });
}

/** The property as a visit finds it that long after the onset. */
function lookedAt(around: Surroundings, { ramp_h = 0, shows_d = 0 }: PlacedFault): Property {
  const looked_s = ONSET_s + Math.max(LOOKED_AT_s, GROWN * 3600 * ramp_h, DAY_s * shows_d);
  return {
    setup: around,
    report_s: Math.round(looked_s),
    silenced: false,
    answers: { history: NOTHING_SAID, use: NOTHING_SAID },
  };
}

function signatureOf(
  property: Property,
  fault: PlacedFault,
  severity: number,
  probes: readonly Probe[],
  healthy: readonly Reading[],
): Signature {
  const twin = visitor(property, [formOf(fault, ONSET_s, severity)]);
  const lit = twin.unit.log.filter((e) => e.t >= ONSET_s && LAMPS_ON.includes(e.what));
  const faulty = shownBy(twin, probes);
  const first = lit[0];
  return {
    fault: fault.key,
    severity,
    alarms: [...new Set(lit.map((e) => e.what.replace('.on', '')))],
    alarm_h: first && (first.t - ONSET_s) / 3600,
    checks: probes.map((probe, i) => {
      const [a, b] = [healthy[i] ?? NO_READING, faulty[i] ?? NO_READING];
      return { check: probe.id, healthy: a, faulty: b, tells: !alikeInItself(a, b) };
    }),
  };
}

const NOTHING_SAID = { en: '', es: '' };
const LAMPS_ON: readonly string[] = ['lamp.on', 'airLamp.on', 'waterLamp.on'];

/** A twin with the person on the property, the site made safe. */
function visitor(property: Property, faults: readonly UnitFault[]): Twin {
  const twin = new Twin(property, faults);
  Object.assign(twin.person, { ...newPerson(), onSite: true, seesLamp: true, madeSafe: true, place: 'house' });
  return twin;
}

/** What every check shows, by phone those of the phone. */
function shownBy(twin: Twin, probes: readonly Probe[]): readonly Reading[] {
  return probes.map((probe) => {
    twin.person.onSite = probe.acts.every((def) => def.place !== 'phone');
    return twin.predict(probe);
  });
}

/** Pairs of faults that no check tells apart. */
export function alikePairs(signatures: readonly Signature[]): readonly (readonly [string, string])[] {
  return signatures.flatMap((a, i) =>
    signatures
      .slice(i + 1)
      .filter((b) => a.checks.every((check, j) => alikeInItself(check.faulty, b.checks[j]?.faulty ?? NO_READING)))
      .map((b) => [a.fault, b.fault] as const),
  );
}
