import { calendarDay, parseInstant, weekday } from '../../unit/calendar.ts';
import { formatDate } from '../../words/calendar.ts';
import { formatClock } from '../../words/measure.ts';
import type { Words } from '../../words/words.ts';

const DAY_s = 86_400;

/** The day on which an instant (s since the first midnight) falls. */
export function dayAt(firstDay: number, at_s: number): { month: number; day: number; weekday: number } {
  const number = firstDay + Math.floor(at_s / DAY_s);
  const { month, day } = calendarDay(number);
  return { month, day, weekday: weekday(number) };
}

/** An instant as it is read: its day and its clock. */
export function momentWords(words: Words, firstDay: number, at_s: number): string {
  return `${formatDate(words, dayAt(firstDay, at_s))} ${formatClock(at_s)}`;
}

/** An instant of the file in seconds since the first midnight; undefined where it is none. */
export function secondAt(firstDay: number, instant: string): number | undefined {
  const at = parseInstant(instant);
  return at && (at.day - firstDay) * DAY_s + at.secondOfDay;
}

/** The same hour a day before an instant of the file. */
export function dayBefore(instant: string): string {
  const at = parseInstant(instant);
  return at ? instantAt(at.day - 1, at.secondOfDay) : instant;
}

/** Seconds since the first midnight as the file writes an instant, to the minute. */
export function instantAt(firstDay: number, at_s: number): string {
  const whole = Math.round(at_s / 60) * 60;
  const { year, month, day } = calendarDay(firstDay + Math.floor(whole / DAY_s));
  const two = (n: number) => String(n).padStart(2, '0');
  const [hour, minute] = [Math.floor((whole % DAY_s) / 3600), Math.floor((whole % 3600) / 60)];
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}
