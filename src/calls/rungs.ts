/**
 * The ladder from a walkthrough to the bare call (worked examples faded backwards: Atkinson, Renkl & Merrill 2003, J. Educ.
 * Psych. 95:774): each rung leaves a longer end of the call to the trainee.
 */

/** Rungs on which a guide leads: through the whole call, until the cause is stated, until it is decided by phone. */
export const LED = ['led-whole', 'led-to-cause', 'led-by-phone'] as const;
export type Led = (typeof LED)[number];

/** All rungs, the lowest first. */
export const RUNGS = [...LED, 'coached', 'alone'] as const;
export type Rung = (typeof RUNGS)[number];

/** How far a guide leads on a rung; not at all on the upper two. */
export function ledOn(rung: Rung): Led | undefined {
  return LED.find((led) => led === rung);
}
