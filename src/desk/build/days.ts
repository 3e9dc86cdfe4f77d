import { calendarDay, weekday } from '../../unit/calendar.ts';

/** The day on which an instant (s since the first midnight) falls. */
export function dayAt(firstDay: number, at_s: number): { month: number; day: number; weekday: number } {
  const number = firstDay + Math.floor(at_s / 86_400);
  const { month, day } = calendarDay(number);
  return { month, day, weekday: weekday(number) };
}

/** Seconds since the first midnight as the file writes an instant, to the minute. */
export function instantAt(firstDay: number, at_s: number): string {
  const whole = Math.round(at_s / 60) * 60;
  const { year, month, day } = calendarDay(firstDay + Math.floor(whole / 86_400));
  const two = (n: number) => String(n).padStart(2, '0');
  const [hour, minute] = [Math.floor((whole % 86_400) / 3600), Math.floor((whole % 3600) / 60)];
  return `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}T${two(hour)}:${two(minute)}`;
}
