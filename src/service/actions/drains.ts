/** In the house and at its sewer: how the drains run, what smells, what else is let into them. */
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, quantity, say } from '../message.ts';
import { isSmelt, standsFull } from '../noticed.ts';
import { actionsAt, conditionOf, good, mendsAt, off } from './shared.ts';

/** Share of its air below which a vent lets the next trap be heard (convention). */
const GURGLES = 0.5;
/** Opening by which a toilet rocks and is smelt at its foot (convention). */
const ROCKS = 0.2;

/** Whether water stands so high in the house sewer that the drains are slow. */
export function drainsSlow(d: Doing): boolean {
  return standsFull(d.read().flows.sewer_m, d.unit.spec);
}

/** How the drains run, as anybody in the house notices it. */
export function drainWords(d: Doing): Message {
  if (drainsSlow(d)) return say('reading.drains-slow');
  return say(conditionOf(d).ventFlow < GURGLES ? 'reading.drains-gurgle' : 'reading.drains-free');
}

/** Smells over this are told as strong (convention). */
const STRONG = 0.25;

/** What is smelt outdoors and indoors; sewer air indoors need not come from the works. */
export function smellsTold(d: Doing): readonly Message[] {
  const { sensed } = d.read();
  const { outdoors, indoors } = sensed;
  const told: Message[] = [];
  if (outdoors.kind === 'chlorine') told.push(say('reading.smell-chlorine'));
  else if (outdoors.strength > STRONG) told.push(say('reading.smell-strong'));
  else if (isSmelt(sensed)) told.push(say('reading.smell-faint'));
  if (indoors.kind !== 'none') told.push(say('reading.smell-indoors'));
  return told.length > 0 ? told : [say('reading.smell-none')];
}

function smellAbout(d: Doing): void {
  for (const smell of smellsTold(d)) d.note(say('note.smell'), smell);
}

function runAndListen(d: Doing): void {
  d.learn({ backingUp: drainsSlow(d) });
  const words = drainWords(d);
  d.note(
    say('note.run-water'),
    words,
    words.id === 'reading.drains-free' ? good('remark.ordinary') : off(drainRemark(d)),
  );
}

function drainRemark(d: Doing): string {
  return drainsSlow(d) ? 'remark.sewer-stands' : 'remark.vent';
}

function rockToilets(d: Doing): void {
  const rocks = conditionOf(d).drainGap >= ROCKS;
  d.note(
    say('note.toilet-feet'),
    say(rocks ? 'reading.toilet-rocks' : 'reading.toilets-firm'),
    rocks ? off('remark.toilet-seal') : good('remark.ordinary'),
  );
}

const DAY_L_per_m3s = 86.4;

/** With every tap shut the meter tells what a cistern lets run; ground water and rain do not pass it. */
function watchWaterMeter(d: Doing): void {
  const flow_Ls = d.measure(INSTRUMENTS.meter_Ls, conditionOf(d).clearWater_m3d / DAY_L_per_m3s);
  d.note(
    say('note.water-meter'),
    flow_Ls > 0
      ? say('reading.meter-turns', { q: quantity('waterFlow_Ls', flow_Ls, 0.001) })
      : say('reading.meter-still'),
    flow_Ls > 0 ? off('remark.meter') : good('remark.meter-still'),
  );
}

function lookAtDownspouts(d: Doing): void {
  const joined = conditionOf(d).roof_m2 > 0;
  d.note(
    say('note.downspouts'),
    say(joined ? 'reading.downspout-in-sewer' : 'reading.downspouts-apart'),
    joined ? off('remark.clear-water') : good('remark.ordinary'),
  );
}

const house = actionsAt('house');
const mend = mendsAt('house', { handsOff: true });
const handsOff = { handsOff: true } as const;

export const DRAIN_ACTIONS: readonly ActionDef[] = [
  house('smell-about', 'look', 2, smellAbout, handsOff),
  house('run-and-listen', 'look', 6, runAndListen, handsOff),
  house('rock-toilets', 'look', 5, rockToilets, handsOff),
  house('watch-water-meter', 'measure', 15, watchWaterMeter, handsOff),
  house('look-at-downspouts', 'look', 8, lookAtDownspouts, handsOff),
  mend('renew-toilet-seal', 40, { cost_usd: 15 }),
  mend('clear-vent', 35),
  mend('disconnect-downspout', 40, { cost_usd: 25 }),
  mend('reroute-softener', 60, { cost_usd: 60 }),
  mendsAt('clean-out')('snake-sewer', 40),
];
