/** Ids of what a trainer does to a call. */
export const TEACH = {
  freeze: 'teach-freeze',
  go: 'teach-go',
  speed: 'teach-speed',
  moment: 'teach-moment',
  back: 'teach-back',
  faultIn: 'teach-fault-in',
  faultOut: 'teach-fault-out',
} as const;

const IDS: ReadonlySet<string> = new Set(Object.values(TEACH));

export function isTeaching(id: string): boolean {
  return IDS.has(id);
}
