/** At the compressor and along the air line. */
import type { ActionDef, Doing } from '../action.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, quantity, say } from '../message.ts';
import { compressorHeard, HUMS_LABOURED } from '../perceive.ts';
import { actionsAt, conditionOf, good, mendsAt, off } from './shared.ts';

const at = actionsAt('compressor');
const mend = mendsAt('compressor');

/** A hole this wide can be seen in the tube's wall; a smaller one is only heard or foamed out. */
const VISIBLE_m = 0.004;
const FOAMS_m = 0.0004;
/** A joint open so wide is a tube that has come off. */
const OFF_m = 0.015;
/** Water in a low spot that is heard and felt along the line, m (convention). */
const GURGLES_m = 0.05;
/** Intake loss at which the case gets hot to the hand, kPa per (L/min)^2, and share of its dead head (conventions). */
const HOT_INTAKE = 0.008;
const HOT_LOAD = 0.65;

function runs(d: Doing): boolean {
  return d.unit.control.outputs.compressorRuns;
}

const silent: ActionDef['hindered'] = (_person, unit) =>
  unit.control.outputs.compressorRuns ? undefined : say('why.compressor-silent');

function pressureRemark(d: Doing, kPa: number) {
  const { pressureLow_kPa: low, pressureHigh_kPa: high } = d.unit.spec.panel.label;
  const values = { low: quantity('pressure_kPa', low, 0.5), high: quantity('pressure_kPa', high, 0.5) };
  return kPa >= low && kPa <= high ? good('remark.label-range', values) : off('remark.label-range', values);
}

/** Whether it works against so much, before it or behind it, that its case gets hot. */
function laboured(d: Doing): boolean {
  const load = d.read().airPressure_kPa / d.unit.spec.plant.air.deadHead_kPa;
  return runs(d) && (conditionOf(d).intakeLoss_kPa_per_Lmin2 > HOT_INTAKE || load > HOT_LOAD);
}

function heard(d: Doing): Message {
  const facts = compressorHeard(d.unit, d.read());
  d.learn(facts);
  if (facts.compressorRuns !== true) return say('reading.silent');
  if (facts.rattle) return say('reading.rattles');
  const load = facts.compressorLoad ?? 0;
  return say(load < 0.2 ? 'reading.hums-light' : load > HUMS_LABOURED ? 'reading.hums-laboured' : 'reading.hums-even');
}

/** A tube that has come off its fitting is seen, whatever else was looked for. */
function noteOff(d: Doing): void {
  d.learn({ leak: { where: 'joint', hole_m: conditionOf(d).jointHole_m } });
  d.note(say('note.air-line'), say('reading.line-off'), off('remark.leak'));
}

export const AIR_ACTIONS: readonly ActionDef[] = [
  at('listen-compressor', 'look', 0.5, (d) => d.note(say('note.compressor'), heard(d)), { handsOff: true }),
  at(
    'feel-compressor',
    'look',
    1,
    (d) => {
      const { housing, compressorCutout } = d.unit.control.regions;
      const hot = laboured(d) || (housing === 'hot' && (runs(d) || compressorCutout === 'open'));
      d.note(
        say('note.case'),
        say(hot ? 'reading.case-hot' : runs(d) ? 'reading.case-warm' : 'reading.case-cold'),
        hot ? off('remark.case-hot') : undefined,
      );
    },
    { handsOff: true },
  ),
  at(
    'follow-air-line',
    'look',
    3,
    (d) => {
      const { lineHole_m, lineWater_m, jointHole_m } = conditionOf(d);
      const pinched = d.unit.has('line-pinched');
      if (pinched) d.note(say('note.air-line'), say('reading.line-pinched'), off('remark.filter'));
      if (lineWater_m > GURGLES_m) d.note(say('note.air-line'), say('reading.line-gurgles'), off('remark.filter'));
      if (jointHole_m >= OFF_m) noteOff(d);
      if (lineHole_m >= VISIBLE_m) {
        d.learn({ leak: { where: 'line', hole_m: lineHole_m } });
        d.note(say('note.air-line'), say('reading.line-split'), off('remark.sun-side'));
      } else if (!pinched && jointHole_m < OFF_m) {
        const hiss = runs(d) && (lineHole_m > 0.002 || jointHole_m > 0.002);
        d.note(say('note.air-line'), say(hiss ? 'reading.line-hiss' : 'reading.line-whole'));
      }
    },
    { handsOff: true },
  ),
  at('look-at-intake-filter', 'look', 2, (d) => {
    const dirt = Math.min(1, conditionOf(d).intakeLoss_kPa_per_Lmin2 / 0.03);
    d.learn({ intakeDirt: dirt });
    d.note(
      say('note.intake'),
      say(dirt > 0.3 ? 'reading.intake-clogged' : 'reading.intake-clean'),
      dirt > 0.3 ? off('remark.intake-clogged') : undefined,
    );
  }),
  at(
    'open-compressor',
    'look',
    8,
    (d) => {
      d.person.housingOpen = true;
      const { compressorFlow, compressorPressure } = conditionOf(d);
      const torn = compressorPressure < 0.6;
      const worn = compressorFlow < 0.85;
      d.learn({ rattle: torn });
      d.note(
        say('note.diaphragms'),
        say(torn ? 'reading.diaphragm-torn' : worn ? 'reading.diaphragm-worn' : 'reading.diaphragm-sound'),
        torn || worn ? off('remark.diaphragm') : undefined,
      );
    },
    { lockOut: 'compressorBreaker' },
  ),
  at('tee-pressure', 'measure', 4, (d) => {
    const p = d.measure(INSTRUMENTS.pressure_kPa, d.read().airPressure_kPa);
    d.learn({ airPressure_kPa: p });
    d.note(
      say('note.tee-pressure'),
      say('reading.pressure', { p: quantity('pressure_kPa', p, 0.5) }),
      pressureRemark(d, p),
    );
  }),
  at(
    'dead-head-compressor',
    'measure',
    5,
    (d) => {
      const p = d.measure(INSTRUMENTS.pressure_kPa, d.read().deadHead_kPa);
      const sound = p > 0.8 * d.unit.spec.plant.air.deadHead_kPa;
      d.note(
        say('note.dead-head'),
        say('reading.pressure', { p: quantity('pressure_kPa', p, 0.5) }),
        sound ? good('remark.dead-head-good') : off('remark.dead-head-low'),
      );
    },
    { hindered: silent },
  ),
  at(
    'soap-air-line',
    'measure',
    6,
    (d) => {
      const { lineHole_m, jointHole_m } = conditionOf(d);
      if (jointHole_m >= OFF_m) {
        noteOff(d);
        return;
      }
      const where = lineHole_m > FOAMS_m ? 'line' : jointHole_m > FOAMS_m ? 'joint' : undefined;
      if (where) d.learn({ leak: { where, hole_m: Math.max(lineHole_m, jointHole_m) }, foam: true });
      d.note(
        say('note.soap'),
        say(where ? `reading.foam-${where}` : 'reading.no-foam'),
        where ? off('remark.leak') : undefined,
      );
    },
    { hindered: silent },
  ),
  mend('splice-air-line', 15, { cost_usd: 6, load: 'tubing' }),
  mend('tighten-air-joints', 8, { cost_usd: 2 }),
  mend('clamp-air-line', 4, { cost_usd: 2 }),
  mend('straighten-air-line', 6),
  mend('drain-air-line', 30, { cost_usd: 4, lockOut: 'compressorBreaker' }),
  mend('clean-intake-filter', 8),
  mend('renew-diaphragms', 40, { cost_usd: 48, load: 'diaphragm-kit', lockOut: 'compressorBreaker' }),
  mend('replace-compressor', 60, { cost_usd: 380, load: 'compressor', lockOut: 'compressorBreaker' }),
  at(
    'make-air-alarm',
    'operate',
    3,
    (d) => {
      const was = d.unit.control.regions.compressorBreaker;
      const litBefore = d.unit.control.outputs.lamp;
      d.unit.send('compressorBreaker.off');
      d.wait(90);
      const { lamp, buzzer } = d.unit.control.outputs;
      if (was === 'on') d.unit.send('compressorBreaker.on');
      d.wait(30);
      if (litBefore) {
        d.note(say('note.air-alarm'), say('word.lamp-lit-before'), off('remark.reset-first'));
        return;
      }
      d.note(
        say('note.air-alarm'),
        say(lamp ? (buzzer ? 'reading.alarm-made' : 'reading.alarm-lamp-only') : 'reading.alarm-not-made'),
        lamp ? good('remark.alarm-proved') : off('remark.alarm-fails'),
      );
    },
    {
      inner_s: 120,
      hindered: (person, unit) => (person.locks.has('compressorBreaker') ? say('why.locked') : silent(person, unit)),
    },
  ),
];
