import { type Message, say } from '../service/message.ts';

const HOUR_s = 3600;
/** Hours are counted up to two days, days from there on. */
const DAYS_FROM_h = 48;

/** A time as a household counts it. */
export function lasting(s: number): Message {
  const hours = Math.max(1, Math.round(s / HOUR_s));
  return hours < DAYS_FROM_h ? say('home.hours', { n: hours }) : say('home.days', { n: Math.round(hours / 24) });
}
