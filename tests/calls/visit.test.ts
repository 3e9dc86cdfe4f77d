/** Routine visits: what ships is sound, a sham visit does not pass, and each decision is held against the works and the rules. */
import { describe, expect, it } from 'vitest';
import {
  type CallFile,
  CallSession,
  debriefOf,
  judged,
  makeRecord,
  type Prepared,
  play,
  playSolution,
  prepareCall,
  proveCall,
  replay,
  shippedVisits,
  Trace,
} from '../../src/calls/index.ts';
import type { SolutionStep } from '../../src/calls/schema.ts';
import { playSteps } from '../../src/calls/solution.ts';
import { decisionsOf } from '../../src/calls/visit/decisions.ts';
import { outlookOf } from '../../src/calls/visit/outlook.ts';
import { rowsOf, rowsWanted } from '../../src/calls/visit/rows.ts';
import type { Fill } from '../../src/service/index.ts';
import { speak } from '../../src/words/speak.ts';
import { ENGLISH, speakAll } from '../unit/spoken.ts';
import { must } from './hands.ts';

const visit = (id: string): CallFile => {
  const file = shippedVisits().find((one) => one.id === id);
  if (!file) throw new Error(`${id} does not ship`);
  return file;
};

const PREPARED = new Map(shippedVisits().map((call) => [call.id, prepareCall(call)]));

function preparedOf(id: string): Prepared {
  const prepared = PREPARED.get(id);
  if (!prepared) throw new Error(`${id} does not ship`);
  return prepared;
}

/** The visit taken by these steps. */
function taking(id: string, steps: readonly SolutionStep[]): CallSession {
  const session = new CallSession(preparedOf(id), 'practice');
  playSteps(session, steps);
  return session;
}

/** The reference visit with other answers in its record. */
function recording(id: string, other: Fill): CallSession {
  return taking(
    id,
    visit(id).solution.map((step) =>
      step.do === 'write-record' ? { do: step.do, fill: { ...step.fill, ...other } as SolutionStep['fill'] } : step,
    ),
  );
}

const wrongIn = (session: CallSession) => decisionsOf(session).flatMap(({ id, right }) => (right ? [] : [id]));

it('at least six ship, over all units', () => {
  expect(shippedVisits().length).toBeGreaterThanOrEqual(6);
  expect(new Set(shippedVisits().map(({ unit }) => unit))).toEqual(new Set(['u1', 'u2', 'u3']));
});

describe.each(shippedVisits().map((call) => [call.id, call] as const))('%s', (_id, call) => {
  const prepared = preparedOf(call.id);
  const session = playSolution(prepared);

  it('is solved by its own solution: every line, every decision, no flag', () => {
    const { passed, score, flags } = judged(session);
    expect(flags).toEqual([]);
    expect(wrongIn(session)).toEqual([]);
    expect(rowsOf(session).filter(({ met, wants }) => met < wants.length)).toEqual([]);
    expect([passed, score]).toEqual([true, 100]);
  });

  it('replays to its claims', () => {
    const record = JSON.parse(JSON.stringify(makeRecord(session)));
    expect(replay(prepared, record).firstDifference).toBeUndefined();
  });

  it('is said whole in both languages', () => {
    expect(() => speakAll([debriefOf(session, new Trace(session))])).not.toThrow();
  });

  it('is not passed by who looks at nothing and signs the very same record', () => {
    const looks = new Set(rowsWanted(prepared).flatMap(({ wants }) => wants.flat()));
    const solution = call.solution.filter(({ do: id }) => id === 'sign-label' || !looks.has(id));
    const { passed, score } = judged(taking(call.id, solution));
    expect(passed).toBe(false);
    expect(score).toBeLessThan(90);
  });
});

it.each(['reset-only', 'parts-swapper', 'random'] as const)('none is passed by %s', (player) => {
  expect(judged(play(preparedOf('dry-weather'), player)).passed).toBe(false);
});

it('is proved like a call, also one on which all is well', () => {
  const proof = proveCall(preparedOf('march-round'));
  expect(proof.problems).toEqual([]);
  expect(proof.solvedBy).toEqual(['solution', 'expert']);
});

describe('a visit', () => {
  it('begins at the door, the drive behind it, with nobody on the phone', () => {
    const session = new CallSession(preparedOf('march-round'), 'graded');
    expect(session.service.person.onSite).toBe(true);
    expect(session.drove).toBe(true);
    expect(session.act({ id: 'ask-danger' })).toEqual({ id: 'why.on-site' });
  });

  it('lists only what its unit has', () => {
    const ids = (id: string) => rowsWanted(preparedOf(id)).flatMap(({ wants }) => wants.flat());
    expect(ids('dry-bottle')).toContain('dip-strip');
    expect(ids('cloudy-corner')).not.toContain('dip-strip');
    expect(ids('cloudy-corner')).toContain('look-at-sleeve');
    expect(ids('march-round')).not.toContain('read-counters');
  });

  it('opens no lid that the lawn has grown over before it is probed for', () => {
    const session = new CallSession(preparedOf('under-the-sod'), 'practice');
    must(session, 'make-safe');
    expect(session.act({ id: 'open-lid:riser' })?.id).toBe('why.lid-buried');
    must(session, 'dig-up-lid');
    expect(session.act({ id: 'open-lid:riser' })).toBeUndefined();
    expect(session.act({ id: 'dig-up-lid' })?.id).toBe('why.no-lid-buried');
  });

  it('has no lid to dig for where none is buried, and other calls have no label to sign', () => {
    const session = new CallSession(preparedOf('march-round'), 'practice');
    expect(session.definition('dig-up-lid')).toBeUndefined();
    expect(session.definition('sign-label')).toBeDefined();
  });

  it('reads off the label when somebody last signed it, and signs with the day of the visit', () => {
    const session = new CallSession(preparedOf('dry-bottle'), 'practice');
    const spoken = (id: string) => speak(ENGLISH, 'us', true)(must(session, id).reading);
    expect(spoken('read-label')).toContain('17 Jan 2031');
    expect(spoken('sign-label')).toContain('20 May 2031');
  });
});

it('the record keeps the newest reading of each check', () => {
  const id = 'march-round';
  const again = visit(id).solution.flatMap((step) => (step.do === 'look-into-pump-tank' ? [step, step] : [step]));
  const { visit: seen } = debriefOf(taking(id, again), new Trace(taking(id, again)));
  const notes = seen?.rows.find((row) => row.id === 'pump-tank')?.readings.map(({ what }) => what.id);
  expect(notes?.filter((one) => one === 'note.pump-tank')).toHaveLength(1);
});

describe('a decision', () => {
  it('to pump out is held against the limit now and in four months', () => {
    const { found, nextVisit } = outlookOf(preparedOf('three-years-on'));
    expect(found.trash).toBeLessThan(1 - 0.08);
    expect(nextVisit.trash).toBeGreaterThan(1 + 0.08);
    expect(wrongIn(recording('three-years-on', { 'due-trash': 'before-next' }))).toEqual([]);
    for (const answer of ['no', 'now']) {
      expect(wrongIn(recording('three-years-on', { 'due-trash': answer }))).toEqual(['due-trash']);
    }
  });

  it('that a full clarifier can wait is wrong', () => {
    expect(wrongIn(recording('cloudy-corner', { 'due-aeration': 'before-next' }))).toEqual(['due-aeration']);
  });

  it('of acceptable is wrong where something was broken, and of unacceptable where nothing was', () => {
    expect(wrongIn(recording('dry-weather', { result: 'acceptable' }))).toEqual(['result']);
    expect(wrongIn(recording('march-round', { result: 'unacceptable' }))).toEqual(['result']);
  });

  it('ticks what did not work and nothing else', () => {
    expect(wrongIn(recording('dry-weather', { inoperative: [] }))).toEqual(['inoperative']);
    expect(wrongIn(recording('dry-weather', { inoperative: ['circuits', 'pump'] }))).toEqual(['inoperative']);
    expect(wrongIn(recording('march-round', { inoperative: ['field'] }))).toEqual(['inoperative']);
  });

  it('that leaves a repair undone is told which, with its part', () => {
    const undone = visit('dry-weather').solution.filter((step) => step.do !== 'redo-splice:highWaterFloat');
    const session = taking('dry-weather', undone);
    expect(wrongIn(session)).toEqual(['repairs']);
    const left = decisionsOf(session).find(({ id }) => id === 'repairs');
    expect(left && speak(ENGLISH, 'us', true)(left.reason)).toContain('High-water float: splice corroded');
  });

  it('that chlorine was filled up is held against what was done, and that it is enough against the month to come', () => {
    expect(wrongIn(recording('march-round', { refill: 'filled' }))).toEqual(['refill']);
    expect(wrongIn(recording('dry-bottle', { refill: 'enough' }))).toEqual(['refill']);
    const unfilled = visit('dry-bottle').solution.filter(
      (step) => !['refill-disinfectant', 'watch-feed'].includes(step.do),
    );
    expect(wrongIn(taking('dry-bottle', unfilled))).toEqual(['repairs', 'refill']);
  });

  it('tells the household what it needs, and never to open a tank', () => {
    expect(wrongIn(recording('under-the-sod', { advice: [] }))).toEqual(['advice']);
    expect(wrongIn(recording('dry-bottle', { advice: [] }))).toEqual(['advice']);
    expect(wrongIn(recording('march-round', { advice: ['open-and-look'] }))).toEqual(['advice']);
  });

  /** 30 TAC 285.91(4): at least every four months; 285.90(3), Figure 3: a copy kept, one to the authority, one to the owner. */
  it('comes back within four months and gives every copy', () => {
    for (const next of ['six-months', 'year']) expect(wrongIn(recording('march-round', { next }))).toEqual(['next']);
    expect(wrongIn(recording('march-round', { copies: ['owner'] }))).toEqual(['copies']);
  });

  it('that is wrong fails the visit, whatever its score', () => {
    const { passed, score } = judged(recording('march-round', { next: 'year' }));
    expect(score).toBeGreaterThan(90);
    expect(passed).toBe(false);
  });
});
