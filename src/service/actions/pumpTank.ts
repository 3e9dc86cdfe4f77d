/** At the open pump tank: level, floats, pump. */
import { FLOATS, type FloatName } from '../../control/index.ts';
import { floatsOf } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { FloatPosition, LiveFacts } from '../facts.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { headsSeen } from './field.ts';
import { noteWater } from './looks.ts';
import { soundFlow_Ls } from './pumping.ts';
import { actionsAt, good, hasFloat, mendsAt, off, plain } from './shared.ts';

const at = actionsAt('pump-tank');

/** A float that hangs this far under water that should have lifted it stands out to the eye, m. */
const CLEARLY_m = 0.08;

/** Where a float is to the eye. */
export function floatPosition(d: Doing, float: FloatName): FloatPosition {
  switch (d.unit.control.regions[float]) {
    case 'up':
      return 'up';
    case 'lifted':
      return 'lifted';
    case 'heldUp':
      return 'held-up';
    case 'heldDown':
      return 'held-down';
    default:
      return 'hanging';
  }
}

function levelWords(d: Doing): ReturnType<typeof say> {
  const now = d.read();
  const { floats } = d.unit.spec.panel;
  const height = now.pumpTank_m;
  const reaches = (f: FloatName) => height >= (floats[f]?.makes_m ?? Number.POSITIVE_INFINITY);
  if (reaches('highWaterFloat')) return say('word.over-high-water');
  if (reaches('overrideFloat')) return say('word.over-override');
  return say(reaches('doseFloat') || reaches('startStopFloat') ? 'word.between' : 'word.low');
}

function lookIntoPumpTank(d: Doing): void {
  const now = d.read();
  const floats = floatsOf(d.unit.spec.panel);
  const positions = Object.fromEntries(floats.map((f) => [`float.${f}`, floatPosition(d, f)])) as LiveFacts;
  d.learn({ pumpTankLevel_m: now.flows.pump_m, pumpRuns: now.control.outputs.pumpRuns, ...positions });
  d.learn({ pumpTankColour: noteWater(d, 'pump') });
  d.note(
    say('note.pump-tank'),
    say('reading.pump-tank', {
      level: levelWords(d),
      pump: say(now.control.outputs.pumpRuns ? 'word.pump-runs' : 'word.pump-still'),
    }),
  );
  for (const float of floats) {
    const position = floatPosition(d, float);
    const name = say('note.float', { float: say(`float.${float}`) });
    if (position === 'held-down' || position === 'held-up')
      d.note(name, say(`reading.${position}`), off('remark.cord'));
    if (position === 'hanging' && now.pumpTank_m > d.unit.tether_m(float) + CLEARLY_m) {
      d.note(name, say('reading.hangs-under-water'), off('remark.heavy-float'));
    }
    if (d.unit.has(`float-on-scum:${float}`)) {
      d.note(name, say('reading.rides-on-scum'), off('remark.scum-raft'));
    }
  }
}

/**
 * Lifts a float and holds it while one looks and listens; lamp and pump show whether its contact works. A float that
 * already floats is only tipped a little further: nothing new comes of it.
 */
function liftFloat(float: FloatName): ActionDef {
  const name = say(`float.${float}`);
  return at(
    `lift-float:${float}`,
    'operate',
    1,
    (d) => {
      const was = d.unit.control.regions[float];
      const litBefore = d.unit.control.outputs.lamp;
      if (was === 'down') d.unit.send(`${float}.lifted`);
      d.wait(15);
      const now = d.read();
      const { lamp, pumpRuns } = now.control.outputs;
      d.learn({ pumpRuns, ...headsSeen(d) });
      if (was === 'down') {
        d.unit.send(`${float}.released`);
        d.unit.follow();
      }
      const alarm = !lamp ? 'word.lamp-dark' : litBefore ? 'word.lamp-lit-before' : 'word.lamp-lights';
      const held = was === 'heldDown';
      const unheard = float === 'highWaterFloat' && was === 'down' && !lamp;
      d.note(
        say('note.lift', { float: name }),
        held
          ? say('reading.wont-rise')
          : say('reading.lifted', { pump: say(pumpRuns ? 'word.pump-runs' : 'word.pump-still'), alarm: say(alarm) }),
        held ? off('remark.cord') : unheard ? off('remark.alarm-wanted') : undefined,
      );
      if (d.unit.has(`float-flooded:${float}`)) {
        d.note(say('note.float', { float: name }), say('reading.heavy'), off('remark.heavy-float'));
      }
    },
    {
      label: say('act.lift-float', { float: name }),
      fits: hasFloat(float),
      needs: { lid: 'pump' },
      control: controlOf(float),
      inner_s: 15,
    },
  );
}

function controlOf(float: FloatName): string {
  return {
    redundantOffFloat: 'float-redundant-off',
    stopFloat: 'float-stop',
    startStopFloat: 'float-start-stop',
    doseFloat: 'float-dose',
    overrideFloat: 'float-override',
    highWaterFloat: 'float-high-water',
  }[float];
}

function floatMends(float: FloatName): ActionDef[] {
  const name = say(`float.${float}`);
  const mend = (id: string, minutes: number, more: Partial<ActionDef>): ActionDef =>
    at(
      `${id}:${float}`,
      'mend',
      minutes,
      (d) => {
        d.learn({ [`float.${float}`]: floatPosition(d, float) });
        d.note(say('note.mended'), say(`reading.${id}`, { float: name }));
      },
      {
        label: say(`act.${id}`, { float: name }),
        fits: hasFloat(float),
        needs: { lid: 'pump' },
        lockOut: 'pumpBreaker',
        control: controlOf(float),
        ...more,
      },
    );
  return [mend('free-float', 10, {}), mend('replace-float', 25, { cost_usd: 42, load: 'float' })];
}

/** Level, a timed run in Hand, level again: gallons over minutes. */
function drawDown(d: Doing): void {
  const before = d.read();
  const selector = d.unit.control.regions.selector as 'hand' | 'off' | 'auto';
  d.unit.send('selector.hand');
  d.wait(180);
  const after = d.read();
  d.unit.send(`selector.${selector}`);
  const flow = Math.max(0, (before.pumpTank_m - after.pumpTank_m) * d.unit.spec.plant.pump.area_m2 * 1000) / 180;
  const read = d.measure(INSTRUMENTS.drawDown_Ls, flow);
  d.learn({ pumpTankLevel_m: after.flows.pump_m, ...headsSeen(d) });
  d.note(
    say('note.draw-down'),
    say('reading.flow', { q: quantity('waterFlow_Ls', read, 0.01) }),
    flowRemark(read / soundFlow_Ls(d)),
  );
}

/** By the share of its sound flow that a pump delivers: from 20 % over it something is open that should not be (convention). */
function flowRemark(share: number): Note['remark'] {
  if (share > 1.2) return off('remark.draw-down-high');
  return share > 0.83 ? good('remark.draw-down-good') : off('remark.draw-down-low');
}

/** A garden hose at full bore, and how long it is let run (common practice, no source). */
const HOSE_Ls = 0.6;
const HOSED_min = 15;

/** Brings water to test with where the tank is too low for the pump; what comes meanwhile, comes. */
function hoseIn(d: Doing): void {
  for (let minute = 0; minute < HOSED_min; minute++) {
    d.unit.hose((HOSE_Ls * 60) / 1000);
    d.wait(60);
  }
  const now = d.read();
  d.learn({ pumpTankLevel_m: now.flows.pump_m, pumpRuns: now.control.outputs.pumpRuns, ...headsSeen(d) });
  d.note(
    say('note.hose-in'),
    say('reading.hosed', { v: quantity('volume_m3', (HOSED_min * 60 * HOSE_Ls) / 1000, 0.01), level: levelWords(d) }),
  );
}

export const PUMP_TANK_ACTIONS: readonly ActionDef[] = [
  at('look-into-pump-tank', 'look', 1, lookIntoPumpTank, { needs: { lid: 'pump' } }),
  at(
    'measure-level',
    'measure',
    2,
    (d) => {
      const now = d.read();
      const height = d.measure(INSTRUMENTS.level_m, now.pumpTank_m);
      d.learn({ pumpTankLevel_m: d.unit.spec.plant.pump.floor_m + height });
      const alarm = d.unit.spec.panel.floats.highWaterFloat.makes_m;
      d.note(
        say('note.level'),
        say('reading.level', { h: quantity('length_m', height, 0.005) }),
        height >= alarm
          ? off('remark.over-alarm')
          : plain('remark.under-alarm', { h: quantity('length_m', alarm - height, 0.005) }),
      );
    },
    { needs: { lid: 'pump' } },
  ),
  at('draw-down', 'measure', 6, drawDown, {
    needs: { lid: 'pump' },
    inner_s: 180,
    hindered: (person) => (person.locks.has('pumpBreaker') ? say('why.locked') : undefined),
  }),
  at('hose-in', 'operate', HOSED_min + 3, hoseIn, {
    caution: say('caution.hose'),
    needs: { lid: 'pump' },
    inner_s: HOSED_min * 60,
  }),
  ...FLOATS.map(liftFloat),
  ...FLOATS.flatMap(floatMends),
  mendsAt('pump-tank')('replace-pump', 50, {
    cost_usd: 430,
    load: 'pump',
    needs: { lid: 'pump' },
    lockOut: 'pumpBreaker',
  }),
];
