/** The words of the control tap: power, selector, timer and floats, for each way of dosing. */
import { and, not, or, setup, stateIn } from 'xstate';
import { type FloatEvent, type FloatWord, type Ladder, made, wiredTo } from './floats.ts';
import type { Says } from './vocabulary.ts';

export type DosingEvent =
  | FloatEvent
  | `selector to ${'Hand' | 'Off' | 'Auto'}`
  | `power ${'fails' | 'sags' | 'returns'}`
  | `pump breaker ${'trips' | 'pushed off' | 'pushed on'}`
  | `pump circuit ${'shorted' | 'cleared'}`
  | 'a start hour comes'
  | 'a start by hand'
  | 'the dose minutes end'
  | `${'half the rest passes' | 'the rest ends'}`
  | 'the reserve ends'
  | `timer ${'loses its time' | 'set' | 'dies' | 'renewed'}`;

const at = (region: string, ...states: string[]) => or(states.map((state) => stateIn({ [region]: state })));

const never = () => false;
const tapLive = and([at('pump breaker', 'on'), not(at('power supply', 'out'))]);
const timerGoes = at('timer', 'goes');
const dosing = at('dose', 'dosing');

/** Dosing of a tank with these floats. What a float is not there for is never made. */
export function dosingWords(ladder: Ladder) {
  const has = (float: Ladder[number]) => (ladder.includes(float) ? made(ladder, float) : never);
  const stopMade = has('stop');
  const doseReady = and([has('dose'), stopMade]);
  /** A float that is held so, and wired to the terminals of the stop float. */
  const loose = (float: FloatWord, ...held: string[]) =>
    and([at(`${float} float`, ...held), wiredTo(ladder, 'stop', float)]);
  const inAuto = ladder.includes('start/stop')
    ? made(ladder, 'start/stop')
    : and([stopMade, ladder.includes('redundant-off') ? dosing : or([dosing, has('override')])]);
  const asked = and([
    tapLive,
    ladder.includes('redundant-off') ? made(ladder, 'redundant-off') : () => true,
    or([at('selector', 'Hand'), and([at('selector', 'Auto'), inAuto])]),
  ]);
  return setup({
    types: { context: {} as Record<string, never>, events: {} as { type: DosingEvent }, meta: {} as Says },
    guards: {
      'power is there': not(at('power supply', 'out')),
      'shorted, and power is there': and([at('pump wire', 'shorted'), not(at('power supply', 'out'))]),
      'the tap is live': tapLive,
      'the tap is dead': not(tapLive),
      'the clock goes and the dose float is made': and([tapLive, timerGoes, doseReady]),
      'there is water for a dose': and([or([has('dose'), has('override')]), stopMade]),
      'the override float is made over a sound stop': and([has('override'), stopMade]),
      'freeing the stop float opens the stop contact': loose('stop', 'caught up', 'caught down'),
      'freeing the dose float opens the stop contact': loose('dose', 'caught up', 'caught down'),
      'freeing the redundant-off float opens the stop contact': loose('redundant-off', 'caught up', 'caught down'),
      'letting go of the stop float opens the stop contact': loose('stop', 'in a hand'),
      'letting go of the dose float opens the stop contact': loose('dose', 'in a hand'),
      'letting go of the redundant-off float opens the stop contact': loose('redundant-off', 'in a hand'),
      'the stop float breaks': not(stopMade),
      'the timer does not go': not(timerGoes),
      'the timer goes': and([tapLive, timerGoes]),
      'the pump is asked for': asked,
      'the pump is not asked for': not(asked),
    },
  });
}
export type DosingWords = ReturnType<typeof dosingWords>;
