/**
 * The wiring of a latching unit with a night timer, as expressions over the states of its parts. Each line is one
 * promise of the panel; the machine's guards and the outputs both come from here.
 */
import { all, any, is, type Logic, none } from './logic.ts';

const supplyOn = is('supply', 'on');

/** The three circuits that leave the panel. */
const alarmLive = all(supplyOn, is('alarmBreaker', 'on'));
const controlLive = all(supplyOn, is('pumpBreaker', 'on'));
const compressorLive = all(supplyOn, is('compressorBreaker', 'on'));

/** A float's contact is made when water or a hand has it up, or when it is caught there. */
function made(float: string): Logic {
  return any(is(float, 'up'), is(float, 'lifted'), is(float, 'heldUp'));
}

const stopMade = made('stopFloat');
const doseMade = made('doseFloat');
const overrideMade = made('overrideFloat');
const highWaterMade = made('highWaterFloat');
const airClosed = any(is('airContact', 'closed'), is('airContact', 'stuckClosed'));

const condition = any(is('lowAir', 'made'), is('highWater', 'made'));
const alarm = all(alarmLive, any(condition, is('latch', 'sealed')));

const testHeld = is('test', 'held');
const lamp = all(alarmLive, is('bulb', 'sound'), any(testHeld, alarm));
const buzzer = all(alarmLive, is('horn', 'sound'), any(testHeld, all(alarm, is('silence', 'off'))));

/** Hand passes every float; Auto needs the stop float and either the override or the timer's dose. */
const coil = all(
  controlLive,
  any(is('selector', 'hand'), all(is('selector', 'auto'), stopMade, any(overrideMade, is('doseDemand', 'on')))),
);
const contact = any(all(coil, none(is('relay', 'open'))), is('relay', 'welded'));
/** Voltage at the motor with its own protector closed. */
const motorFed = all(controlLive, contact, none(is('protector', 'open')), is('winding', 'sound'));
const pumpRuns = all(motorFed, is('rotor', 'free'));
const pumpStalls = all(motorFed, is('rotor', 'seized'));

const compressorRuns = all(
  compressorLive,
  is('compressorCord', 'plugged'),
  is('compressor', 'sound'),
  none(is('compressorCutout', 'open')),
);

export const WIRING = {
  alarmLive,
  controlLive,
  compressorLive,
  stopMade,
  doseMade,
  overrideMade,
  highWaterMade,
  airClosed,
  condition,
  alarm,
  lamp,
  buzzer,
  coil,
  contact,
  motorFed,
  pumpRuns,
  pumpStalls,
  compressorRuns,
} as const;

export type OutputId = keyof typeof WIRING;
export type Outputs = Readonly<Record<OutputId, boolean>>;
