/** At the panel: what can be read behind its window and worked by hand. */
import { BREAKERS, type BreakerName } from '../../control/index.ts';
import type { DosingSpec, UnitSpec } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { quantity, say } from '../message.ts';
import { headsSeen } from './field.ts';
import { actionsAt, good, lampWords, leverFacts, leverOf, leverWords, off, plain, resetPanel } from './shared.ts';

const at = actionsAt('panel');

function breakerActions(breaker: BreakerName): ActionDef[] {
  const circuit = say(`circuit.${breaker}`);
  const control = `breaker-${breaker.replace('Breaker', '')}`;
  const locked: ActionDef['hindered'] = (person) => (person.locks.has(breaker) ? say('why.locked') : undefined);
  const lever = (way: 'on' | 'off'): ActionDef =>
    at(
      `breaker-${way}:${breaker}`,
      'operate',
      0.2,
      (d) => {
        d.unit.send(`${breaker}.${way}`);
        d.learn(leverFacts(d));
        d.note(say('note.lever', { circuit }), say(`lever.${leverOf(d, breaker)}`));
      },
      { label: say(`act.breaker-${way}`, { circuit }), control, handsOff: true, hindered: locked },
    );
  return [
    lever('off'),
    lever('on'),
    at(
      `lock-out:${breaker}`,
      'operate',
      4,
      (d) => {
        d.unit.send(`${breaker}.off`);
        d.person.locks.add(breaker);
        d.learn(leverFacts(d));
        d.note(say('note.lock-out', { circuit }), say('reading.dead'), plain('remark.other-circuits-live'));
      },
      { label: say('act.lock-out', { circuit }), control, hindered: locked },
    ),
    at(
      `unlock:${breaker}`,
      'operate',
      1,
      (d) => {
        d.person.locks.delete(breaker);
        d.note(say('note.unlock', { circuit }), say('reading.lock-off'));
      },
      {
        label: say('act.unlock', { circuit }),
        control,
        hindered: (person) => (person.locks.has(breaker) ? undefined : say('why.not-locked')),
      },
    ),
  ];
}

function selectorTo(way: 'hand' | 'off' | 'auto'): ActionDef {
  return at(
    `selector-${way}`,
    'operate',
    0.3,
    (d) => {
      d.unit.send(`selector.${way}`);
      d.wait(10);
      const runs = d.read().control.outputs.pumpRuns;
      d.learn({ selector: way, pumpRuns: runs, ...headsSeen(d) });
      d.note(
        say('note.selector'),
        say(`reading.selector-${way}`, { pump: say(runs ? 'word.pump-runs' : 'word.pump-still') }),
      );
    },
    { control: 'selector', inner_s: 10 },
  );
}

function dosesBy(...kinds: readonly DosingSpec['kind'][]): (spec: UnitSpec) => boolean {
  return (spec) => kinds.includes(spec.panel.dosing.kind);
}

export const PANEL_ACTIONS: readonly ActionDef[] = [
  at(
    'read-panel',
    'look',
    1,
    (d) => {
      const selector = d.unit.control.regions.selector as 'hand' | 'off' | 'auto';
      d.learn({ ...leverFacts(d), selector });
      d.note(say('note.breakers'), leverWords(d));
      d.note(
        say('note.selector'),
        say(`reading.selector-at-${selector}`),
        selector === 'auto' ? undefined : off('remark.not-auto'),
      );
    },
    { handsOff: true },
  ),
  at(
    'read-timer',
    'look',
    1,
    (d) => {
      if (d.unit.registers.clockStopped_s >= 0) {
        d.note(say('note.timer'), say('reading.clock-stands'), off('remark.clock-wrong'));
        return;
      }
      const ahead = d.unit.clockAhead();
      d.learn({ clockAhead_s: ahead });
      const panel = (((d.read().t + ahead) % 86_400) + 86_400) % 86_400;
      const wrong = Math.abs(ahead) > 300;
      d.note(
        say('note.timer'),
        say('reading.clock', { clock: quantity('clock_s', panel, 60) }),
        wrong ? off('remark.clock-wrong') : good('remark.clock-right'),
      );
    },
    { handsOff: true, control: 'timer', fits: dosesBy('night') },
  ),
  at(
    'read-counters',
    'look',
    1,
    (d) => {
      const counters = { pumpHours: d.read().pumpRun_s / 3600, pumpCycles: d.unit.registers.pumpCycles };
      d.learn({ counters });
      d.note(
        say('note.counters'),
        say('reading.counters', {
          hours: quantity('duration_h', counters.pumpHours, 0.1),
          cycles: quantity('count', counters.pumpCycles, 1),
        }),
      );
    },
    { handsOff: true, fits: dosesBy('night', 'timed') },
  ),
  at(
    'watch-panel',
    'look',
    5,
    (d) => d.note(say('note.watch', { minutes: quantity('duration_min', 5, 1) }), lampWords(d)),
    { handsOff: true },
  ),
  at(
    'press-silence',
    'operate',
    0.2,
    (d) => {
      d.unit.send('silence.pressed');
      d.note(say('note.silence'), lampWords(d));
    },
    { handsOff: true, control: 'silence' },
  ),
  at(
    'press-test',
    'operate',
    0.5,
    (d) => {
      d.unit.send('test.pressed');
      d.wait(5);
      const { buzzer } = d.unit.control.outputs;
      const dark = darkLamps(d);
      d.unit.send('test.released');
      const lit = dark.length === 0;
      const one = dark.length === 1 && d.unit.spec.panel.lamps !== 'one';
      d.note(
        say('note.test'),
        one
          ? say(`reading.test-one-${buzzer ? 'buzzer' : 'mute'}`, { lamp: say(`part.${dark[0]}`) })
          : say(`reading.test-${lit ? 'lamp' : 'dark'}-${buzzer ? 'buzzer' : 'mute'}`),
        lit && buzzer ? good('remark.test-good') : off('remark.test-bad'),
      );
    },
    { handsOff: true, control: 'test', inner_s: 5 },
  ),
  ...BREAKERS.flatMap(breakerActions),
  at(
    'reset-panel',
    'operate',
    2,
    (d) => {
      resetPanel(d);
      d.note(say('note.reset'), lampWords(d));
    },
    { handsOff: true, inner_s: 60 },
  ),
  selectorTo('hand'),
  selectorTo('off'),
  selectorTo('auto'),
  at('advance-timer', 'operate', 1, advanceTimer, { control: 'timer', inner_s: 45, fits: dosesBy('night', 'timed') }),
  at(
    'set-timer',
    'operate',
    2,
    (d) => {
      if (d.unit.control.regions.timerClock === 'dead') {
        d.note(say('note.set-timer'), say('reading.clock-stands'), off('remark.clock-wrong'));
        return;
      }
      d.unit.setClock(0);
      d.learn({ clockAhead_s: 0 });
      d.note(say('note.set-timer'), say('reading.clock-set'));
    },
    { control: 'timer', fits: dosesBy('night') },
  ),
];

/** The panel's lamps that do not burn now. */
function darkLamps(d: Doing): readonly string[] {
  const { lamp, airLamp, waterLamp } = d.unit.control.outputs;
  const burns = d.unit.spec.panel.lamps === 'one' ? { lamp } : { airLamp, waterLamp };
  return Object.entries(burns).flatMap(([id, lit]) => (lit ? [] : [id]));
}

const DOSE_FLOATS = ['stopFloat', 'doseFloat'] as const;

/**
 * Turns the dial to a start by hand, sees what the pump does, and turns it back to the time of day. Under low water no dose is
 * due: with the pump tank open the floats that would hold it back are tied up meanwhile (common practice, no source).
 */
function advanceTimer(d: Doing): void {
  const { regions } = d.unit.control;
  const tied = d.person.lids.has('pump') ? DOSE_FLOATS.filter((float) => regions[float] === 'down') : [];
  for (const float of tied) d.unit.send(`${float}.lifted`);
  d.unit.send('timer.start');
  d.wait(45);
  const { pumpRuns } = d.read().control.outputs;
  d.learn({ pumpRuns, ...headsSeen(d) });
  for (const float of tied) d.unit.send(`${float}.released`);
  if (tied.length > 0) d.unit.follow();
  const reading = say(pumpRuns ? 'reading.dose-starts' : 'reading.dose-does-not-start');
  d.note(say('note.advance-timer'), tied.length > 0 ? say('reading.floats-tied', { reading }) : reading);
}
