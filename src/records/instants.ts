/** Instants and lengths of time as the standards write them. */
import { calendarDay, dayNumber } from '../unit/calendar.ts';

const EPOCH = dayNumber({ year: 1970, month: 1, day: 1 });
const DAY_ms = 86_400_000;

const padded = (n: number, digits: number) => String(n).padStart(digits, '0');

/** An instant in UTC with milliseconds (RFC 3339), from ms since 1970: `2031-05-14T16:42:05.120Z`. */
export function utc(instant_ms: number): string {
  const whole = Math.floor(instant_ms);
  const days = Math.floor(whole / DAY_ms);
  const { year, month, day } = calendarDay(EPOCH + days);
  const ofDay = whole - days * DAY_ms;
  const [hour, minute] = [Math.floor(ofDay / 3_600_000), Math.floor(ofDay / 60_000) % 60];
  const [second, ms] = [Math.floor(ofDay / 1000) % 60, ofDay % 1000];
  const date = `${padded(year, 4)}-${padded(month, 2)}-${padded(day, 2)}`;
  return `${date}T${padded(hour, 2)}:${padded(minute, 2)}:${padded(second, 2)}.${padded(ms, 3)}Z`;
}

interface Parts {
  readonly hours: number;
  readonly minutes: number;
  readonly seconds: number;
  readonly hundredths: number;
}

function partsOf(seconds: number): Parts {
  const all = Math.round(Math.max(0, seconds) * 100);
  return {
    hours: Math.floor(all / 360_000),
    minutes: Math.floor(all / 6000) % 60,
    seconds: Math.floor(all / 100) % 60,
    hundredths: all % 100,
  };
}

/** A length of time as ISO 8601 writes it, to hundredths of a second: `PT1H2M3.5S`. */
export function isoDuration(duration_s: number): string {
  const { hours, minutes, seconds, hundredths } = partsOf(duration_s);
  const part = hundredths === 0 ? '' : `.${padded(hundredths, 2).replace(/0$/, '')}`;
  const last = seconds > 0 || hundredths > 0 || (hours === 0 && minutes === 0) ? `${seconds}${part}S` : '';
  return `PT${hours > 0 ? `${hours}H` : ''}${minutes > 0 ? `${minutes}M` : ''}${last}`;
}

/** Longest that fits its digits. */
const LONGEST_s = 9999 * 3600 + 59 * 60 + 59.99;

/** A length of time as SCORM 1.2 writes it, CMITimespan: `0001:02:03.50`. What is longer is given as the longest. */
export function timespan(duration_s: number): string {
  const { hours, minutes, seconds, hundredths } = partsOf(Math.min(duration_s, LONGEST_s));
  return `${padded(hours, 4)}:${padded(minutes, 2)}:${padded(seconds, 2)}.${padded(hundredths, 2)}`;
}
