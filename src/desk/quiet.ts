const QUIET_ms = 2000;

/**
 * Waits until the page has fetched nothing more for a while, no call is being opened and no part of it is still to come:
 * what is only for later then takes nothing from the first call.
 */
export async function whenQuiet(busy: () => boolean): Promise<void> {
  for (let before = -1; ; ) {
    const fetched = performance.getEntriesByType('resource').length;
    if (fetched === before && !busy() && document.querySelector('.waiting, .picture-wait') === null) return;
    before = fetched;
    await new Promise((later) => setTimeout(later, QUIET_ms));
  }
}
