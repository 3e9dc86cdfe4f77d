/** Local standard time without daylight saving, as whole days and seconds; no Date, no time zone. */

export interface CalendarDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Days since 1 March of year 0 (proleptic Gregorian), so that a leap day is the last of its year. */
export function dayNumber({ year, month, day }: CalendarDay): number {
  const y = month <= 2 ? year - 1 : year;
  const m = (month + 9) % 12;
  return (
    365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day - 1
  );
}

/** The inverse of `dayNumber`. */
export function calendarDay(number: number): CalendarDay {
  let year = Math.floor(
    (number - Math.floor(number / 1460) + Math.floor(number / 36524) - Math.floor(number / 146096)) / 365,
  );
  const start = (y: number) => 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  while (start(year) > number) year -= 1;
  while (start(year + 1) <= number) year += 1;
  const inYear = number - start(year);
  const m = Math.floor((5 * inYear + 2) / 153);
  const day = inYear - Math.floor((153 * m + 2) / 5) + 1;
  const month = m < 10 ? m + 3 : m - 9;
  return { year: month <= 2 ? year + 1 : year, month, day };
}

/** 0 = Monday. Day 0 of `dayNumber` (1 March of year 0) was a Wednesday. */
export function weekday(number: number): number {
  return (((number + 2) % 7) + 7) % 7;
}

/** Reads "2031-05-14T16:42" (a local instant); undefined when it is not one. */
export function parseInstant(text: string): { day: number; secondOfDay: number } | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/.exec(text);
  if (!parts) return undefined;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = parts.slice(1).map(Number);
  const number = dayNumber({ year, month, day });
  const back = calendarDay(number);
  const real = back.year === year && back.month === month && back.day === day && hour < 24 && minute < 60;
  return real ? { day: number, secondOfDay: hour * 3600 + minute * 60 } : undefined;
}
