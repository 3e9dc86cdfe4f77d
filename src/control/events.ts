/** Everything that can happen to the control: bare names, no payload, so that the control stays finite. */

export const FLOATS = ['stopFloat', 'doseFloat', 'overrideFloat', 'highWaterFloat'] as const;
export type FloatName = (typeof FLOATS)[number];

export const BREAKERS = ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const;
export type BreakerName = (typeof BREAKERS)[number];

const FLOAT_EVENTS = ['rises', 'falls', 'heldUp', 'heldDown', 'freed', 'lifted', 'released'] as const;
const BREAKER_EVENTS = ['on', 'off', 'trips', 'shorts', 'shortCleared'] as const;

export type FloatEvent = `${FloatName}.${(typeof FLOAT_EVENTS)[number]}`;
export type BreakerEvent = `${BreakerName}.${(typeof BREAKER_EVENTS)[number]}`;

const OTHER_EVENTS = [
  'supply.fails',
  'supply.returns',
  'air.falls',
  'air.rises',
  'airContact.sticksOpen',
  'airContact.sticksClosed',
  'airContact.freed',
  'lowAir.due',
  'highWater.due',
  'latch.surge',
  'silence.pressed',
  'test.pressed',
  'test.released',
  'bulb.dies',
  'bulb.renewed',
  'horn.dies',
  'horn.renewed',
  'dialler.due',
  'dialler.again',
  'phoneLine.dies',
  'phoneLine.mended',
  'selector.hand',
  'selector.off',
  'selector.auto',
  'relay.opens',
  'relay.welds',
  'relay.renewed',
  'timer.start',
  'timer.reserveEnds',
  'timer.set',
  'dose.ends',
  'winding.opens',
  'winding.renewed',
  'rotor.seizes',
  'rotor.freed',
  'protector.hot',
  'protector.cool',
  'compressor.stops',
  'compressor.mended',
  'compressorCord.pulled',
  'compressorCord.plugged',
  'housing.heats',
  'housing.cools',
  'cutout.hot',
  'cutout.cool',
] as const;

export type ControlEventName = FloatEvent | BreakerEvent | (typeof OTHER_EVENTS)[number];

/** All events, in a fixed order: an event's place in this list is its number in the remembered edges. */
export const EVENTS: readonly ControlEventName[] = [
  ...FLOATS.flatMap((f) => FLOAT_EVENTS.map((e): ControlEventName => `${f}.${e}`)),
  ...BREAKERS.flatMap((b) => BREAKER_EVENTS.map((e): ControlEventName => `${b}.${e}`)),
  ...OTHER_EVENTS,
];

/** Delays the control asks the engine to time. */
export const DELAYS = {
  lowAir: 'lowAir.due',
  highWater: 'highWater.due',
  dial: 'dialler.due',
  dialAgain: 'dialler.again',
  dose: 'dose.ends',
  timerReserve: 'timer.reserveEnds',
  protectorHeat: 'protector.hot',
  protectorCool: 'protector.cool',
  cutoutHeat: 'cutout.hot',
  cutoutCool: 'cutout.cool',
} as const satisfies Record<string, ControlEventName>;

export type DelayId = keyof typeof DELAYS;

/** What a transition asks of the engine. */
export type Command =
  | { readonly kind: 'arm'; readonly delay: DelayId }
  | { readonly kind: 'disarm'; readonly delay: DelayId }
  | { readonly kind: 'dial' };
