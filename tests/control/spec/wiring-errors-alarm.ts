/** Wiring errors of the alarm circuit. */
import type { Panel } from '../../../src/control/index.ts';
import { all, any, is, none } from '../../../src/control/logic.ts';
import * as part from '../../../src/control/parts.ts';
import { rewired, withStates } from './spoiled.ts';
import type { WiringError } from './wiring-error.ts';

const never = any();
const held = is('test', 'held');
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

export const ALARM_ERRORS: readonly WiringError[] = [...ALARM, ...RESET, ...DIALLER];
