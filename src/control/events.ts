/** Everything that can happen to a control: bare names, no payload, so that the control stays finite. */

/** Every float a panel of ours may have, lowest first as they hang. */
export const FLOATS = [
  'redundantOffFloat',
  'stopFloat',
  'startStopFloat',
  'doseFloat',
  'overrideFloat',
  'highWaterFloat',
] as const;
export type FloatName = (typeof FLOATS)[number];

export const BREAKERS = ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const;
export type BreakerName = (typeof BREAKERS)[number];

/** The lamp of a panel with one, and the two of a panel that tells air from water. */
export const LAMPS = ['lamp', 'airLamp', 'waterLamp'] as const;
export type LampName = (typeof LAMPS)[number];

const FLOAT_EVENTS = [
  'rises',
  'falls',
  'heldUp',
  'heldDown',
  'freed',
  'lifted',
  'released',
  'wireOpens',
  'wireBridged',
  'wireMended',
] as const;
const BREAKER_EVENTS = ['on', 'off', 'trips', 'shorts', 'shortCleared'] as const;
const LAMP_EVENTS = ['dies', 'renewed'] as const;

/** A float's leads are swapped with those of the next one up: the highest has none. */
type SwapEvent = `${Exclude<FloatName, 'highWaterFloat'>}.leadsSwapped`;

export type FloatEvent = `${FloatName}.${(typeof FLOAT_EVENTS)[number]}` | SwapEvent;
export type BreakerEvent = `${BreakerName}.${(typeof BREAKER_EVENTS)[number]}`;
export type LampEvent = `${LampName}.${(typeof LAMP_EVENTS)[number]}`;

const OTHER_EVENTS = [
  'supply.fails',
  'supply.sags',
  'supply.returns',
  'leads.righted',
  'air.falls',
  'air.rises',
  'airContact.sticksOpen',
  'airContact.sticksClosed',
  'airContact.freed',
  'alarmTerminals.wetted',
  'alarmTerminals.dried',
  'lowAir.due',
  'highWater.due',
  'lampOut.due',
  'latch.surge',
  'silence.pressed',
  'test.pressed',
  'test.released',
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
  'timer.loses',
  'timer.set',
  'timer.dies',
  'timer.renewed',
  'rest.half',
  'rest.ends',
  'dose.ends',
  'motorLead.opens',
  'motorLead.shorts',
  'motorLead.mended',
  'winding.opens',
  'winding.renewed',
  'rotor.seizes',
  'rotor.freed',
  'protector.hot',
  'protector.cool',
  'protector.fails',
  'protector.renewed',
  'gfci.trips',
  'gfci.reset',
  'compressor.stops',
  'compressor.mended',
  'compressorCord.pulled',
  'compressorCord.plugged',
  'compressorCord.chafes',
  'compressorCord.renewed',
  'housing.heats',
  'housing.cools',
  'cutout.hot',
  'cutout.cool',
  'ultraviolet.fails',
  'ultraviolet.renewed',
] as const;

export type ControlEventName = FloatEvent | BreakerEvent | LampEvent | (typeof OTHER_EVENTS)[number];

/** All events, in a fixed order: an event's place in this list is its number in the remembered edges. */
export const EVENTS: readonly ControlEventName[] = [
  ...FLOATS.flatMap((f) => FLOAT_EVENTS.map((e): ControlEventName => `${f}.${e}`)),
  ...FLOATS.flatMap((f) => (f === 'highWaterFloat' ? [] : [`${f}.leadsSwapped` as const])),
  ...BREAKERS.flatMap((b) => BREAKER_EVENTS.map((e): ControlEventName => `${b}.${e}`)),
  ...LAMPS.flatMap((l) => LAMP_EVENTS.map((e): ControlEventName => `${l}.${e}`)),
  ...OTHER_EVENTS,
];

/** Delays the control asks the engine to time, each with the event that ends it. */
export const DELAYS = {
  lowAir: 'lowAir.due',
  highWater: 'highWater.due',
  lampOut: 'lampOut.due',
  dial: 'dialler.due',
  dialAgain: 'dialler.again',
  dose: 'dose.ends',
  restFirst: 'rest.half',
  restSecond: 'rest.ends',
  timerReserve: 'timer.reserveEnds',
  protectorHeat: 'protector.hot',
  protectorWarm: 'protector.hot',
  protectorCool: 'protector.cool',
  cutoutHeat: 'cutout.hot',
  cutoutCool: 'cutout.cool',
} as const satisfies Record<string, ControlEventName>;

export type DelayId = keyof typeof DELAYS;

/** What a transition asks of the engine. */
export type Command =
  | { readonly kind: 'arm'; readonly delay: DelayId }
  | { readonly kind: 'disarm'; readonly delay: DelayId }
  | { readonly kind: 'dial' }
  | { readonly kind: 'stopClock' }
  | { readonly kind: 'startClock' };
