/** Errors an electrician might make in a panel. Each must be caught by a path of the specification. */
import type { Panel } from '../../../src/control/index.ts';
import { all, any, guardOf, is, none } from '../../../src/control/logic.ts';
import * as part from '../../../src/control/parts.ts';
import type { PanelName } from '../panels.ts';
import { replaced, rewired, type Spoiling, withStates } from './spoiled.ts';

export interface WiringError {
  readonly error: string;
  readonly unit: PanelName;
  /** The promise it breaks. */
  readonly breaks: string;
  /** The walk that shows it, where the sound one cannot. */
  readonly fault?: string;
  /** Hidden so deep that covering every transition once may pass it by: the walk through all pairs must find it. */
  readonly deep?: true;
  readonly spoil: (right: Panel) => Spoiling;
}

const never = any();
const held = is('test', 'held');
const auto = is('selector', 'auto');
const lowAirAlone = (w: Panel['wiring']) => part.delayed(w.airClosed, 'lowAir', 'lowAir.due');

const ALARM: readonly WiringError[] = [
  {
    error: 'silence also darkens the lamp',
    unit: 'u1',
    breaks: 'alarm and silence',
    spoil: ({ wiring: w }) => ({ wiring: { lamp: all(w.lamp, any(held, is('silence', 'off'))) } }),
  },
  {
    error: 'the buzzer hangs behind the lamp, so that a dead lamp mutes it',
    unit: 'u1',
    breaks: 'alarm and silence',
    fault: 'lamp dead',
    spoil: ({ wiring: w }) => ({ wiring: { buzzer: all(w.buzzer, w.lamp) } }),
  },
  {
    error: 'a second condition does not sound again after silence',
    unit: 'u1',
    breaks: 'alarm and silence',
    spoil: (r) => ({ parts: { silence: part.silence(r.wiring.alarm, r.wiring.alarmLive, ['lowAir']) } }),
  },
  {
    error: 'silence pressed before an alarm mutes the next one',
    unit: 'u1',
    breaks: 'alarm and silence',
    fault: 'surge on the latch',
    spoil: (r) => ({ parts: withStates(r, 'silence', { off: { on: { 'silence.pressed': 'on' } } }) }),
  },
  {
    error: 'a held test seals the latch',
    unit: 'u1',
    breaks: 'alarm and silence',
    spoil: ({ wiring: w }) => ({ parts: { latch: part.latch(all(w.alarmLive, any(w.condition, held)), w.alarmLive) } }),
  },
  {
    error: 'the lamp is not latched',
    unit: 'u1',
    breaks: 'alarm and silence',
    spoil: (r) => ({ wiring: rewired(r, is('latch', 'sealed'), never) ?? {} }),
  },
  {
    error: 'the air switch alarms without its minute',
    unit: 'u1',
    breaks: 'alarm and silence',
    spoil: (r) => ({
      wiring: rewired(r, is('lowAir', 'made'), any(is('lowAir', 'made'), is('lowAir', 'timing'))) ?? {},
    }),
  },
  {
    error: 'the lamps for air and water are exchanged',
    unit: 'u3',
    breaks: 'alarm and silence',
    spoil: ({ wiring: w }) => ({ wiring: { airLamp: w.waterLamp, waterLamp: w.airLamp } }),
  },
  {
    error: 'the ultraviolet contact is left out',
    unit: 'u3',
    breaks: 'two lamps',
    spoil: ({ wiring: w }) => ({
      parts: { airLatch: part.latch(all(w.alarmLive, is('lowAir', 'made')), w.alarmLive) },
    }),
  },
  {
    error: 'one latch for both lamps',
    unit: 'u3',
    breaks: 'two lamps',
    spoil: (r) => ({
      wiring: rewired(r, is('waterLatch', 'sealed'), any(is('waterLatch', 'sealed'), is('airLatch', 'sealed'))) ?? {},
    }),
  },
];

const RESET: readonly WiringError[] = [
  {
    error: 'the latch never clears',
    unit: 'u1',
    breaks: 'reset',
    spoil: (r) => ({ parts: withStates(r, 'latch', { sealed: {} }) }),
  },
  {
    error: 'a latch sealed by a surge survives a reset',
    unit: 'u1',
    breaks: 'reset',
    fault: 'surge on the latch',
    spoil: (r) => ({
      parts: withStates(r, 'latch', {
        open: { ...r.parts.latch?.states.open, on: { 'latch.surge': 'surged' } },
        surged: {},
      }),
      wiring: rewired(r, is('latch', 'sealed'), any(is('latch', 'sealed'), is('latch', 'surged'))) ?? {},
    }),
  },
  {
    error: 'the air delay does not start anew when power returns',
    unit: 'u1',
    breaks: 'reset',
    spoil: (r) => ({ parts: { lowAir: lowAirAlone(r.wiring) } }),
  },
  {
    error: 'an outage does not forget that the buzzer was silenced',
    unit: 'u1',
    breaks: 'reset',
    fault: 'surge on the latch',
    deep: true,
    spoil: (r) => ({
      parts: { silence: part.silence(r.wiring.alarm, any(all(), none(never)), ['lowAir', 'highWater']) },
    }),
  },
  {
    error: 'the alarm hangs on the compressor breaker',
    unit: 'u1',
    breaks: 'breakers and supply',
    spoil: (r) => ({ wiring: rewired(r, r.wiring.alarmLive, r.wiring.compressorLive) ?? {} }),
  },
  {
    error: 'a self-clearing panel latches',
    unit: 'u2',
    breaks: 'reset',
    spoil: (r) => ({
      parts: { latch: part.latch(all(r.wiring.alarmLive, r.wiring.condition), r.wiring.alarmLive) },
      wiring: { lamp: any(r.wiring.lamp, all(r.wiring.alarmLive, is('latch', 'sealed'))) },
    }),
  },
];

const DIALLER: readonly WiringError[] = [
  {
    error: 'the dialler counts a held test as an alarm',
    unit: 'u1',
    breaks: 'dialler',
    spoil: ({ wiring: w }) => ({
      parts: { dialler: part.dialler(any(w.alarm, all(w.alarmLive, held)), is('phoneLine', 'good')) },
    }),
  },
  {
    error: 'the dialler follows the buzzer, so that silence stops it',
    unit: 'u1',
    breaks: 'dialler',
    spoil: ({ wiring: w }) => ({
      parts: { dialler: part.dialler(all(w.alarm, is('silence', 'off')), is('phoneLine', 'good')) },
    }),
  },
  {
    error: 'the dialler calls once and never again',
    unit: 'u2',
    breaks: 'dialler',
    spoil: (r) => ({
      parts: withStates(r, 'dialler', {
        waiting: { ...r.parts.dialler?.states.waiting, on: { 'dialler.again': { target: 'waiting', reenter: true } } },
      }),
    }),
  },
];

const BREAKERS: readonly WiringError[] = [
  {
    error: 'a tripped breaker goes on without being pushed off',
    unit: 'u1',
    breaks: 'breakers and supply',
    spoil: (r) => ({
      parts: withStates(r, 'pumpBreaker', { tripped: { on: { 'pumpBreaker.off': 'off', 'pumpBreaker.on': 'on' } } }),
    }),
  },
  {
    error: 'a breaker holds on a short',
    unit: 'u2',
    breaks: 'breakers and supply',
    fault: 'alarm breaker trips again',
    spoil: () => ({ parts: { alarmBreaker: part.breaker('alarmBreaker', never, never) } }),
  },
  {
    error: 'a low supply feeds nothing',
    unit: 'u3',
    breaks: 'breakers and supply',
    spoil: (r) => ({ wiring: rewired(r, any(is('supply', 'on'), is('supply', 'low')), is('supply', 'on')) ?? {} }),
  },
];

const DOSING: readonly WiringError[] = [
  {
    error: 'the override sits behind the timer',
    unit: 'u1',
    breaks: 'dosing (night)',
    spoil: (r) => {
      const { overrideMade } = r.wiring;
      const either = any(overrideMade, is('doseDemand', 'on'));
      return { wiring: rewired(r, either, is('doseDemand', 'on')) ?? {} };
    },
  },
  {
    error: 'the pump ignores the stop float',
    unit: 'u1',
    breaks: 'dosing (night)',
    fault: 'stop float stuck down',
    spoil: (r) => ({ wiring: withoutStop(r) }),
  },
  {
    error: 'a dose goes on when the stop float breaks',
    unit: 'u1',
    breaks: 'dosing (night)',
    spoil: (r) => ({
      parts: { doseDemand: part.nightDoses(all(r.wiring.controlLive, r.wiring.doseMade), r.wiring.controlLive) },
    }),
  },
  {
    error: 'a digital clock that lost its time goes on by itself',
    unit: 'u1',
    breaks: 'dosing (night)',
    spoil: (r) => ({ parts: { timerClock: part.timerClock(r.wiring.controlLive, 'mechanical') } }),
  },
  {
    error: 'Hand bypasses the redundant-off float',
    unit: 'u3',
    breaks: 'dosing (timed)',
    spoil: (r) => {
      const hand = all(r.wiring.controlLive, is('selector', 'hand'));
      return { wiring: rewired(r, r.wiring.coil, any(r.wiring.coil, hand)) ?? {} };
    },
  },
  {
    error: 'the override does not shorten the rest',
    unit: 'u3',
    breaks: 'dosing (timed)',
    spoil: (r) => {
      const { controlLive, doseMade, stopMade } = r.wiring;
      const runs = all(controlLive, is('timerClock', 'keeping'));
      return { parts: { doseDemand: part.timedDoses(runs, all(runs, doseMade, stopMade), stopMade, never) } };
    },
  },
  {
    error: 'Auto runs on the float of the alarm',
    unit: 'u2',
    breaks: 'dosing (demand)',
    spoil: (r) => ({ wiring: rewired(r, all(auto, r.wiring.startStopMade), all(auto, r.wiring.highWaterMade)) ?? {} }),
  },
];

const MOTORS: readonly WiringError[] = [
  {
    error: 'Off does not cut a relay that is sound',
    unit: 'u1',
    breaks: 'motor and protector',
    spoil: (r) => ({ wiring: rewired(r, auto, none(is('selector', 'hand'))) ?? {} }),
  },
  {
    error: 'a protector that opened never closes',
    unit: 'u2',
    breaks: 'motor and protector',
    spoil: (r) => ({
      parts: withStates(r, 'protector', { open: { entry: { type: 'arm', params: { delay: 'protectorCool' } } } }),
    }),
  },
  {
    error: 'a shorted motor lead trips its breaker before it is fed',
    unit: 'u1',
    breaks: 'motor and protector',
    fault: 'motor lead shorted',
    spoil: (r) => ({
      parts: {
        pumpBreaker: part.breaker(
          'pumpBreaker',
          is('pumpBreakerWire', 'shorted'),
          all(r.wiring.controlLive, is('motorLead', 'shorted')),
        ),
      },
    }),
  },
  {
    error: 'the outlet stays set on a chafed cord',
    unit: 'u2',
    breaks: 'compressor and cut-out',
    fault: 'cord chafed',
    spoil: () => ({ parts: { gfci: part.gfci(never) } }),
  },
  {
    error: 'a reset closes the thermal cut-out',
    unit: 'u1',
    breaks: 'compressor and cut-out',
    fault: 'housing hot',
    spoil: (r) => ({
      parts: withStates(r, 'compressorCutout', {
        open: {
          ...r.parts.compressorCutout?.states.open,
          always: { target: 'closed', guard: guardOf(none(r.wiring.compressorLive)) },
        },
      }),
    }),
  },
];

function withoutStop(r: Panel): NonNullable<Spoiling['wiring']> {
  const { coil, contact, motorFed, pumpRuns, pumpStalls, stopMade } = r.wiring;
  const free = (logic: typeof coil) => replaced(logic, coil, replaced(coil, stopMade, all()));
  return {
    coil: free(coil),
    contact: free(contact),
    motorFed: free(motorFed),
    pumpRuns: free(pumpRuns),
    pumpStalls: free(pumpStalls),
  };
}

export const WIRING_ERRORS: readonly WiringError[] = [
  ...ALARM,
  ...RESET,
  ...DIALLER,
  ...BREAKERS,
  ...DOSING,
  ...MOTORS,
];
