import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { CurveId } from '../../src/calls/curves.ts';
import type { Flag } from '../../src/calls/flags.ts';
import { REASONED } from '../../src/calls/guide-words.ts';
import type { ScoreLine, SoundCue } from '../../src/calls/index.ts';
import { stepsOf } from '../../src/calls/procedure.ts';
import { faultName, stateCause } from '../../src/calls/session-actions.ts';
import { TEACH } from '../../src/calls/teach-ids.ts';
import { BREAKERS, FLOATS } from '../../src/control/index.ts';
import { FAULTS, PLACED_FAULTS, type ProofId } from '../../src/faults/index.ts';
import type { EffluentColour, FoamKind, OutdoorSmell } from '../../src/plant/index.ts';
import type { Lever } from '../../src/service/facts.ts';
import { ACTIONS, asOn, type BreachId, type LidId, PLACES, say } from '../../src/service/index.ts';
import { gapsOf, speak } from '../../src/words/speak.ts';
import { SPECS } from '../control/panels.ts';
import { coreTexts, ENGLISH, messagesIn, SPANISH, speakAll, TOPICS } from './spoken.ts';
import { u1 } from './units.ts';

const texts: Readonly<Record<string, string>> = ENGLISH.texts;
const spanish: Readonly<Record<string, string>> = SPANISH.texts;

/** The members of a union of ids; one that is missing does not compile. */
function idsOf<T extends string>(all: Record<T, true>): string[] {
  return Object.keys(all);
}

const FLAGS = idsOf<Flag['id']>({
  'reset-before-reading': true,
  'reset-twice': true,
  'closed-unwatched': true,
  'closed-needing-visit': true,
  'no-follow-up': true,
  'wrong-urgency': true,
  'needless-visit': true,
  'part-not-on-truck': true,
  'part-not-needed': true,
  'no-suspect': true,
  'repeated-check': true,
  'cause-after-mend': true,
  'wrong-cause': true,
  'unverified-close': true,
  'left-unready': true,
  'record-short': true,
  'household-not-told': true,
  'told-to-open': true,
  'sprayed-uncleared': true,
  'over-limit': true,
  'label-unsigned': true,
});
const PROOFS = idsOf<ProofId>({
  pressure: true,
  watched: true,
  'air-alarm': true,
  'water-alarm': true,
  floats: true,
  dosing: true,
  spray: true,
  clock: true,
  lamp: true,
  disinfects: true,
  stops: true,
});
const BREACHES = idsOf<BreachId>({
  'danger-not-asked': true,
  'householder-opens-panel': true,
  'householder-opens-tank': true,
  'site-not-made-safe': true,
  'not-locked-out': true,
  'lid-left-open': true,
  'chlorine-mixed': true,
});
const SOUNDS = idsOf<SoundCue['id']>({
  buzzer: true,
  hum: true,
  rattle: true,
  hiss: true,
  pump: true,
  spray: true,
  bubbles: true,
  click: true,
  ring: true,
});
const CURVES = idsOf<CurveId>({
  pumpTank_m: true,
  airPressure_kPa: true,
  oxygen_mgL: true,
  residual_mgL: true,
  blanket_m: true,
  trashSludge_m: true,
  trashScum_m: true,
});
const LINES = idsOf<ScoreLine['id']>({
  safety: true,
  readings: true,
  decisions: true,
  cause: true,
  mend: true,
  proof: true,
  decision: true,
  followUp: true,
  record: true,
  cost: true,
  conduct: true,
});
const LIDS = idsOf<LidId>({ trash: true, aeration: true, riser: true, pump: true });
const LEVERS = idsOf<Lever>({ on: true, off: true, tripped: true });
const COLOURS = idsOf<EffluentColour>({
  clear: true,
  cloudy: true,
  tan: true,
  'chocolate-brown': true,
  'grey-brown': true,
  grey: true,
  black: true,
});
const SMELLS = idsOf<OutdoorSmell>({ none: true, earthy: true, musty: true, 'rotten-eggs': true, chlorine: true });
const FOAMS = idsOf<FoamKind>({ none: true, 'crisp-white': true, 'billowing-white': true, 'dark-greasy': true });

/** Endings that the code joins to a prefix by itself. */
const JOINED: Readonly<Record<string, readonly string[]>> = {
  about: [...PLACES, 'ultraviolet', 'drip-field'],
  // Pool tablets are hidden: before a hand goes to them the coach says nothing.
  before: BREACHES.filter((id) => id !== 'chlorine-mixed'),
  breach: BREACHES,
  cause: ['sound', 'something-else'],
  caution: [
    'phone',
    'arrive',
    'open-tank',
    'chlorine',
    'ultraviolet',
    'pump-cord',
    'pressure',
    'spray',
    'live-parts',
    'sewage',
  ],
  circuit: BREAKERS,
  cost: [
    ...['minutes', 'money', 'in-minutes', 'further-drives'],
    ...['untreated', 'undisinfected', 'short-of-air', 'onto-the-ground', 'without-oxygen', 'without-drains'],
  ],
  event: ['lamp', 'pumpRuns', 'compressorRuns']
    .flatMap((o) => [`${o}.on`, `${o}.off`])
    .concat('dialled', Object.values(TEACH), 'teach-next'),
  flag: FLAGS,
  float: FLOATS,
  function: [...new Set(FAULTS.map((f) => f.family))],
  guide: [
    ...REASONED,
    ...['look', 'measure', 'operate', 'mend', 'say'].map((kind) => `kind.${kind}`),
    ...['look', 'measure', 'operate'].map((kind) => `think.${kind}`),
  ],
  hint: ['look', 'measure', 'operate'].map((kind) => `kind.${kind}`),
  hood: ['air-flow', 'liquor', 'cbod5', 'solids', 'ammonia', 'inflow', 'discharge'],
  lever: LEVERS,
  lid: LIDS,
  note: ['advise-save-water', 'advise-keep-away', 'advise-spare-drains', 'advise-run-water'],
  part: [...PLACES, 'drip-field', ...FAULTS.flatMap((f) => f.parts ?? [])],
  proof: PROOFS,
  reading: [
    ...['lamp-on-buzzer', 'lamp-on-quiet', 'lamp-off-buzzer', 'lamp-off-quiet'],
    ...['test-lamp-buzzer', 'test-lamp-mute', 'test-dark-buzzer', 'test-dark-mute', 'test-one-buzzer', 'test-one-mute'],
    ...['hand', 'off', 'auto'].flatMap((way) => [`selector-${way}`, `selector-at-${way}`]),
    ...['filter-clean', 'filter-slimed', 'filter-blocked', 'heads-down', 'spray-weak', 'spray-full'],
    ...['held-down', 'held-up', 'foam-line', 'foam-joint'],
    ...ACTIONS.filter((a) => a.group === 'mend').map((a) => a.id.split(':')[0] ?? ''),
  ],
  remark: ['scant', 'thin', 'satisfactory', 'thick', 'remove'].map((verdict) => `jar-${verdict}`),
  score: [...LINES, 'mend-yes', 'mend-no', 'record-yes', 'record-no', 'followUp-yes', 'followUp-no'],
  series: CURVES,
  shows: FAULTS.map((f) => f.id),
  sound: SOUNDS,
  stage: [...stepsOf('alarm'), 'drive', 'closed'],
  verdict: ['passed', 'failed', 'visit-passed', 'visit-failed', 'unsafe', 'gone-on'],
  word: [
    ...COLOURS,
    ...SMELLS.map((smell) => `smell-${smell}`),
    ...FOAMS.filter((foam) => foam !== 'none').map((foam) => `foam-${foam}`),
    ...['foam-little', 'foam-much', 'foam-to-the-lid'],
  ],
};

/** Prefixes of the core's own messages. `lever.` and `float.` are also names of facts, and come joined. */
const PREFIXES =
  'about|act|before|breach|cause|caution|change|class|circuit|conductor|cost|event|fault|field|flag|follow|function|guide|hint|hood|lesson|lid|load|mark|note|part|proof|reading|record|remark|replay|scene|score|seen|series|shows|sound|terminal|together|told|trouble|truth|urgency|verdict|why|word';
const LITERAL = new RegExp(`'((?:${PREFIXES})\\.[A-Za-z_][\\w.-]*)'`, 'g');

/** Every message id that stands in the core's source as a whole. */
function literals(): Set<string> {
  const files = ['service', 'calls', 'records', 'scene', 'faults', 'unit', 'desk/answer.ts', 'desk/worker.ts'].flatMap(
    (path) =>
      path.endsWith('.ts')
        ? [join('src', path)]
        : readdirSync(join('src', path), { recursive: true, encoding: 'utf8' }).map((f) => join('src', path, f)),
  );
  const source = files.filter((f) => f.endsWith('.ts')).map((f) => readFileSync(f, 'utf8'));
  return new Set(source.flatMap((text) => [...text.matchAll(LITERAL)].map((m) => m[1] ?? '')));
}

/** Texts of the core that are said only where a guide or an expert has its word. */
function expertTexts(): [string, string][] {
  return ['guide', 'hints', 'lesson', 'together'].flatMap((topic) => Object.entries(TOPICS.get(topic) ?? {}));
}

const form = stateCause([], u1());
/** Every action with the questions it has on each of the units. */
const asked = Object.values(SPECS).flatMap((spec) => ACTIONS.map((a) => asOn(spec, a)));
const catalogue = [
  ...[...ACTIONS, form].map((a) => a.label),
  ...[...asked, form].flatMap((a) => (a.form ?? []).map((f) => say(`field.${f.id}`))),
  ...asked.flatMap((a) => (a.form ?? []).flatMap((f) => f.options.map((o) => o.label))),
  ...[...PLACED_FAULTS.keys()].map(faultName),
];
const joined = Object.entries(JOINED).flatMap(([prefix, ids]) => ids.map((id) => `${prefix}.${id}`));

describe('the words of the core', () => {
  it('hold every id that stands in its source', () => {
    expect([...literals()].filter((id) => !(id in texts))).toEqual([]);
    expect(literals().size).toBeGreaterThan(200);
  });

  it('hold every id that its source joins from a prefix and a name', () => {
    expect(joined.filter((id) => !(id in texts))).toEqual([]);
  });

  it('say every label, every answer of a form and every fault', () => {
    expect(() => speakAll(catalogue)).not.toThrow();
    const names = [...PLACED_FAULTS.keys()].map((key) => speak(ENGLISH, 'us', true)(faultName(key)));
    expect(new Set(names).size).toBe(names.length);
  });

  it('have no text that nothing says', () => {
    const said = new Set([...literals(), ...joined, ...messagesIn(catalogue).map((m) => m.id)]);
    const ours = [...coreTexts(), ...expertTexts()].map(([id]) => id);
    expect(ours.length).toBeGreaterThan(400);
    expect(ours.filter((id) => !said.has(id))).toEqual([]);
  });

  it('stand in one topic each: joined, none covers another', () => {
    const all = [...TOPICS.values()].flatMap((texts) => Object.keys(texts));
    expect(all.filter((id, i) => all.indexOf(id) !== i)).toEqual([]);
    expect(new Set(all)).toEqual(new Set(Object.keys(texts)));
  });
});

describe('both languages', () => {
  it('ask for the same values in every text', () => {
    const differing = Object.keys(texts).filter(
      (id) => `${gapsOf(texts[id] ?? '')}` !== `${gapsOf(spanish[id] ?? '')}`,
    );
    expect(differing).toEqual([]);
  });

  it('say it in their own words', () => {
    const ours = coreTexts();
    const same = ours.filter(([id, text]) => text === spanish[id] && /[a-z]{4}/i.test(text.replace(/\{[^}]*\}/g, '')));
    expect(same.map(([id]) => id)).toEqual(['note.selector', 'reading.selector-auto']);
  });

  it.each([
    ['English', ENGLISH, 28, 24],
    ['Spanish', SPANISH, 36, 32],
  ] as const)('keep labels and notes short: %s', (_name, words, longestLabel, longestNote) => {
    const spoken = speak(words, 'us', true);
    const labels = [...ACTIONS, form].map((a) => spoken(a.label));
    expect(labels.filter((label) => label.length > longestLabel)).toEqual([]);
    const names = ['float', 'lid', 'circuit'].flatMap((gap) => (JOINED[gap] ?? []).map((id) => [gap, id] as const));
    const minutes = { minutes: { measure: 'duration_min', value: 5 } } as const;
    const notes = Object.keys(TOPICS.get('notes') ?? {})
      .filter((id) => id.startsWith('note.') && id !== 'note.line')
      .flatMap((id) => {
        const fitting = names.filter(([gap]) => gapsOf(texts[id] ?? '').includes(gap));
        return fitting.length === 0
          ? [spoken(say(id, minutes))]
          : fitting.map(([gap, name]) => spoken(say(id, { [gap]: say(`${gap}.${name}`) })));
      });
    expect(notes.filter((note) => note.length > longestNote)).toEqual([]);
  });

  it('write feedback in at most 60 words, ending in a question, about the work and not the person', () => {
    const PERSON =
      /\b(you|your|yours|usted|ustedes|careless|sloppy|lazy|excellent|perfect|bravo|well done|descuidad[oa]|flojo|excelente|perfecto|bien hecho)\b/i;
    for (const [id, text] of FLAGS.flatMap((flag) =>
      [texts, spanish].map((t) => [flag, t[`flag.${flag}`] ?? ''] as const),
    )) {
      expect(text.split(/\s+/).length, `${id}: ${text}`).toBeLessThanOrEqual(60);
      expect(text, id).toMatch(/\?$/);
      expect(text, id).not.toMatch(PERSON);
    }
  });

  it('defer to local code, the maker and a licence where a life-safety step was skipped', () => {
    for (const id of BREACHES.map((b) => `breach.${b}`)) {
      expect(texts[id], id).toMatch(/local code/i);
      expect(texts[id], id).toMatch(/maker’s instructions/);
      expect(texts[id], id).toMatch(/licensed practice/);
      expect(spanish[id], id).toMatch(/norma local/);
      expect(spanish[id], id).toMatch(/instrucciones del fabricante/);
      expect(spanish[id], id).toMatch(/técnico con licencia/);
    }
  });
});
