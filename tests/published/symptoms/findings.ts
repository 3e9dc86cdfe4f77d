/** Words for what is found: alarms, sights, smells, what a check shows, what the state holds. English, in SI. */
import { type Measure, SYMPTOMS, type SymptomId } from '../../../src/service/index.ts';
import { amount, checks, words } from './english.ts';
import type { Finding } from './kind.ts';
import type { Life } from './life.ts';

/** These checks in a row end in a reading with all these words. */
export function shows(acts: readonly string[], ...ids: readonly string[]): Finding {
  return {
    says: `${checks(acts)}: ${ids.map(words).join('; ')}`,
    holds: (life) => ids.every((id) => life.read(acts).words.includes(id)),
  };
}

/** Number that these checks in a row end in; the first of its measure. */
export function numberOf(life: Life, acts: readonly string[], measure: Measure): number {
  return life.read(acts).numbers.find((n) => n.measure === measure)?.value ?? Number.NaN;
}

/** These checks in a row end in a number over or under another; where there is none it is neither. */
export function reads(
  acts: readonly string[],
  measure: Measure,
  { over, under, step = 0.1 }: { readonly over?: number; readonly under?: number; readonly step?: number },
): Finding {
  const bound = (word: string, value: number | undefined) =>
    value === undefined ? [] : [`${word} ${amount({ measure, value, resolution: step })}`];
  return {
    says: `${checks(acts)}: ${[...bound('over', over), ...bound('under', under)].join(', ')}`,
    holds: (life) => {
      const value = numberOf(life, acts, measure);
      return value > (over ?? Number.NEGATIVE_INFINITY) && value < (under ?? Number.POSITIVE_INFINITY);
    },
  };
}

/** Something of the state that no check of ours reads. */
export function state(says: string, holds: (life: Life) => boolean): Finding {
  return { says, holds };
}

/** What a household would tell of, as calls have it. */
export function noticed(symptom: SymptomId): Finding {
  return { says: symptom.replaceAll('-', ' '), holds: ({ unit }) => SYMPTOMS[symptom](unit) };
}

function alarm(kind: string, due: 'highWater.due' | 'lowAir.due'): Finding {
  return {
    says: (life) => `${kind} alarm after ${inWords(life.hours('lamp.on')[0] ?? 0)}`,
    holds: (life) => life.hours(due).length > 0 && life.hours('lamp.on').length > 0,
  };
}

function inWords(hours: number): string {
  return hours < 2 ? `${Math.round(hours * 60)} min` : `${Math.round(hours)} h`;
}

export const WATER_ALARM = alarm('high-water', 'highWater.due');
export const AIR_ALARM = alarm('low-air', 'lowAir.due');

/** Under half of the air or so comes up. */
export const LITTLE_AIR = shows(['look-into-aeration'], 'reading.weak-bubbles');

/** Fainter smells are not noticed. */
const NOTICED = 0.05;

export function smellsOf(kind: 'rotten-eggs' | 'chlorine'): Finding {
  return {
    says: `smells of ${kind.replace('-', ' ')} outdoors`,
    holds: ({ now: { sensed } }) => sensed.outdoors.kind === kind && sensed.outdoors.strength > NOTICED,
  };
}

export const SMELLS_INDOORS_ONLY = state('sewer air indoors, nothing outdoors', ({ now: { sensed } }) => {
  return sensed.indoors.kind === 'sewer-air' && sensed.outdoors.kind === 'none';
});

/** More fecal coliform than is let onto a lawn: 200 per 100 mL (30 TAC 285.91(4)). */
export const GERMS = state('over 200 coliform per 100 mL', ({ now }) => now.water.pump.coliform_per100mL > 200);
