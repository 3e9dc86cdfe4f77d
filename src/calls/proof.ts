/** What was shown after the last mend: the proof of a cure, read off the notes. */
import type { FloatName } from '../control/index.ts';
import type { ProofId } from '../faults/index.ts';
import { floatsOf, type PanelSpec } from '../unit/index.ts';
import type { Done } from './session.ts';

/** Readings that prove, by the action that makes them. */
const SHOWS: readonly { readonly proof: ProofId; readonly by: string; readonly shows: (done: Done) => boolean }[] = [
  { proof: 'pressure', by: 'tee-pressure', shows: (d) => d.outcome.notes.some((n) => n.remark?.tone === 'good') },
  { proof: 'watched', by: 'watch-panel', shows: hasReading('reading.lamp-off-quiet') },
  { proof: 'watched', by: 'guide-watch', shows: hasReading('reading.lamp-off-quiet') },
  { proof: 'air-alarm', by: 'make-air-alarm', shows: hasReading('reading.alarm-made') },
  { proof: 'dosing', by: 'advance-timer', shows: doseStarts },
  { proof: 'spray', by: 'look-at-field', shows: hasReading('reading.spray-full') },
  { proof: 'spray', by: 'zone-pressure', shows: hasReading('reading.zone-full') },
  { proof: 'clock', by: 'read-timer', shows: (d) => d.outcome.notes.some((n) => n.remark?.tone === 'good') },
  { proof: 'lamp', by: 'press-test', shows: (d) => d.outcome.notes.some((n) => n.remark?.tone === 'good') },
  { proof: 'stops', by: 'selector-off', shows: pumpStill },
  { proof: 'disinfects', by: 'watch-feed', shows: (d) => d.outcome.notes.some((n) => n.remark?.tone === 'good') },
  { proof: 'disinfects', by: 'look-at-ultraviolet', shows: hasReading('reading.ultraviolet-lit') },
];

/** Also where low floats were tied up for it. */
function doseStarts(done: Done): boolean {
  return done.outcome.notes.some(({ reading }) => {
    const inner = reading.values?.reading as { id?: string } | undefined;
    return [reading.id, inner?.id].includes('reading.dose-starts');
  });
}

export function isMend({ def, outcome }: Done): boolean {
  return def.group === 'mend' || outcome.mended.length > 0;
}

/** The proof that an action can make. */
export function proofBy(id: string): ProofId | undefined {
  if (id === 'lift-float:highWaterFloat') return 'water-alarm';
  return id.startsWith('lift-float:') ? 'floats' : SHOWS.find(({ by }) => by === id)?.proof;
}

function pumpStill(done: Done): boolean {
  return done.outcome.notes.some(
    (n) => (n.reading.values?.pump as { id?: string } | undefined)?.id === 'word.pump-still',
  );
}

function hasReading(id: string): (done: Done) => boolean {
  return (done) => done.outcome.notes.some((n) => n.reading.id === id);
}

/** Proofs shown since the last mend; nothing before a mend proves anything. */
export function proofsShown(done: readonly Done[], panel: PanelSpec): ReadonlySet<ProofId> {
  let last = -1;
  done.forEach((d, i) => {
    if (isMend(d)) last = i;
  });
  const after = last < 0 ? [] : done.slice(last);
  const shown = new Set<ProofId>();
  for (const { proof, by, shows } of SHOWS) if (after.some((d) => d.def.id === by && shows(d))) shown.add(proof);
  const lifted = (id: string) => after.some((d) => d.def.id === id && !hasReading('reading.wont-rise')(d));
  const lifts = floatsOf(panel).map((f) => `lift-float:${f}`);
  if (lifts.every(lifted)) shown.add('floats');
  const lifting = (float: FloatName, value: 'alarm' | 'pump', word: string) =>
    after.some(
      (d) =>
        d.def.id === `lift-float:${float}` &&
        d.outcome.notes.some((n) => (n.reading.values?.[value] as { id?: string } | undefined)?.id === word),
    );
  if (lifting('highWaterFloat', 'alarm', 'word.lamp-lights')) shown.add('water-alarm');
  if (lifting('startStopFloat', 'pump', 'word.pump-runs')) shown.add('dosing');
  return shown;
}
