/** At the open pump tank: what holds the floats, how they hang, their splices and the pump's cord. */
import { FLOATS, type FloatName } from '../../control/index.ts';
import { floatsOf } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { actionsAt, good, hasFloat, mendsAt, off } from './shared.ts';

const at = actionsAt('pump-tank');
const mend = mendsAt('pump-tank', { needs: { lid: 'pump' }, lockOut: 'pumpBreaker' });

/** Splices that were pulled up and opened, and the pump's cord along its length. */
function lookAtSplices(d: Doing): void {
  const { regions } = d.unit.control;
  const corroded = floatsOf(d.unit.spec.panel).filter((f) => regions[`${f}Wire`] === 'open');
  for (const f of corroded) {
    d.note(say('note.splice', { float: say(`float.${f}`) }), say('reading.splice-green'), off('remark.splice'));
  }
  const chafed = regions.motorLead === 'shorted';
  if (chafed) d.note(say('note.pump-cord'), say('reading.cord-chafed'), off('remark.cord-chafed'));
  if (corroded.length === 0 && !chafed) d.note(say('note.splices'), say('reading.splices-sound'));
}

/** Height at which the high-water float would make, from its tether and its reach. */
function measureTethers(d: Doing): void {
  const { panel, plant } = d.unit.spec;
  const height = d.measure(INSTRUMENTS.level_m, d.unit.tether_m('highWaterFloat'));
  const label = quantity('length_m', panel.floats.highWaterFloat.makes_m, 0.01);
  d.note(
    say('note.tether'),
    say('reading.level', { h: quantity('length_m', height, 0.005) }),
    Math.abs(height - panel.floats.highWaterFloat.makes_m) < 0.03
      ? good('remark.tether', { label })
      : off(height > plant.pump.inlet_m - plant.pump.floor_m ? 'remark.tether-over-inlet' : 'remark.tether', { label }),
  );
}

const redoSplice = (float: FloatName): ActionDef =>
  mend(`redo-splice:${float}`, 20, {
    label: say('act.redo-splice', { float: say(`float.${float}`) }),
    cost_usd: 6,
    fits: hasFloat(float),
  });

export const FLOAT_WIRE_ACTIONS: readonly ActionDef[] = [
  at('look-at-splices', 'look', 6, lookAtSplices, { needs: { lid: 'pump' }, lockOut: 'pumpBreaker' }),
  at('measure-tethers', 'measure', 4, measureTethers, { needs: { lid: 'pump' } }),
  mend('untangle-tethers', 10),
  mend('skim-pump-tank', 20),
  mend('set-tether', 8),
  ...FLOATS.map(redoSplice),
  mend('renew-pump-cord', 35, { cost_usd: 60 }),
];
