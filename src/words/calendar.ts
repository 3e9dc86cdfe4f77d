import { formatClock } from './measure.ts';
import type { Words } from './words.ts';

/** A moment as read off a calendar; month 1 to 12, weekday 0 = Monday. */
export interface Moment {
  readonly month: number;
  readonly day: number;
  readonly weekday: number;
  readonly secondOfDay: number;
}

/** "Tue 14 May": the date in the language's own order. */
export function formatDate(words: Words, moment: Omit<Moment, 'secondOfDay'>): string {
  const name = (id: string) => words.texts[id] ?? '';
  return name('date.short')
    .replace('{weekday}', name(`weekday.${moment.weekday}`))
    .replace('{day}', String(moment.day))
    .replace('{month}', name(`month.${moment.month}`));
}

/** "Tue 14 May · 16:42". */
export function formatMoment(words: Words, moment: Moment): string {
  return `${formatDate(words, moment)} \u00b7 ${formatClock(moment.secondOfDay)}`;
}
