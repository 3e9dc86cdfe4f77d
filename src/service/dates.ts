import { calendarDay } from '../unit/index.ts';
import { type Message, say } from './message.ts';

/** "14 May 2031" of a day number, as `dayNumber` counts them. */
export function dateWords(number: number): Message {
  const { year, month, day } = calendarDay(number);
  return say('date.full', { day, month: say(`month.${month}`), year: String(year) });
}
