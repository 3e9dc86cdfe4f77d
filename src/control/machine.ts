/** The control of a latching unit with a night timer (U1): one parallel machine made of the small ones. */
import { setup } from 'xstate';
import { BREAKERS, type BreakerName, type ControlEventName, type DelayId, FLOATS } from './events.ts';
import { all, is } from './logic.ts';
import {
  airContact,
  breaker,
  delayed,
  dialler,
  doseDemand,
  float,
  latch,
  type Part,
  relay,
  selector,
  silence,
  thermal,
  timerClock,
  toggle,
} from './parts.ts';
import { WIRING } from './wiring.ts';

const w = WIRING;

function breakerParts(name: BreakerName): Record<string, Part> {
  const wire = `${name}Wire`;
  return {
    [wire]: toggle('sound', 'shorted', `${name}.shorts`, `${name}.shortCleared`),
    [name]: breaker(name, all(is('supply', 'on'), is(wire, 'shorted'))),
  };
}

/** Every region of the machine, by name. */
export const PARTS: Readonly<Record<string, Part>> = {
  supply: toggle('on', 'off', 'supply.fails', 'supply.returns'),
  ...Object.assign({}, ...BREAKERS.map(breakerParts)),
  ...Object.fromEntries(FLOATS.map((f) => [f, float(f)])),
  airContact: airContact(),
  lowAir: delayed(all(w.alarmLive, w.airClosed), 'lowAir', 'lowAir.due'),
  highWater: delayed(all(w.alarmLive, w.highWaterMade), 'highWater', 'highWater.due'),
  latch: latch(all(w.alarmLive, w.condition), w.alarmLive),
  silence: silence(w.alarm, w.alarmLive, is('lowAir', 'timing'), is('highWater', 'timing')),
  test: toggle('released', 'held', 'test.pressed', 'test.released'),
  bulb: toggle('sound', 'dead', 'bulb.dies', 'bulb.renewed'),
  horn: toggle('sound', 'dead', 'horn.dies', 'horn.renewed'),
  phoneLine: toggle('good', 'dead', 'phoneLine.dies', 'phoneLine.mended'),
  dialler: dialler(w.alarm, is('phoneLine', 'good')),
  selector: selector(),
  relay: relay(),
  timerClock: timerClock(w.controlLive),
  doseDemand: doseDemand(
    all(w.controlLive, is('timerClock', 'keeping'), w.doseMade, w.stopMade),
    all(w.controlLive, w.stopMade),
  ),
  winding: toggle('sound', 'open', 'winding.opens', 'winding.renewed'),
  rotor: toggle('free', 'seized', 'rotor.seizes', 'rotor.freed'),
  protector: thermal(w.pumpStalls, 'protectorHeat', 'protectorCool', 'protector.hot', 'protector.cool'),
  compressor: toggle('sound', 'stopped', 'compressor.stops', 'compressor.mended'),
  compressorCord: toggle('plugged', 'out', 'compressorCord.pulled', 'compressorCord.plugged'),
  housing: toggle('cool', 'hot', 'housing.heats', 'housing.cools'),
  compressorCutout: thermal(
    all(w.compressorRuns, is('housing', 'hot')),
    'cutoutHeat',
    'cutoutCool',
    'cutout.hot',
    'cutout.cool',
  ),
};

const control = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: ControlEventName } },
  actions: {
    arm: (_, _params: { delay: DelayId }) => {},
    disarm: (_, _params: { delay: DelayId }) => {},
    dial: () => {},
  },
});

/** The parts are built by name, so XState cannot follow their event names in types; `PARTS` is typed by itself. */
export const controlMachine = control.createMachine({
  id: 'control',
  type: 'parallel',
  context: {},
  states: PARTS as Parameters<typeof control.createMachine>[0]['states'] & object,
});
