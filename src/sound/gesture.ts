/**
 * Events that let a page make sound (HTML Standard, activation triggering input events). Not every key does, so the
 * browser is asked too where it can tell.
 */
const EVENTS = ['pointerup', 'mousedown', 'keydown', 'touchend'] as const;

/** Calls `then` whenever the person does something on the page. Gives back what ends that. */
export function onGesture(then: () => void): () => void {
  for (const event of EVENTS) addEventListener(event, then, true);
  return () => {
    for (const event of EVENTS) removeEventListener(event, then, true);
  };
}

/** Calls `then` once, as soon as the person has done something on the page: browsers keep a page silent until then. */
export function afterGesture(then: () => void): () => void {
  const allowed = () => (navigator as Partial<Navigator>).userActivation?.hasBeenActive;
  if (allowed()) {
    then();
    return () => {};
  }
  const stop = onGesture(() => {
    if (allowed() === false) return;
    stop();
    then();
  });
  return stop;
}
