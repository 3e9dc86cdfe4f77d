import type { SoundCue } from '../calls/view.ts';

export type CueId = SoundCue['id'];

/** Sounds a hand makes: played once, when it happens. */
export type EffectId = 'click' | 'clack' | 'scrape' | 'trickle';

/** How something sounds: loudness 0 to 1, pitch as playback rate. */
export type Voice = Pick<SoundCue, 'loudness' | 'pitch'>;

export type Step =
  | ({ readonly kind: 'start' | 'change'; readonly id: CueId } & Voice)
  | { readonly kind: 'stop'; readonly id: CueId }
  | { readonly kind: 'once'; readonly id: CueId | EffectId; readonly loudness: number };

/** Cues that are over at once; they sound when they appear and not again while they stay. */
const ONCE: readonly CueId[] = ['click'];

/** A difference nobody hears. */
const SAME = 0.01;

/** What is asked for, by id: the loudest cue of each, silent ones left out. */
export function voicesOf(cues: readonly SoundCue[]): ReadonlyMap<CueId, Voice> {
  const voices = new Map<CueId, Voice>();
  for (const { id, loudness, pitch } of cues) {
    if (loudness > Math.max(0, voices.get(id)?.loudness ?? 0)) voices.set(id, { loudness, pitch });
  }
  return voices;
}

/** The steps from what sounds now to what is asked for: stops first, then changes and starts in the order asked. */
export function stepsBetween(now: ReadonlyMap<CueId, Voice>, asked: ReadonlyMap<CueId, Voice>): readonly Step[] {
  const stops = [...now.keys()].filter((id) => !asked.has(id) && !ONCE.includes(id));
  const steps: Step[] = stops.map((id) => ({ kind: 'stop', id }));
  for (const [id, voice] of asked) {
    const before = now.get(id);
    if (before === undefined) {
      steps.push(ONCE.includes(id) ? { kind: 'once', id, loudness: voice.loudness } : { kind: 'start', id, ...voice });
    } else if (!ONCE.includes(id) && !alike(before, voice)) {
      steps.push({ kind: 'change', id, ...voice });
    }
  }
  return steps;
}

function alike(a: Voice, b: Voice): boolean {
  return Math.abs(a.loudness - b.loudness) < SAME && Math.abs(a.pitch - b.pitch) < SAME;
}
