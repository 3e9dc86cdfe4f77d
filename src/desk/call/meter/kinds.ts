/** What a meter is set to, by the action that wants it. */
export type MeterKind = 'volts' | 'ohms' | 'amps';

const KINDS: Readonly<Partial<Record<string, MeterKind>>> = {
  'meter-volts': 'volts',
  'meter-ohms': 'ohms',
  'clamp-amps': 'amps',
};

export function meterKind(actionId: string): MeterKind | undefined {
  return KINDS[actionId];
}
