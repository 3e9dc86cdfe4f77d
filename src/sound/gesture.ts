/** Events that let a page make sound; not every key does, so the browser is asked too where it can tell. */
const EVENTS = ['pointerup', 'mousedown', 'keydown'] as const;

/** Calls `then` once, as soon as the person has done something on the page: browsers keep a page silent until then. */
export function afterGesture(then: () => void): () => void {
  const allowed = () => (navigator as Partial<Navigator>).userActivation?.hasBeenActive;
  if (allowed()) {
    then();
    return () => {};
  }
  const stop = () => {
    for (const event of EVENTS) removeEventListener(event, onEvent, true);
  };
  const onEvent = () => {
    if (allowed() === false) return;
    stop();
    then();
  };
  for (const event of EVENTS) addEventListener(event, onEvent, true);
  return stop;
}
