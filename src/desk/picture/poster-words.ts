import type { Scene } from '../../scene/types.ts';
import { formatClock } from '../../words/measure.ts';
import { KEYS, type PosterWords } from '../../yard/posterWords.ts';
import type { Desk } from '../desk.ts';

/** Title, date and legend in the language of the page. */
export function posterWords({ t }: Desk, { sky, clock_s }: Scene, title = t('picture.title')): PosterWords {
  const { year, month, day } = sky.date;
  return {
    title,
    when: t('picture.when', { day, month: { id: `month.${month}` }, year: String(year), clock: formatClock(clock_s) }),
    legend: Object.fromEntries(KEYS.map((key) => [key, t(`picture.key.${key}`)])) as PosterWords['legend'],
    simulated: t('picture.simulated'),
    drawing: t('picture.drawing'),
  };
}
