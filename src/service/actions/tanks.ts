/** At the open lids: surfaces, levels, floats, pump. */
import { FLOATS, type FloatName } from '../../control/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { FloatPosition, LiveFacts } from '../facts.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import type { LidId, Place } from '../person.ts';
import { good, off, plain } from './shared.ts';

type Make = (
  place: Place,
) => (
  id: string,
  group: ActionDef['group'],
  minutes: number,
  perform: (d: Doing) => void,
  more?: Partial<ActionDef>,
) => ActionDef;

const at: Make =
  (place) =>
  (id, group, minutes, perform, more = {}) => ({
    id,
    place,
    group,
    label: say(`act.${id}`),
    minutes,
    perform,
    ...more,
  });

const LID_PLACES: Readonly<Record<LidId, Place>> = {
  trash: 'trash-tank',
  aeration: 'aeration',
  riser: 'disinfection',
  pump: 'pump-tank',
};

function lidActions(lid: LidId): ActionDef[] {
  const make = at(LID_PLACES[lid]);
  const name = say(`lid.${lid}`);
  return [
    make(
      `open-lid:${lid}`,
      'operate',
      3,
      (d) => {
        d.person.lids.add(lid);
        d.note(say('note.lid', { lid: name }), say('reading.lid-off'), plain('remark.guard-lid'));
      },
      {
        label: say('act.open-lid', { lid: name }),
        hindered: (person) => (person.lids.has(lid) ? say('why.lid-open') : undefined),
      },
    ),
    make(
      `close-lid:${lid}`,
      'operate',
      2,
      (d) => {
        d.person.lids.delete(lid);
        d.note(say('note.lid', { lid: name }), say('reading.lid-on'));
      },
      {
        label: say('act.close-lid', { lid: name }),
        hindered: (person) => (person.lids.has(lid) ? undefined : say('why.lid-closed')),
      },
    ),
  ];
}

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
  const at = (f: FloatName) => floats[f].makes_m;
  if (height >= at('highWaterFloat')) return say('word.over-high-water');
  if (height >= at('overrideFloat')) return say('word.over-override');
  return say(height >= at('doseFloat') ? 'word.between' : 'word.low');
}

function lookIntoPumpTank(d: Doing): void {
  const now = d.read();
  const positions = Object.fromEntries(FLOATS.map((f) => [`float.${f}`, floatPosition(d, f)])) as LiveFacts;
  d.learn({ pumpTankLevel_m: now.flows.pump_m, pumpRuns: now.control.outputs.pumpRuns, ...positions });
  d.note(
    say('note.pump-tank'),
    say('reading.pump-tank', {
      level: levelWords(d),
      pump: say(now.control.outputs.pumpRuns ? 'word.pump-runs' : 'word.pump-still'),
    }),
  );
  for (const float of FLOATS) {
    const position = floatPosition(d, float);
    if (position !== 'held-down' && position !== 'held-up') continue;
    d.note(say('note.float', { float: say(`float.${float}`) }), say(`reading.${position}`), off('remark.cord'));
  }
}

/**
 * Lifts a float and holds it while one looks and listens; lamp and pump show whether its contact works. A float that
 * already floats is only tipped a little further: nothing new comes of it.
 */
function liftFloat(float: FloatName): ActionDef {
  const name = say(`float.${float}`);
  return at('pump-tank')(
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
      d.learn({ pumpRuns, headPressure_kPa: now.headPressure_kPa });
      if (was === 'down') {
        d.unit.send(`${float}.released`);
        d.unit.follow();
      }
      const alarm = !lamp ? 'word.lamp-dark' : litBefore ? 'word.lamp-lit-before' : 'word.lamp-lights';
      const held = was === 'heldDown';
      d.note(
        say('note.lift', { float: name }),
        held
          ? say('reading.wont-rise')
          : say('reading.lifted', { pump: say(pumpRuns ? 'word.pump-runs' : 'word.pump-still'), alarm: say(alarm) }),
        held ? off('remark.cord') : undefined,
      );
    },
    {
      label: say('act.lift-float', { float: name }),
      needs: { lid: 'pump' },
      control: controlOf(float),
      inner_s: 15,
    },
  );
}

function controlOf(float: FloatName): string {
  return {
    stopFloat: 'float-stop',
    doseFloat: 'float-dose',
    overrideFloat: 'float-override',
    highWaterFloat: 'float-high-water',
  }[float];
}

function floatMends(float: FloatName): ActionDef[] {
  const name = say(`float.${float}`);
  const mend = (id: string, minutes: number, more: Partial<ActionDef>): ActionDef =>
    at('pump-tank')(
      `${id}:${float}`,
      'mend',
      minutes,
      (d) => {
        d.learn({ [`float.${float}`]: floatPosition(d, float) });
        d.note(say('note.mended'), say(`reading.${id}`, { float: name }));
      },
      {
        label: say(`act.${id}`, { float: name }),
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
  d.learn({ pumpTankLevel_m: after.flows.pump_m, headPressure_kPa: after.headPressure_kPa });
  d.note(
    say('note.draw-down'),
    say('reading.flow', { q: quantity('waterFlow_Ls', read, 0.01) }),
    read > 0.7 ? good('remark.draw-down-good') : off('remark.draw-down-low'),
  );
}

const trash = at('trash-tank');
const aeration = at('aeration');
const clarifier = at('clarifier');
const riser = at('disinfection');
const pump = at('pump-tank');

export const TANK_ACTIONS: readonly ActionDef[] = [
  ...(['trash', 'aeration', 'riser', 'pump'] as const).flatMap(lidActions),
  trash(
    'look-into-trash-tank',
    'look',
    1,
    (d) => {
      const now = d.read();
      const above = now.flows.trash_m - d.unit.spec.plant.trash.outlet_m;
      d.learn({ trashLevel_m: now.flows.trash_m });
      d.note(
        say('note.trash-tank'),
        say(above > 0.05 ? 'reading.backed-up' : 'reading.at-outlet'),
        above > 0.05 ? off('remark.backed-up') : good('remark.ordinary'),
      );
    },
    { needs: { lid: 'trash' } },
  ),
  aeration(
    'look-into-aeration',
    'look',
    1,
    (d) => {
      const now = d.read();
      const air = now.flows.air.diffuser_Lmin;
      d.learn({ bubbles_Lmin: air, aerationLevel_m: now.flows.aeration_m, hoursWithoutOxygen: now.hoursWithoutOxygen });
      const state = air < 1 ? 'still' : air < 45 ? 'weak-bubbles' : 'bubbles';
      d.note(
        say('note.aeration'),
        say(`reading.${state}`),
        air < 45 ? off('remark.too-little-air') : good('remark.ordinary'),
      );
      if (now.hoursWithoutOxygen > 10)
        d.note(say('note.liquor'), say('reading.liquor-grey'), off('remark.without-oxygen'));
    },
    { needs: { lid: 'aeration' } },
  ),
  aeration(
    'measure-oxygen',
    'measure',
    4,
    (d) => {
      const oxygen = d.measure(INSTRUMENTS.oxygen_mgL, d.read().oxygen_mgL);
      d.learn({ oxygen_mgL: oxygen });
      d.note(
        say('note.oxygen'),
        say('reading.oxygen', { c: quantity('concentration_mgL', oxygen, 0.1) }),
        oxygen < 2 ? off('remark.oxygen-want') : good('remark.oxygen-want'),
      );
    },
    { needs: { lid: 'aeration' } },
  ),
  clarifier(
    'look-into-clarifier',
    'look',
    1,
    (d) => {
      const now = d.read();
      d.learn({ aerationLevel_m: now.flows.aeration_m });
      const above = now.flows.aeration_m - d.unit.spec.plant.aeration.outlet_m;
      d.note(
        say('note.clarifier'),
        say(above > 0.05 ? 'reading.backed-up' : 'reading.at-outlet'),
        above > 0.05 ? off('remark.backed-up') : good('remark.ordinary'),
      );
    },
    { needs: { lid: 'aeration' } },
  ),
  riser(
    'look-into-riser',
    'look',
    1,
    (d) => {
      const now = d.read();
      const backed = now.flows.pump_m > d.unit.spec.plant.pump.inlet_m + 0.02;
      d.learn({ riserLevel_m: Math.max(now.flows.pump_m, d.unit.spec.plant.pump.inlet_m) });
      d.note(
        say('note.riser'),
        say(backed ? 'reading.backed-up' : 'reading.at-outlet'),
        backed ? off('remark.backed-up') : good('remark.ordinary'),
      );
    },
    { needs: { lid: 'riser' } },
  ),
  pump('look-into-pump-tank', 'look', 1, lookIntoPumpTank, { needs: { lid: 'pump' } }),
  pump(
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
  pump('draw-down', 'measure', 6, drawDown, {
    needs: { lid: 'pump' },
    inner_s: 180,
    hindered: (person) => (person.locks.has('pumpBreaker') ? say('why.locked') : undefined),
  }),
  ...FLOATS.map(liftFloat),
  ...FLOATS.flatMap(floatMends),
  pump('replace-pump', 'mend', 50, (d) => d.note(say('note.mended'), say('reading.replace-pump')), {
    cost_usd: 430,
    load: 'pump',
    needs: { lid: 'pump' },
    lockOut: 'pumpBreaker',
  }),
];
