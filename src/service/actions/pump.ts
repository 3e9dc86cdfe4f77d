/** The effluent pump and its line as far as the disc filter: gauges, what a run shows, what a hand finds, and mends. */
import { linePressures } from '../../plant/index.ts';
import type { UnitSpec } from '../../unit/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { atSelector, byHand, inHand, soundLine } from './pumping.ts';
import { actionsAt, conditionOf, good, mendsAt, off } from './shared.ts';

const at = actionsAt('pump-tank');
const atFilter = actionsAt('disc-filter');
const atPanel = actionsAt('panel');
const PUMP_OUT = { needs: { lid: 'pump' }, lockOut: 'pumpBreaker' } as const;
const mend = mendsAt('pump-tank', PUMP_OUT);

/** Under this a running pump moves no water: a meter of head does not reach the field, kPa. */
const NO_HEAD_kPa = 10;

function running(d: Doing): boolean {
  return d.unit.control.outputs.pumpRuns;
}

function heard(d: Doing): string {
  if (d.unit.control.outputs.pumpStalls) return 'reading.pump-hums';
  if (!running(d)) return 'reading.silent';
  if (d.unit.has('impeller-clogged')) return 'reading.pump-shakes';
  return d.read().linePressure_kPa.shut < NO_HEAD_kPa ? 'reading.pump-runs-light' : 'reading.pump-even';
}

function listenPump(d: Doing): void {
  const sound = inHand(d, 10, () => heard(d));
  const even = sound === 'reading.pump-even';
  d.note(say('note.pump-sound'), say(sound), even ? good('remark.ordinary') : off('remark.pump-sound'));
}

/** The hole squirts back into the tank during a run: what comes out of it tells of the hole and of the pump. */
function lookAtWeepHole(d: Doing): void {
  const seen = inHand(d, 20, () => {
    if (!running(d)) return 'reading.pump-not-running';
    if (conditionOf(d).weepHole < 0.5) return 'reading.hole-dry';
    return d.read().linePressure_kPa.pump < NO_HEAD_kPa ? 'reading.hole-spits' : 'reading.hole-jets';
  });
  const remark = {
    'reading.pump-not-running': undefined,
    'reading.hole-dry': off('remark.hole-dry'),
    'reading.hole-spits': off('remark.hole-spits'),
    'reading.hole-jets': good('remark.ordinary'),
  }[seen];
  d.note(say('note.weep-hole'), say(seen), remark);
}

/** A fall within ten minutes that the tape cannot mistake, m. */
const FALLS_m = 0.015;
/** So far under the float that stops the pump, something else took the water, m. */
const UNDER_STOP_m = 0.03;
const RUN_s = 60;
const LOOK_s = 5;
const REST_s = 600;

function stopBreaks_m({ panel }: UnitSpec): number {
  return (panel.floats.stopFloat ?? panel.floats.startStopFloat)?.breaks_m ?? 0;
}

/** A short run, then the pump is kept at rest: does water come back, does the level go on falling? */
function watchAfterStop(d: Doing): void {
  const low = d.read().pumpTank_m < stopBreaks_m(d.unit.spec) - UNDER_STOP_m;
  inHand(d, RUN_s, () => undefined);
  const seen = atSelector(d, 'off', () => {
    d.wait(LOOK_s);
    if (d.read().flows.returned > 1e-5) return 'reading.runs-back';
    const before_m = d.measure(INSTRUMENTS.level_m, d.read().pumpTank_m);
    d.wait(REST_s);
    const after_m = d.measure(INSTRUMENTS.level_m, d.read().pumpTank_m);
    d.learn({ pumpTankLevel_m: d.unit.spec.plant.pump.floor_m + after_m });
    if (before_m - after_m >= FALLS_m) return 'reading.level-falls';
    return low ? 'reading.level-at-intake' : 'reading.level-holds';
  });
  const holds = seen === 'reading.level-holds';
  d.note(say('note.after-stop'), say(seen), holds ? good('remark.ordinary') : off('remark.after-stop'));
}

/** From a tenth off its sound pressures a pump or its line is not what it was (common practice, no source). */
const FAR = 0.1;
const VERY_FAR = 0.15;

/** Head against a shut valve is the pump's own; running, the line decides. */
function pressureRemark(d: Doing, running_kPa: number, shut_kPa: number): Note['remark'] {
  const sound = linePressures(soundLine(d), d.read().flows.pump_m, 1);
  if (shut_kPa < (1 - FAR) * sound.shut) return off('remark.pump-head-low');
  if (running_kPa > (1 + FAR) * sound.pump) return off('remark.held-back');
  return running_kPa < (1 - VERY_FAR) * sound.pump ? off('remark.pump-run-low') : good('remark.ordinary');
}

function pumpPressure(d: Doing): void {
  inHand(d, 30, () => {
    if (!running(d)) {
      d.note(say('note.pump-pressure'), say('reading.pump-not-running'));
      return;
    }
    const { pump, shut } = d.read().linePressure_kPa;
    const p = d.measure(INSTRUMENTS.headPressure_kPa, pump);
    const against = d.measure(INSTRUMENTS.headPressure_kPa, shut);
    const words = { p: quantity('pressure_kPa', p, 10), shut: quantity('pressure_kPa', against, 10) };
    d.note(say('note.pump-pressure'), say('reading.pump-pressure', words), pressureRemark(d, p, against));
  });
}

/** Clean it when the drop has risen by 5 to 7 psi (common practice, no source). */
const DIRTY_kPa = 35;
/** Less than this before the filter: nothing gets there. */
const ARRIVES_kPa = 20;

function filterPressures(d: Doing): void {
  inHand(d, 30, () => {
    if (!running(d)) {
      d.note(say('note.filter-pressures'), say('reading.pump-not-running'));
      return;
    }
    const { beforeFilter, afterFilter } = d.read().linePressure_kPa;
    const before = d.measure(INSTRUMENTS.headPressure_kPa, beforeFilter);
    const after = d.measure(INSTRUMENTS.headPressure_kPa, afterFilter);
    const words = { before: quantity('pressure_kPa', before, 10), after: quantity('pressure_kPa', after, 10) };
    const dirty = before - after > DIRTY_kPa ? off('remark.filter') : good('remark.filter-drop');
    const remark = before < ARRIVES_kPa ? off('remark.nothing-arrives') : dirty;
    d.note(say('note.filter-pressures'), say('reading.filter-pressures', words), remark);
  });
}

/** Lifted by its rope or its pipe, never by its cord. */
function inspectPump(d: Doing): void {
  const stands = d.unit.control.regions.rotor === 'seized' && !d.unit.stands('capacitor-weak');
  const found = [
    ...(d.unit.has('intake-screened') ? ['reading.screen-slimed'] : []),
    ...(d.unit.has('impeller-clogged') ? ['reading.impeller-debris'] : []),
    ...(d.unit.has('impeller-worn') ? ['reading.impeller-worn'] : []),
    ...(stands ? ['reading.shaft-stands'] : []),
  ];
  if (found.length === 0) d.note(say('note.pump-out'), say('reading.pump-whole'), good('remark.ordinary'));
  for (const words of found) d.note(say('note.pump-out'), say(words), off('remark.pump-out'));
}

function inspectCheckValve(d: Doing): void {
  const { checkFlow, checkHolds } = conditionOf(d);
  if (checkFlow < 0.5) d.note(say('note.check-valve'), say('reading.flap-shut'), off('remark.flap-shut'));
  else if (checkHolds < 0.5) d.note(say('note.check-valve'), say('reading.flap-open'), off('remark.flap-open'));
  else d.note(say('note.check-valve'), say('reading.flap-seats'), good('remark.ordinary'));
}

/** Rated capacitor of the pump's motor, in the panel of our units, uF (convention; half a horsepower takes 30 to 50: common practice, no source). */
const CAPACITOR_uF = 40;
/** What a weak one has left (convention), and from where on it is renewed (common practice, no source). */
const WEAK_SHARE = 0.55;
const RENEW_SHARE = 0.9;

/** A weak capacitor is weak also when the motor happens to start. */
function testCapacitor(d: Doing): void {
  const left = d.unit.stands('capacitor-weak') ? WEAK_SHARE : 1;
  const read = d.measure(INSTRUMENTS.capacitance_uF, left * CAPACITOR_uF);
  const rated = { c: quantity('capacitance_uF', CAPACITOR_uF, 1) };
  d.note(
    say('note.capacitor'),
    say('reading.capacitor', { c: quantity('capacitance_uF', read, 0.1) }),
    read < RENEW_SHARE * CAPACITOR_uF ? off('remark.capacitor', rated) : good('remark.capacitor', rated),
  );
}

export const PUMP_ACTIONS: readonly ActionDef[] = [
  at('listen-pump', 'look', 2, listenPump, { needs: { lid: 'pump' }, ...byHand(10) }),
  at('look-at-weep-hole', 'look', 3, lookAtWeepHole, { needs: { lid: 'pump' }, ...byHand(20) }),
  at('watch-after-stop', 'measure', 14, watchAfterStop, {
    needs: { lid: 'pump' },
    ...byHand(RUN_s + LOOK_s + REST_s),
  }),
  at('pump-pressure', 'measure', 6, pumpPressure, { needs: { lid: 'pump' }, ...byHand(30) }),
  at('inspect-pump', 'look', 25, inspectPump, PUMP_OUT),
  at('inspect-check-valve', 'look', 15, inspectCheckValve, PUMP_OUT),
  mend('renew-impeller', 60, { cost_usd: 95, load: 'pump-parts' }),
  mend('clear-impeller', 35),
  mend('clean-intake-screen', 30),
  mend('clean-check-valve', 20),
  mend('renew-check-valve', 30, { cost_usd: 32, load: 'pump-parts' }),
  mend('clear-weep-hole', 15),
  mend('bleed-pump', 12),
  atFilter('filter-pressures', 'measure', 5, filterPressures, byHand(30)),
  atPanel('test-capacitor', 'measure', 5, testCapacitor, { lockOut: 'pumpBreaker' }),
  mendsAt('panel')('renew-capacitor', 20, { cost_usd: 24, load: 'pump-parts', lockOut: 'pumpBreaker' }),
];
