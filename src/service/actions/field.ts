/** At the field: spray heads that are seen to throw, or buried tubing that only a gauge tells of. */
import type { UnitSpec } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { LiveFacts } from '../facts.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { actionsAt, good, off, plain } from './shared.ts';

const at = actionsAt('spray-field');

const sprays = (spec: UnitSpec): boolean => spec.plant.discharge.kind === 'spray';
const drips = (spec: UnitSpec): boolean => spec.plant.discharge.kind === 'drip';

const whilePumping: Pick<ActionDef, 'hindered'> = {
  hindered: (_person, unit) => (unit.control.outputs.pumpRuns ? undefined : say('why.not-spraying')),
};

/** What the heads show to whoever is on the site. Buried tubing shows nothing. */
export function headsSeen(d: Doing): LiveFacts {
  return sprays(d.unit.spec) ? { headPressure_kPa: d.read().headPressure_kPa } : {};
}

/** Less than half the design pressure is weak, at heads and emitters alike. */
function isWeak(d: Doing, kPa: number): boolean {
  return kPa < 0.5 * d.unit.spec.plant.discharge.designPressure_kPa;
}

function gauge(d: Doing): number {
  const kPa = d.measure(INSTRUMENTS.headPressure_kPa, d.read().headPressure_kPa);
  d.learn({ headPressure_kPa: kPa });
  return kPa;
}

function designRemark(d: Doing) {
  return plain('remark.head-design', {
    p: quantity('pressure_kPa', d.unit.spec.plant.discharge.designPressure_kPa, 10),
  });
}

export const FIELD_ACTIONS: readonly ActionDef[] = [
  at(
    'clear-field',
    'operate',
    2,
    (d) => {
      d.person.fieldClear = true;
      d.note(say('note.field'), say('reading.field-clear'));
    },
    { handsOff: true, fits: sprays },
  ),
  at(
    'look-at-field',
    'look',
    1,
    (d) => {
      const kPa = d.read().headPressure_kPa;
      d.learn(headsSeen(d));
      const words = kPa <= 1 ? 'heads-down' : isWeak(d, kPa) ? 'spray-weak' : 'spray-full';
      d.note(say('note.spray'), say(`reading.${words}`), words === 'spray-weak' ? off('remark.spray-weak') : undefined);
    },
    { handsOff: true, fits: sprays },
  ),
  at(
    'head-pressure',
    'measure',
    5,
    (d) => {
      const p = quantity('pressure_kPa', gauge(d), 10);
      d.note(say('note.head-pressure'), say('reading.pressure', { p }), designRemark(d));
    },
    { ...whilePumping, fits: sprays },
  ),
  at(
    'zone-pressure',
    'measure',
    5,
    (d) => {
      const kPa = gauge(d);
      const weak = isWeak(d, kPa);
      d.note(
        say('note.zone-pressure'),
        say(weak ? 'reading.zone-low' : 'reading.zone-full', { p: quantity('pressure_kPa', kPa, 10) }),
        weak ? off('remark.spray-weak') : good('remark.ordinary'),
      );
    },
    { ...whilePumping, fits: drips },
  ),
];
