/** The words of the alarm circuit: events as people tell them, and the conditions that follow from what stands. */
import { and, not, or, setup, stateIn } from 'xstate';
import { CALLED, type Says } from './vocabulary.ts';

export type AlarmEvent =
  | `air pressure ${'falls' | 'recovers'}`
  | `${'low-air' | 'high-water' | 'lamp-out'} delay ends`
  | `water ${'makes' | 'leaves'} the float below`
  | `water ${'makes' | 'leaves'} the alarm float`
  | `water ${'rises over' | 'falls below'} all floats`
  | `air switch ${'sticks open' | 'sticks closed' | 'freed'}`
  | `alarm float ${'caught up' | 'caught down' | 'freed' | 'lifted by hand' | 'let go'}`
  | `alarm float wire ${'breaks' | 'bridged' | 'mended'}`
  | `float leads ${'swapped' | 'righted'}`
  | `terminals ${'wetted' | 'dried'}`
  | 'a surge strikes'
  | `${'lamp' | 'air lamp' | 'water lamp' | 'buzzer' | 'ultraviolet lamp'} ${'dies' | 'renewed'}`
  | 'silence pressed'
  | `test ${'pressed' | 'released'}`
  | `alarm breaker ${'trips' | 'pushed off' | 'pushed on'}`
  | `alarm circuit ${'shorted' | 'cleared'}`
  | `compressor breaker pushed ${'off' | 'on'}`
  | `power ${'fails' | 'sags' | 'returns'}`
  | 'five minutes pass'
  | 'a day passes'
  | `telephone line ${'dies' | 'mended'}`;

const at = (region: string, state: string) => stateIn({ [region]: state });
/** In a region of the live circuit, which a dead one has not, nor a panel of another kind. */
const live = (region: string, state: string) => stateIn({ 'alarm circuit': { live: { [region]: state } } });

const leadsRight = not(at('float leads', 'swapped with the float below'));
const floatUp = or([
  at('alarm float', 'caught up'),
  at('alarm float', 'in a hand'),
  and([not(at('alarm float', 'caught down')), at('pump-tank water', 'at the alarm float')]),
]);
const ownContact = or([at('alarm float', 'wire bridged'), and([not(at('alarm float', 'wire broken')), floatUp])]);
/** Wired to the float below, the alarm comes with that one, whatever ails its own. */
const contactBelow = or([at('pump-tank water', 'at the float below'), at('pump-tank water', 'at the alarm float')]);
const freeing = and([leadsRight, at('terminals', 'dry')]);
const airShut = or([
  at('air switch', 'stuck closed'),
  and([at('air pressure', 'low'), not(at('air switch', 'stuck open'))]),
]);
const waterShut = or([at('terminals', 'wet'), and([leadsRight, ownContact]), and([not(leadsRight), contactBelow])]);
const airStands = or([live('low air', 'stands'), live('lamp-out contact', 'stands')]);
const waterStands = live('high water', 'stands');
const circuitFed = and([not(at('power supply', 'out')), at('alarm breaker', 'on')]);
const lampShines = and([
  at('ultraviolet lamp', 'sound'),
  not(at('power supply', 'out')),
  at('compressor breaker', 'on'),
]);

export const alarmWords = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: AlarmEvent }, meta: {} as Says },
  actions: { [CALLED]: () => {} },
  guards: {
    'the air switch is closed': airShut,
    'the air switch is open': not(airShut),
    'the air switch is caught': or([at('air switch', 'stuck open'), at('air switch', 'stuck closed')]),
    'the hand lets go of the contact': and([freeing, at('alarm float', 'in a hand')]),
    'freeing it opens the contact': and([
      freeing,
      or([at('alarm float', 'caught up'), at('alarm float', 'caught down')]),
    ]),
    'the high-water switch is closed': waterShut,
    'the high-water switch is open': not(waterShut),
    'the ultraviolet lamp is dark': not(lampShines),
    'the ultraviolet lamp shines': lampShines,
    'an air condition stands': airStands,
    'high water stands': waterStands,
    'any condition stands': or([airStands, waterStands]),
    'no condition stands': not(or([airStands, waterStands])),
    'an alarm lamp is called for': or([
      live('alarm lamp', 'lit'),
      live('air alarm', 'lit'),
      live('water alarm', 'lit'),
    ]),
    'no alarm lamp is called for': not(
      or([live('alarm lamp', 'lit'), live('air alarm', 'lit'), live('water alarm', 'lit')]),
    ),
    'the alarm circuit is fed': circuitFed,
    'the alarm circuit is dead': not(circuitFed),
    'the circuit is shorted and power is there': and([at('alarm wire', 'shorted'), not(at('power supply', 'out'))]),
    'power is there': not(at('power supply', 'out')),
    'the line is good': at('telephone line', 'good'),
  },
});
