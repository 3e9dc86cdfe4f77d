import { describe, expect, it } from 'vitest';
import { hoodOf } from '../../src/calls/hood.ts';
import {
  type CallFile,
  CallSession,
  clockAt,
  debriefOf,
  judged,
  liveFacts,
  makeProgress,
  makeRecord,
  play,
  playSolution,
  prepareCall,
  replay,
  resumeCall,
  shippedCalls,
  shippedLibrary,
  shippedVisits,
  Trace,
  viewOf,
} from '../../src/calls/index.ts';
import { teachingWords } from '../../src/calls/taught.ts';
import { isTeaching, TEACH } from '../../src/calls/teach-ids.ts';
import { faultFits, faultsOf, PLACED_FAULTS, type PlacedFault } from '../../src/faults/index.ts';
import { draw } from '../../src/plant/index.ts';
import { marked } from '../../src/records/index.ts';
import { known } from '../../src/scene/index.ts';
import {
  ACTION_BY_ID,
  ACTIONS,
  type ActionDef,
  breachOf,
  circuitsToLock,
  type Fill,
  fits,
  LOADS,
  say,
} from '../../src/service/index.ts';
import { gapsOf } from '../../src/words/speak.ts';
import { coreTexts, speakAll } from './spoken.ts';

/** Ids that were spoken in any of the plays below. */
const spoken = new Set<string>();
const calls = shippedCalls();

function sceneOf(session: CallSession) {
  const t = session.now_ms / 1000;
  const clock = clockAt(session, t);
  const around = { day: clock, secondOfDay: clock.secondOfDay, ...session.prepared.call.weather };
  const { spec } = session.prepared;
  return known({ spec, person: session.service.person, live: liveFacts(session), now_s: t, around });
}

function speakView(session: CallSession): void {
  speakAll(viewOf(session, sceneOf(session)), spoken);
}

/** What the score says of a visit left as it is: its reasons and its flags. */
function speakVerdict(session: CallSession): void {
  for (const lid of session.service.person.lids) session.act({ id: `close-lid:${lid}` });
  session.act({ id: 'leave-site' });
  const { lines, flags } = judged(session);
  speakAll([lines.map((l) => l.reason), flags.map((f) => say(`flag.${f.id}`))], spoken);
}

function speakDebrief(session: CallSession): void {
  speakAll(debriefOf(session, new Trace(session)), spoken);
}

/** A person who does what comes to mind, from a seed: any action, any answer, sometimes one that is not there. */
class Walker {
  private n = 0;
  readonly session: CallSession;
  private readonly seed: number;

  constructor(session: CallSession, seed: number) {
    this.session = session;
    this.seed = seed;
  }

  private chance(): number {
    return draw(this.seed, 'walker', this.n++);
  }

  private pick<T>(list: readonly T[]): T {
    const one = list[Math.floor(this.chance() * list.length)];
    if (one === undefined) throw new Error('nothing to pick from');
    return one;
  }

  private fill(def: ActionDef): Fill | undefined {
    if (!def.form) return undefined;
    const one = (ids: readonly string[]) => (this.chance() < 0.05 ? 'no-such-answer' : this.pick(ids));
    return Object.fromEntries(
      def.form.map((field) => {
        const ids = field.options.map((o) => o.id);
        if (ids.length === 0 || this.chance() < 0.05) return [field.id, []];
        const often = field.kind === 'one' ? 1 : 1 + Math.floor(this.chance() * Math.min(ids.length, 6));
        return [field.id, [...new Set(Array.from({ length: often }, () => one(ids)))]];
      }),
    );
  }

  /** Does one thing and speaks what comes of it. Steps that end the call are kept for later. */
  step(): void {
    const { session } = this;
    const ids = [...ACTION_BY_ID.keys(), 'state-cause'];
    const fitting = ids.filter((id) => (ACTION_BY_ID.get(id)?.place === 'phone') !== session.service.person.onSite);
    const def = session.definition(this.pick(this.chance() < 0.1 ? ids : fitting));
    if (!def || ['decide-close', 'leave-site'].includes(def.id)) return;
    const asked = session.done.some((d) => d.def.id === 'ask-danger');
    const fill = this.fill(def);
    if (breachOf(session.service, def, asked, fill)) {
      this.prepare(def, fill);
      return;
    }
    const refused = session.act({ id: def.id, ...(fill ? { fill } : {}) });
    speakAll([refused, session.changes], spoken);
    session.nextChange(session.now_ms + 120_000 * this.chance());
  }

  /** Does what must be safe first. */
  private prepare(def: ActionDef, fill?: Fill): void {
    for (const circuit of circuitsToLock(def, fill)) this.session.act({ id: `lock-out:${circuit}` });
    this.session.act({ id: this.session.service.person.onSite ? 'make-safe' : 'ask-danger' });
  }
}

/** A shipped call with other faults than its own, so many, from a seed. */
function withFaults(call: CallFile, seed: number, many: number): CallFile {
  const day = call.start.slice(0, 8) + String(Number(call.start.slice(8, 10)) - 1).padStart(2, '0');
  const faults = Array.from({ length: many }, (_, i) => {
    const all = faultsOf(prepareCall(call).spec);
    const one = all[Math.floor(draw(seed, 'fault', i) * all.length)];
    return { fault: one?.id ?? '', ...(one?.part ? { part: one.part } : {}), onset: `${day}T${10 + i}:00` };
  });
  return { ...call, seed, faults: faults.filter((f, i) => faults.findIndex((g) => g.fault === f.fault) === i) };
}

/** A few of the calls stand for all where what is spoken hardly depends on which it is. */
const few = calls.filter((_call, i) => i % 8 === 0);

describe.each(calls.map((call) => [call.id, call] as const))('%s', (_id, call) => {
  const players = few.includes(call) ? (['solution', 'reset-only', 'random'] as const) : (['solution'] as const);
  it.each(players)('is spoken whole when taken by %s', (player) => {
    const prepared = prepareCall(call);
    const session = new CallSession(prepared, 'practice');
    speakView(session);
    const done = play(prepared, player);
    speakView(done);
    speakDebrief(done);
    const record = makeRecord(done);
    for (const logged of record.actions) {
      session.advance(logged.at_ms);
      speakAll(session.act({ id: logged.do, ...(logged.fill ? { fill: logged.fill } : {}) }), spoken);
      speakView(session);
    }
  });
});

const walks = few.flatMap((call) => [1, 2].map((seed) => [call.id, seed, call] as const));

it.each(walks)('whatever is done on %s with faults of seed %i is spoken whole', (_id, seed, call) => {
  const session = new CallSession(prepareCall(seed === 1 ? call : withFaults(call, seed, 1 + (seed % 3))), 'practice');
  const walker = new Walker(session, seed);
  for (let i = 0; i < 12; i++) walker.step();
  if (!session.service.person.onSite) {
    session.act({ id: 'ask-danger' });
    session.act({ id: 'decide-visit', fill: { urgency: 'now', load: LOADS.slice(0, 4) } });
  }
  for (let i = 0; i < 60; i++) {
    walker.step();
    if (i % 10 === 0) speakView(session);
  }
  speakView(session);
  session.act({ id: 'leave-site' });
  speakView(session);
  if (seed % 3 === 1) speakDebrief(session);
});

/** A visit to a property with one fault (or none) since the day before: made safe, every lid off, all parts at hand. */
function visit(fault?: PlacedFault, unit = unitOf(fault)): CallSession {
  const call = calls.find((c) => c.id === 'noon-sprinklers') as CallFile;
  const day = call.start.slice(0, 10);
  const faults = fault ? [{ fault: fault.id, ...(fault.part ? { part: fault.part } : {}), onset: `${day}T01:00` }] : [];
  const session = new CallSession(prepareCall({ ...call, unit, history_days: 1, faults }), 'practice');
  for (const id of ['ask-danger', 'ask-hum', 'ask-smell', 'ask-drains', 'ask-lamp']) session.act({ id });
  session.act({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
  for (const load of LOADS) session.service.person.load.add(load);
  for (const id of ['make-safe', 'open-lid:trash', 'open-lid:aeration', 'open-lid:riser', 'open-lid:pump']) {
    session.act({ id });
  }
  return session;
}

/** The first shipped unit that can have a fault. */
function unitOf(fault?: PlacedFault): string {
  const fitting = [...shippedLibrary().units.values()].find((spec) => !fault || faultFits(fault, spec));
  if (!fitting) throw new Error(`no unit can have ${fault?.key}`);
  return fitting.id;
}

/** Does every action of some groups, each with its circuit locked out, and speaks what is noted. */
function sweep(session: CallSession, groups: readonly ActionDef['group'][]): void {
  for (const action of ACTIONS) {
    if (!groups.includes(action.group) || action.place === 'phone' || action.form || action.id === 'leave-site')
      continue;
    if (!fits(action, session.prepared.spec)) continue;
    if (/^(lock-out|unlock|close-lid|breaker|reset)/.test(action.id)) continue;
    const circuits = circuitsToLock(action);
    for (const circuit of circuits) session.act({ id: `lock-out:${circuit}` });
    speakAll([session.act({ id: action.id }), session.changes], spoken);
    for (const circuit of circuits)
      for (const way of ['unlock', 'breaker-on']) session.act({ id: `${way}:${circuit}` });
  }
  expect(session.breach).toBeUndefined();
  speakView(session);
}

describe('every check is spoken whole', () => {
  it.each([...PLACED_FAULTS.values()].map((f) => [f.key, f] as const))('with %s', (_key, fault) => {
    const session = visit(fault);
    sweep(session, ['look', 'measure', 'operate']);
    speakVerdict(session);
  });

  it('and every other action, on a sound unit', () => {
    const session = visit();
    sweep(session, ['look', 'operate', 'mend', 'measure']);
    const [one, other] = faultsOf(session.prepared.spec).map((f) => f.key);
    session.act({ id: 'state-cause', fill: { cause: [one ?? '', other ?? ''], evidence: [] } });
    speakAll(session.changes, spoken);
    speakView(session);
  });
});

it.each([
  ['sound', undefined, 'reading.zone-full'],
  ['with its filter clogged', PLACED_FAULTS.get('disc-filter-clogged'), 'reading.zone-low'],
] as const)('a drip field %s is read by its gauge while the pump runs', (_name, fault, reading) => {
  const session = visit(fault, 'u3');
  session.act({ id: 'selector-hand' });
  expect(session.act({ id: 'zone-pressure' })).toBeUndefined();
  expect(session.service.person.notebook.at(-1)?.reading.id).toBe(reading);
  speakView(session);
});

it('a test of a panel with one lamp and the buzzer dead is spoken whole', () => {
  const session = visit(PLACED_FAULTS.get('lamp-dead:airLamp'), 'u3');
  session.service.unit.send('horn.dies');
  expect(session.act({ id: 'press-test' })).toBeUndefined();
  const said = session.service.person.notebook.findLast((n) => n.by === 'press-test');
  expect(said?.reading.id).toBe('reading.test-one-mute');
  speakView(session);
});

it.each(['u1', 'u2', 'u3'])(
  'a meter at the panel of %s is spoken whole at every terminal and round every wire',
  (unit) => {
    const session = visit(undefined, unit);
    const answersOf = (id: string) => session.definition(id)?.form?.[0]?.options.map((o) => o.id) ?? [];
    for (const conductor of answersOf('clamp-amps')) {
      expect(session.act({ id: 'clamp-amps', fill: { conductor } })).toBeUndefined();
      speakAll(session.changes, spoken);
    }
    for (const circuit of ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'])
      session.act({ id: `lock-out:${circuit}` });
    for (const red of answersOf('meter-volts')) {
      for (const id of ['meter-volts', 'meter-ohms']) {
        expect(session.act({ id, fill: { red, black: 'neutral' } })).toBeUndefined();
        speakAll(session.changes, spoken);
      }
    }
    expect(session.breach).toBeUndefined();
    speakView(session);
  },
);

describe('what is refused is spoken whole', () => {
  const prepared = prepareCall(calls[0] as CallFile);

  it.each([
    ['an unknown action', 'dance', undefined],
    ['an unknown answer', 'decide-visit', { urgency: 'now', load: ['piano'] }],
    ['no answer where one is asked for', 'decide-visit', {}],
    ['too many answers', 'decide-visit', { urgency: 'now', load: [...LOADS] }],
  ])('%s', (_name, id, fill) => {
    const refused = new CallSession(prepared, 'practice').act({ id, ...(fill ? { fill } : {}) });
    expect(refused).toBeDefined();
    speakAll(refused, spoken);
  });

  it.each([['guide-reset'], ['ask-danger', 'tell-open-panel'], ['ask-danger', 'tell-open-tank']])(
    'a breach by %s',
    (...ids) => {
      const session = new CallSession(prepared, 'practice');
      for (const id of ids) session.act({ id });
      expect(session.breach).toBeDefined();
      speakAll(session.changes, spoken);
      speakView(session);
      speakDebrief(session);
    },
  );

  it.each(shippedVisits().map((visit) => [visit.id, visit] as const))('the routine visit %s', (_id, visit) => {
    const session = playSolution(prepareCall(visit));
    speakView(session);
    speakDebrief(session);
  });

  it('a record that does not come out at its claims', () => {
    const made = makeRecord(playSolution(prepared));
    const [first, second, ...rest] = made.actions;
    if (!first || !second) throw new Error('the solution has steps');
    const forged = [
      { ...made, engine: '0' },
      { ...made, callHash: 'a'.repeat(64) },
      { ...made, seed: made.seed + 1 },
      { ...made, actions: [{ ...first, at_ms: 0 }, second, ...rest] },
      { ...made, actions: [{ ...first, do: 'dance' }, second, ...rest] },
      { ...made, actions: [{ ...first, state: 'a'.repeat(12) }, second, ...rest] },
      { ...made, claims: { ...made.claims, score: 1 } },
      { ...made, end_ms: 0 },
    ];
    for (const record of forged) {
      const { firstDifference } = replay(prepared, record);
      expect(firstDifference).toBeDefined();
      speakAll(firstDifference, spoken);
    }
    const nowhere = marked({ who: 'K.', text: JSON.stringify(made) }, () => undefined);
    expect(nowhere.state).toBe('refused');
    speakAll(nowhere, spoken);
  });

  it('a call in which a trainer has a hand', () => {
    const session = new CallSession(prepared, 'practice');
    const fault = { fault: 'lamp-dead:lamp', ramp_h: '2' };
    const why = [
      { id: TEACH.speed, fill: { rate: '60' } },
      { id: TEACH.moment, fill: { name: 'now' } },
      { id: TEACH.faultIn, fill: fault },
      { id: TEACH.faultOut, fill: fault },
      { id: TEACH.faultOut, fill: { ...fault, ramp_h: '1000' } },
      { id: 'tick-suspect', fill: { fault: 'line-split', on: 'yes' } },
      { id: 'tick-suspect', fill: { fault: 'line-split', on: 'no' } },
    ].map((action) => session.act(action));
    speakAll(why, spoken);
    speakAll(session.log.filter((one) => isTeaching(one.do)).map(teachingWords), spoken);
    speakAll(hoodOf(session, new Trace(session)), spoken);
  });

  it('a kept call that cannot go on', () => {
    const session = new CallSession(prepared, 'practice');
    session.act({ id: 'ask-danger' });
    const kept = makeProgress(session);
    const differing = kept.actions.map((a) => ({ ...a, state: 'a'.repeat(12) }));
    for (const broken of [
      null,
      { ...kept, engine: '0' },
      { ...kept, engine: '9999' },
      { ...kept, actions: differing },
    ]) {
      const resumed = resumeCall(prepared, 'practice', broken);
      if (!('why' in resumed)) throw new Error('it went on');
      speakAll(resumed.why, spoken);
    }
  });
});

/** A text with gaps is proved only by a message that fills them; the other texts need no more than to be there. */
it('every text of the core that has gaps was spoken in the plays above', () => {
  const gapped = coreTexts().filter(([, text]) => gapsOf(text).length > 0);
  expect(gapped.length).toBeGreaterThan(60);
  expect(gapped.map(([id]) => id).filter((id) => !spoken.has(id))).toEqual([]);
});
