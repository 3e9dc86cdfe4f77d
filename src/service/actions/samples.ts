/** What is taken out of a chamber to be read: a test strip, a jar of liquor, sludge cores, a probed trash tank. */
import { type EffluentColour, effluentColour, type JarReading, jarVerdict, readJar } from '../../plant/index.ts';
import type { ActionDef, Doing } from '../action.ts';
import type { Core } from '../facts.ts';
import { CORED, JAR_min, PUMP_SLUDGE_m, trashLimit_m } from '../fullness.ts';
import { INSTRUMENTS } from '../instruments.ts';
import { type Message, type Quantity, quantity, say } from '../message.ts';
import type { Note } from '../person.ts';
import { settledWords } from './looks.ts';
import { actionsAt, good, off } from './shared.ts';

/** Least total chlorine where water is sprayed, mg/L. Source: 30 TAC 285.91(4) Table IV. */
const LEAST_mgL = 0.1;
/** Total chlorine that harms turf, mg/L (common practice, no source). */
const HARMS_mgL = 4;

/** A strip's colour, written to the step between its lowest colours. */
export function chlorine(mgL: number): Quantity {
  return quantity('concentration_mgL', mgL, mgL === 0.5 ? 0.5 : 1);
}

/** What one writes beside a strip's total. */
export function residualRemark(total_mgL: number): Note['remark'] {
  if (total_mgL === 0) return off('remark.no-colour');
  const values = { least: quantity('concentration_mgL', LEAST_mgL, 0.1), most: chlorine(HARMS_mgL) };
  return total_mgL > HARMS_mgL ? off('remark.residual', values) : good('remark.residual', values);
}

/** One strip with three pads. What is free is part of the total, whatever an eye makes of two colours. */
function dipStrip(d: Doing): void {
  const { residual_mgL, freeChlorine_mgL, pH } = d.read().water.pump;
  const colour = d.unit.stripColour();
  const total = d.measure(INSTRUMENTS.totalChlorine_mgL, colour * residual_mgL);
  const free = Math.min(total, d.measure(INSTRUMENTS.freeChlorine_mgL, colour * freeChlorine_mgL));
  const acidity = d.measure(INSTRUMENTS.pH, pH);
  d.learn({ residual_mgL: total });
  d.note(
    say('note.strip'),
    say('reading.strip', { total: chlorine(total), free: chlorine(free), pH: acidity }),
    residualRemark(total),
  );
}

/** Colour of the water over the sludge. */
function aboveSludge({ above_mgL }: JarReading): EffluentColour {
  return effluentColour({ solids_mgL: above_mgL, hoursWithoutOxygen: 0 });
}

/** What the notebook says of a jar whose line was read at so many mL. */
export function jarNote(
  jar: JarReading,
  settled_mLL: number,
  liquor: EffluentColour,
  specks = false,
): { readonly reading: Message; readonly remark: Note['remark'] } {
  if (jar.floats) return { reading: say('reading.jar-floats'), remark: off('remark.jar-floats') };
  if (jar.settled_mLL >= 1000) return { reading: say('reading.jar-no-line'), remark: off('remark.jar-remove') };
  const verdict = jarVerdict(settled_mLL);
  const tone = verdict === 'satisfactory' ? 'good' : verdict === 'thick' || verdict === 'remove' ? 'off' : 'plain';
  return {
    reading: say('reading.jar', {
      settled: quantity('share', settled_mLL / 1000, 0.01),
      colour: say(`word.${liquor}`),
      above: settledWords(aboveSludge(jar), specks),
    }),
    remark: { tone, text: say(`remark.jar-${verdict}`) },
  };
}

/** A litre is drawn, then stands still for half an hour, while everything else goes on. */
function settleJar(d: Doing): void {
  const { liquor, sensed } = d.read();
  d.wait(JAR_min * 60);
  const jar = readJar(liquor, JAR_min);
  const settled_mLL = d.measure(INSTRUMENTS.settled_mLL, jar.settled_mLL);
  const { reading, remark } = jarNote(jar, settled_mLL, sensed.liquor, sensed.specks);
  d.learn({
    jar: {
      minutes: JAR_min,
      settled_mLL: jar.settled_mLL >= 1000 ? 1000 : settled_mLL,
      liquor: sensed.liquor,
      above: aboveSludge(jar),
      specks: sensed.specks,
      floats: jar.floats,
    },
  });
  d.note(say('note.jar'), reading, remark);
}

function coreSludge(d: Doing): void {
  const { sediment_m } = d.read();
  const cores = CORED.map((spot): Core => ({ spot, sludge_m: d.measure(INSTRUMENTS.core_m, sediment_m[spot]) }));
  const mean_m = cores.reduce((sum, core) => sum + core.sludge_m, 0) / cores.length;
  d.learn({ pumpTankCores: cores });
  const read = (m: number) => quantity('length_m', m, 0.01);
  const values = Object.fromEntries(cores.map((core) => [core.spot, read(core.sludge_m)]));
  const limit = { limit: read(PUMP_SLUDGE_m) };
  d.note(
    say('note.cores'),
    say('reading.cores', { ...values, mean: read(mean_m) }),
    mean_m < PUMP_SLUDGE_m ? good('remark.cores', limit) : off('remark.cores', limit),
  );
}

function probeTrash(d: Doing): void {
  const now = d.read();
  const sludge_m = d.measure(INSTRUMENTS.core_m, now.trashSludge_m);
  const scum_m = d.measure(INSTRUMENTS.scum_m, now.trashScum_m);
  d.learn({ trashSludge_m: sludge_m, trashScum_m: scum_m });
  const limit_m = trashLimit_m(d.unit.spec);
  const limit = { limit: quantity('length_m', limit_m, 0.01) };
  d.note(
    say('note.trash-solids'),
    say('reading.trash-solids', {
      sludge: quantity('length_m', sludge_m, 0.01),
      scum: quantity('length_m', scum_m, 0.01),
    }),
    sludge_m + scum_m < limit_m ? good('remark.trash-solids', limit) : off('remark.trash-solids', limit),
  );
}

const pumpTank = actionsAt('pump-tank');

export const SAMPLE_ACTIONS: readonly ActionDef[] = [
  pumpTank('dip-strip', 'measure', 3, dipStrip, { needs: { lid: 'pump' }, fits: (spec) => !spec.panel.ultraviolet }),
  actionsAt('aeration')('settle-jar', 'measure', 5 + JAR_min, settleJar, {
    needs: { lid: 'aeration' },
    inner_s: JAR_min * 60,
  }),
  pumpTank('core-sludge', 'measure', 12, coreSludge, { needs: { lid: 'pump' } }),
  actionsAt('trash-tank')('probe-trash', 'measure', 8, probeTrash, { needs: { lid: 'trash' } }),
];
