import type { EffectId } from '../../sound/voices.ts';

/** What a hand makes heard, by how the ids of its actions begin. */
const SOUNDS: readonly (readonly [RegExp, EffectId])[] = [
  [/^(breaker|selector|reset-panel|lock-out|unlock)/, 'clack'],
  [/^(press|set-timer|advance-timer)/, 'click'],
  [/^(open|close)-/, 'scrape'],
  [/^(measure-level|draw-down|hose-in|lift-float)/, 'trickle'],
];

/** The sound of an action, where it makes one. */
export function handSound(actionId: string): EffectId | undefined {
  return SOUNDS.find(([ids]) => ids.test(actionId))?.[1];
}
