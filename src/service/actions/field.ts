/** At the field: spray heads that are seen to throw, buried tubing that only a gauge tells of, and the ground over both. */
import type { UnitSpec } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { LiveFacts } from '../facts.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import { byHand, inHand } from './pumping.ts';
import { actionsAt, conditionOf, good, mendsAt, off, plain } from './shared.ts';

const at = actionsAt('spray-field');
/** Nobody opens a line that a timer may fill. */
const mend = mendsAt('spray-field', { lockOut: 'pumpBreaker' });

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

/** From here on a head or a stretch of tubing without water stands out to the eye, as a share of all openings (convention). */
const MISSED = 0.85;

/** What the heads do: a broken one shows first, whatever the others still throw. */
function lookAtHeads(d: Doing): void {
  const kPa = d.read().headPressure_kPa;
  const { fieldBreak_m, openingsLeft } = conditionOf(d);
  d.learn(headsSeen(d));
  if (kPa <= 1) d.note(say('note.spray'), say('reading.heads-down'));
  else if (fieldBreak_m > 0) d.note(say('note.spray'), say('reading.head-geyser'), off('remark.head-geyser'));
  else if (openingsLeft < MISSED) d.note(say('note.spray'), say('reading.head-dry'), off('remark.head-dry'));
  else if (isWeak(d, kPa)) d.note(say('note.spray'), say('reading.spray-weak'), off('remark.spray-weak'));
  else d.note(say('note.spray'), say('reading.spray-full'));
}

/** What is wet underfoot, and where. */
function walkField(d: Doing): void {
  const { fieldBreak_m, lineBreak_m, lowOutlet_m, soilTakes } = conditionOf(d);
  const broken = sprays(d.unit.spec) ? 'reading.head-off' : 'reading.wet-over-lateral';
  const found = [
    ...(lineBreak_m > 0 ? ['reading.wet-over-line'] : []),
    ...(fieldBreak_m > 0 ? [broken] : []),
    ...(lowOutlet_m > 0 ? ['reading.wet-at-low-end'] : []),
    ...(soilTakes < 0.5 ? ['reading.ponding'] : []),
  ];
  if (found.length === 0) d.note(say('note.ground'), say('reading.ground-firm'), good('remark.ordinary'));
  for (const words of found) d.note(say('note.ground'), say(words), off('remark.wet-ground'));
}

function inspectOpenings(d: Doing): void {
  const free = conditionOf(d).openingsLeft > MISSED;
  d.note(
    say('note.openings'),
    say(free ? 'reading.openings-free' : 'reading.openings-slimed'),
    free ? good('remark.ordinary') : off('remark.openings'),
  );
}

/** Each zone's gauge in one run: a valve that stays shut leaves its own at nothing. */
function checkZones(d: Doing): void {
  inHand(d, 60, () => {
    if (!d.unit.control.outputs.pumpRuns) {
      d.note(say('note.zones'), say('reading.pump-not-running'));
      return;
    }
    const kPa = gauge(d);
    const shut = conditionOf(d).zonesOpen < 1;
    const both = isWeak(d, kPa) ? off('remark.spray-weak') : good('remark.ordinary');
    d.note(
      say('note.zones'),
      say(shut ? 'reading.zone-shut' : 'reading.zones-both', { p: quantity('pressure_kPa', kPa, 10) }),
      shut ? off('remark.zone-valve') : both,
    );
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
  at('look-at-field', 'look', 1, lookAtHeads, { handsOff: true, fits: sprays }),
  at('walk-field', 'look', 8, walkField, { handsOff: true }),
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
  at('check-zones', 'measure', 8, checkZones, { ...byHand(60), fits: drips }),
  at('inspect-openings', 'look', 10, inspectOpenings, { lockOut: 'pumpBreaker' }),
  mend('clean-openings', 25),
  mend('renew-head', 25, { cost_usd: 28, load: 'field-parts', fits: sprays }),
  mend('mend-lateral', 40, { cost_usd: 15, load: 'field-parts', fits: drips }),
  mend('renew-zone-valve', 30, { cost_usd: 65, load: 'field-parts', fits: drips }),
  mend('mend-discharge-line', 90, { cost_usd: 40, load: 'field-parts' }),
  mendsAt('spray-field')('rest-field', 15),
];
