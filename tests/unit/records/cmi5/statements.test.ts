/** Sessions told in statements, each held against the rules of cmi5 and of xAPI, as `rules.ts` has them. */
import { describe, expect, it } from 'vitest';
import { type LaunchData, readLaunch, readLaunchData, readPreferences } from '../../../../src/records/cmi5/launch.ts';
import {
  type Before,
  type Cmi5Session,
  ended,
  initialized,
  type Statement,
  terminated,
} from '../../../../src/records/cmi5/statements.ts';
import type { Learnt } from '../../../../src/records/learnt/learnt.ts';
import { learnt, STARTED_ms } from '../taken.ts';
import { broken, RULES, type Session, type Told } from './rules.ts';

const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';
const ACTOR = { objectType: 'Agent', account: { homePage: 'https://platform.example', name: 'learner-1' } };
const QUERY = {
  endpoint: 'https://store.example/xapi',
  fetch: 'https://platform.example/token/1',
  actor: JSON.stringify(ACTOR),
  registration: '3fa85f64-5717-4562-b3fc-2c963f66afa6',
  activityId: 'https://platform.example/activities/1',
};
const TEMPLATE = {
  extensions: { [SESSION]: 'session-1', 'https://platform.example/extra': { a: [1] } },
  contextActivities: {
    grouping: [{ id: 'urn:uuid:47ffc489-efc0-53da-9280-5029b5c8a889' }],
    category: [{ id: 'https://platform.example/category' }],
  },
  language: 'en-US',
};
const FIRST: Before = { completed: false, passed: false };
const UNIT = '47ffc489-efc0-53da-9280-5029b5c8a889';

function sessionOf(data: Partial<LaunchData> = {}): Cmi5Session {
  const launch = readLaunch(new Map(Object.entries(QUERY)));
  const given = { contextTemplate: TEMPLATE, launchMode: 'Normal', moveOn: 'Passed', masteryScore: 0.7, ...data };
  const read = readLaunchData(given);
  if (!launch || !read) throw new Error('no launch');
  return { launch, data: read, activity: UNIT };
}

/** A whole session with one call in it, and what breaks a rule. */
function told(of: Learnt, session = sessionOf(), before = FIRST, earlier: readonly Told[] = []) {
  const { answers, defined } = ended(session, of, before);
  const all = [
    initialized(session, STARTED_ms),
    ...defined,
    ...answers,
    terminated(session, STARTED_ms + 99_000, 99),
  ] as unknown as readonly Told[];
  const { masteryScore, launchMode, contextTemplate } = session.data;
  const given: Session = {
    actor: ACTOR,
    registration: QUERY.registration,
    activityId: QUERY.activityId,
    launchMode,
    contextTemplate,
    earlier,
    ...(masteryScore === undefined ? {} : { masteryScore }),
  };
  const faults = all.flatMap((one, i) => broken(one, given, all.slice(0, i)).map((fault) => `${one.verb.id} ${fault}`));
  const verbs = all.map(({ verb }) => verb.id.replace(/^.*\//, '')).filter((verb) => verb !== 'answered');
  return { all, verbs, faults };
}

const passed = learnt('storm-light', 'graded');
const failed = learnt('sunny-line', 'graded', [{ do: 'ask-danger' }, { do: 'decide-close' }]);
const resultOf = (all: readonly Told[], verb: string) => all.find((one) => one.verb.id.endsWith(verb))?.result;

describe('a session', () => {
  it('with a passed call keeps every rule', () => {
    const { all, verbs, faults } = told(passed);
    expect(faults).toEqual([]);
    expect(verbs).toEqual(['initialized', 'completed', 'passed', 'terminated']);
    expect(resultOf(all, 'passed')).toEqual({
      success: true,
      duration: 'PT1M35.5S',
      score: { scaled: 1, raw: 100, min: 0, max: 100 },
    });
    expect(resultOf(all, 'terminated')).toEqual({ duration: 'PT1M39S' });
  });

  it('with a call that is not passed keeps every rule', () => {
    const { verbs, faults } = told(failed);
    expect(faults).toEqual([]);
    expect(verbs).toEqual(['initialized', 'completed', 'failed', 'terminated']);
  });

  it('gives no score where it would speak against the verdict: points enough, but the cause not found', () => {
    const guessed: Learnt = { ...passed, passed: false, score: 80 };
    const { all, faults } = told(guessed);
    expect(faults).toEqual([]);
    expect(resultOf(all, 'failed')).toEqual({ success: false, duration: 'PT1M35.5S' });
  });

  it('is not passed below the mastery score that the platform asks for, whatever the call’s own mark', () => {
    const { all, verbs, faults } = told({ ...passed, score: 89 }, sessionOf({ masteryScore: 0.9 }));
    expect(faults).toEqual([]);
    expect(verbs).toContain('failed');
    expect(resultOf(all, 'failed')).toMatchObject({ score: { scaled: 0.89 } });
    expect(told({ ...passed, score: 90 }, sessionOf({ masteryScore: 0.9 })).verbs).toContain('passed');
  });

  it('without a mastery score goes by the call’s own verdict, and names none', () => {
    const { all, faults } = told(passed, sessionOf({ masteryScore: undefined }));
    expect(faults).toEqual([]);
    expect(JSON.stringify(all)).not.toContain('masteryscore');
  });

  it('of practice is completed, and not judged', () => {
    const { verbs, faults } = told(learnt('storm-light', 'practice'));
    expect(faults).toEqual([]);
    expect(verbs).toEqual(['initialized', 'completed', 'terminated']);
  });

  it.each(['Browse', 'Review'] as const)('in mode %s tells nothing but its two ends', (launchMode) => {
    const { verbs, all, faults } = told(passed, sessionOf({ launchMode }));
    expect(faults).toEqual([]);
    expect(verbs).toEqual(['initialized', 'terminated']);
    expect(all.length).toBe(2);
  });

  it('after a failed one is not completed again; after a passed one it tells nothing more', () => {
    const first = told(failed);
    const again = told(passed, sessionOf(), { completed: true, passed: false }, first.all);
    expect(again.faults).toEqual([]);
    expect(again.verbs).toEqual(['initialized', 'passed', 'terminated']);
    const third = told(failed, sessionOf(), { completed: true, passed: true }, [...first.all, ...again.all]);
    expect(third.faults).toEqual([]);
    expect(third.verbs).toEqual(['initialized', 'terminated']);
  });

  it('has statements that are the same when they are told twice, and others in another session', () => {
    const ids = (session: Cmi5Session) => ended(session, passed, FIRST).defined.map(({ id }: Statement) => id);
    expect(ids(sessionOf())).toEqual(ids(sessionOf()));
    const other = sessionOf({ contextTemplate: { ...TEMPLATE, extensions: { [SESSION]: 'session-2' } } });
    expect(new Set([...ids(sessionOf()), ...ids(other)]).size).toBe(4);
  });

  it('has an activity of its own for each answer, the same wherever the unit is launched', () => {
    const objects = told(passed).all.flatMap(({ verb, object }) => (verb.id.endsWith('answered') ? [object.id] : []));
    expect(new Set(objects).size).toBe(8);
    for (const id of objects) expect(id).toMatch(/^urn:uuid:[0-9a-f-]{36}$/);
  });
});

it('the rules notice what breaks them: each of a good session’s statements spoiled', () => {
  const session = sessionOf();
  const { all } = told(passed, session);
  const given: Session = {
    actor: ACTOR,
    registration: QUERY.registration,
    activityId: QUERY.activityId,
    launchMode: 'Normal',
    masteryScore: 0.7,
    contextTemplate: TEMPLATE,
    earlier: all,
  };
  const [first, completed, verdict, ...rest] = all;
  const last = rest.at(-1);
  if (!first || !completed || !verdict || !last) throw new Error('too few');
  const spoil = (one: Told, change: object): Told => ({ ...one, ...change });
  const spoilt: readonly (readonly [Told, readonly Told[]])[] = [
    [spoil(first, { id: 'x', actor: {}, timestamp: '2031-05-14T16:42:05+02:00' }), [first, last]],
    [spoil(first, { verb: { id: 'initialized' }, context: {} }), []],
    [spoil(completed, { result: { score: { raw: 1 }, success: true } }), [first, completed]],
    [
      spoil(verdict, { result: { success: false, score: { scaled: 0.1 } }, context: { contextActivities: {} } }),
      [first],
    ],
    [spoil(verdict, { result: { success: true, score: { scaled: 0.1 } } }), [first, completed, verdict]],
    [spoil(verdict, { verb: { id: 'http://adlnet.gov/expapi/verbs/failed' }, object: { id: 'x:y' } }), [first]],
    [spoil(verdict, { result: {} }), [first]],
    [spoil(last, { result: {} }), [first]],
  ];
  const noticed = new Set(spoilt.flatMap(([one, before]) => broken(one, given, before)));
  const looked = broken(verdict, { ...given, launchMode: 'Review' }, [first]);
  for (const { ids, rule } of RULES) {
    const name = `${ids.join(', ')}: ${rule}`;
    expect(noticed.has(name) || looked.includes(name), name).toBe(true);
  }
});

describe('a launch', () => {
  it('is read from its parameters in any order, among others, the endpoint with or without its stroke', () => {
    const backwards = new Map([['x', 'y'], ...Object.entries(QUERY).reverse()]);
    expect(readLaunch(backwards)).toMatchObject({
      endpoint: 'https://store.example/xapi/',
      actor: ACTOR,
      activityId: QUERY.activityId,
    });
    const stroke = new Map(Object.entries({ ...QUERY, endpoint: 'https://store.example/xapi/' }));
    expect(readLaunch(stroke)?.endpoint).toBe('https://store.example/xapi/');
  });

  it.each([
    ['endpoint', 'javascript:alert(1)'],
    ['fetch', ''],
    ['actor', '{'],
    ['actor', '{"objectType":"Agent","mbox":"mailto:a@b.example"}'],
    ['registration', 'one'],
    ['activityId', 'relative/id'],
  ])('is none where %s is "%s"', (name, value) => {
    expect(readLaunch(new Map(Object.entries({ ...QUERY, [name]: value })))).toBeUndefined();
  });

  it('needs launch data with a session in it, and a mode', () => {
    const good = { contextTemplate: TEMPLATE, launchMode: 'Normal', moveOn: 'Passed' };
    expect(readLaunchData(good)).toBeDefined();
    expect(readLaunchData({ ...good, launchMode: 'normal' })).toBeUndefined();
    expect(readLaunchData({ ...good, masteryScore: 1.5 })).toBeUndefined();
    expect(readLaunchData({ ...good, contextTemplate: { extensions: {} } })).toBeUndefined();
    expect(readLaunchData(undefined)).toBeUndefined();
  });

  it.each([
    [
      { languagePreference: 'fr-CA,es-MX,en-US', audioPreference: 'off' },
      { language: 'es', sound: false },
    ],
    [
      { languagePreference: 'de', audioPreference: 'on' },
      { language: undefined, sound: true },
    ],
    [undefined, { language: undefined, sound: undefined }],
    [
      { languagePreference: 7, audioPreference: '' },
      { language: undefined, sound: undefined },
    ],
  ])('has preferences %j', (given, read) => {
    expect(readPreferences(given)).toEqual(read);
  });
});
