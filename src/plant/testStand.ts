/**
 * The test stand's programme after start-up: sixteen weeks at design load, four stresses with a week of design load after each, and
 * design load to the end of the 26th week. Source: NSF/ANSI 40 section 8 as test reports tell it; the numbers of the
 * stresses from memory of its text. Wash loads are part of the day's water.
 */
import { LOADING_PERIODS, type LoadingPeriod } from './standardLoading.ts';

export const STRESSES = ['wash-day', 'working-parent', 'power-failure', 'vacation'] as const;
export type Stress = (typeof STRESSES)[number];

export interface TestDay {
  readonly periods: readonly LoadingPeriod[];
  /** Hours at which the power fails and returns. */
  readonly fails_h?: number;
  readonly returns_h?: number;
  /** Whether this day's sample counts: not during a stress, nor for a day after it, two after the power failure. */
  readonly sampled: boolean;
}

const DESIGN: TestDay = { periods: LOADING_PERIODS, sampled: true };
const QUIET: TestDay = { periods: [], sampled: false };
const UNSAMPLED: TestDay = { ...DESIGN, sampled: false };

const morning = (share: number): LoadingPeriod => ({ from_h: 6, to_h: 9, share });
const midday = (share: number): LoadingPeriod => ({ from_h: 11, to_h: 14, share });
const evening = (share: number): LoadingPeriod => ({ from_h: 17, to_h: 20, share });

const WEEK = 7;
/** A new unit is given up to three weeks to start; its samples do not count. */
const START_UP_d = 21;

function days(count: number, day: TestDay): TestDay[] {
  return Array.from({ length: count }, () => day);
}

/** The days of a stress and those after it whose samples do not count. */
export function stressDays(stress: Stress): readonly TestDay[] {
  switch (stress) {
    case 'wash-day':
      return days(6, UNSAMPLED);
    case 'working-parent':
      return [...days(5, { periods: [morning(0.4), evening(0.6)], sampled: false }), UNSAMPLED];
    case 'power-failure':
      return [
        { periods: [evening(0.4)], fails_h: 21, sampled: false },
        QUIET,
        { periods: [{ from_h: 21, to_h: 24, share: 0.6 }], returns_h: 21, sampled: false },
        ...days(2, UNSAMPLED),
      ];
    case 'vacation':
      return [
        { periods: [morning(0.35), midday(0.25)], sampled: false },
        ...days(8, QUIET),
        { periods: [evening(0.6)], sampled: false },
        UNSAMPLED,
      ];
  }
}

/** A programme by name: design load alone, one stress between weeks of it, or all 26 weeks. */
export function programme(load: 'design' | Stress | 'full-26-weeks'): readonly TestDay[] {
  const startUp = days(START_UP_d, UNSAMPLED);
  if (load === 'design') return [...startUp, ...days(16 * WEEK, DESIGN)];
  if (load !== 'full-26-weeks') {
    return [...startUp, ...days(4 * WEEK, DESIGN), ...stressDays(load), ...days(2 * WEEK, DESIGN)];
  }
  const stressed = STRESSES.flatMap((stress) => [...stressDays(stress), ...days(WEEK, DESIGN)]);
  const before = [...days(16 * WEEK, DESIGN), ...stressed];
  return [...startUp, ...before, ...days(26 * WEEK - before.length, DESIGN)];
}
