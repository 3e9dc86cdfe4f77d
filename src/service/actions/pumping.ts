/** The effluent pump at work: runs in Hand while one looks, and what a sound line would show then. */
import { type LineState, lineState, pumpedFlow, SOUND } from '../../plant/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { say } from '../message.ts';

type Selector = 'hand' | 'off' | 'auto';

/** Works the selector, then does something, and puts the selector back. */
export function atSelector<T>(d: Doing, position: Selector, look: () => T): T {
  const { selector } = d.unit.control.regions;
  d.unit.send(`selector.${position}`);
  const seen = look();
  d.unit.send(`selector.${selector as Selector}`);
  return seen;
}

/** Runs the pump in Hand for some seconds, looks, and puts the selector back. */
export function inHand<T>(d: Doing, seconds: number, look: () => T): T {
  return atSelector(d, 'hand', () => {
    d.wait(seconds);
    return look();
  });
}

/** What an action wants that lets so many seconds pass with the pump switched by hand. */
export function byHand(inner_s: number): Pick<ActionDef, 'inner_s' | 'hindered'> {
  return { inner_s, hindered: (person) => (person.locks.has('pumpBreaker') ? say('why.locked') : undefined) };
}

export function soundLine(d: Doing): LineState {
  return lineState(d.unit.works.line, SOUND);
}

/** Flow of a sound pump and line with the water where it stands, L/s. */
export function soundFlow_Ls(d: Doing): number {
  return pumpedFlow(soundLine(d), d.read().flows.pump_m);
}
