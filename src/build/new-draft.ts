/** What a new call begins with: a property and a moment that can be lived through at once, and all its texts still to write. */
import { ACCOUNT } from '../calls/account.ts';
import type { Draft, Json } from './draft.ts';

const UNSAID: Json = { en: '', es: '' };

export function newDraft(): Draft {
  return {
    version: 1,
    id: '',
    kind: 'alarm',
    title: UNSAID,
    summary: UNSAID,
    lot: UNSAID,
    story: UNSAID,
    unit: 'u1',
    household: 'family-3',
    start: '2031-05-14T16:30',
    history_days: 4,
    temperature_C: 20,
    weather: { cloud: 0.2, rain: 0 },
    seed: 1,
    faults: [],
    report: { said: [UNSAID], silenced: false, noticed: ['lamp-lit'], history: UNSAID, use: UNSAID },
    limits: { minutes: 330, money_usd: 700 },
    pass: 70,
    expected: { decision: 'visit', urgency: ['before-dosing'] },
    solution: [],
  };
}

/** A fault as it is dropped in: a day before the report, as its catalogue entry has it. */
export function newFault(fault: string, part: string | undefined, onset: string): Json {
  return { fault, ...(part === undefined ? {} : { part }), onset };
}

/** An author's account of a fault, all of it still to be told. */
export function newAccount(): Json {
  return Object.fromEntries(ACCOUNT.map((question) => [question, UNSAID]));
}

/** An id made of a title's letters. */
export function idFrom(title: string): string {
  const plain = title
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-+$/g, '');
  return plain.slice(0, 60).replace(/-+$/, '');
}
