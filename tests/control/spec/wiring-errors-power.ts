/** Wiring errors of the breakers, of dosing, of the motor and of the compressor. */
import type { Panel } from '../../../src/control/index.ts';
import { all, any, guardOf, is, none } from '../../../src/control/logic.ts';
import * as part from '../../../src/control/parts.ts';
import { replaced, rewired, type Spoiling, withStates } from './spoiled.ts';
import type { WiringError } from './wiring-error.ts';

const never = any();
const auto = is('selector', 'auto');

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
      const { controlLive, doseMade, overrideMade, stopMade } = r.wiring;
      const runs = all(controlLive, is('timerClock', 'keeping'));
      const water = all(runs, stopMade, any(doseMade, overrideMade));
      return { parts: { doseDemand: part.timedDoses(runs, water, stopMade, never) } };
    },
  },
  {
    error: 'the override waits for the dose float',
    unit: 'u3',
    breaks: 'dosing (timed)',
    fault: 'dose float stuck down',
    spoil: (r) => {
      const { controlLive, doseMade, overrideMade, stopMade } = r.wiring;
      const runs = all(controlLive, is('timerClock', 'keeping'));
      return { parts: { doseDemand: part.timedDoses(runs, all(runs, stopMade, doseMade), stopMade, overrideMade) } };
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

export const POWER_ERRORS: readonly WiringError[] = [...BREAKERS, ...DOSING, ...MOTORS];
