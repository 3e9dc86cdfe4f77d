/** The steps of making a call, and which of them a problem belongs to. */

export const STEPS = ['property', 'faults', 'weather', 'said', 'limits', 'proof'] as const;
export type Step = (typeof STEPS)[number];

/** First keys of the paths of each step; what none of them has is the file's own and stands with the proof. */
const PATHS: Readonly<Record<Step, readonly string[]>> = {
  property: ['unit', 'changed', 'household', 'start', 'history_days', 'seed', 'lot', 'title', 'id', 'summary', 'kind'],
  faults: ['faults'],
  weather: ['weather', 'temperature_C', 'storms'],
  said: ['report', 'story'],
  limits: ['limits', 'pass', 'expected', 'withheld'],
  proof: ['solution'],
};

export function stepOf(path: string): Step {
  const [first = ''] = path.split(/[.[]/);
  return STEPS.find((step) => PATHS[step].includes(first)) ?? 'proof';
}
