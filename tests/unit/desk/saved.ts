/** A call that was left a little way in, as the page keeps it. */
export const saved = {
  version: 1,
  callId: 'sunny-line',
  mode: 'practice',
  record: { actions: [] },
  now_ms: 5000,
  title: { en: 'Red light', es: 'Luz roja' },
} as const;
