import { describe, it } from 'vitest';
import {
  type CallFile,
  CallSession,
  clockAt,
  debriefOf,
  liveFacts,
  makeRecord,
  PLAYERS,
  play,
  prepareCall,
  shippedCalls,
  Trace,
  viewOf,
} from '../../src/calls/index.ts';
import { FAULTS } from '../../src/faults/index.ts';
import { draw } from '../../src/plant/index.ts';
import { known } from '../../src/scene/index.ts';
import { ACTION_BY_ID, type ActionDef, breachOf, type Fill, LOADS } from '../../src/service/index.ts';
import { speakAll } from './spoken.ts';

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
    if (breachOf(session.service, def, asked)) {
      this.prepare(def);
      return;
    }
    const fill = this.fill(def);
    const refused = session.act({ id: def.id, ...(fill ? { fill } : {}) });
    speakAll([refused, session.changes], spoken);
    session.nextChange(session.now_ms + 120_000 * this.chance());
  }

  /** Does what must be safe first. */
  private prepare(def: ActionDef): void {
    if (def.lockOut) this.session.act({ id: `lock-out:${def.lockOut}` });
    this.session.act({ id: this.session.service.person.onSite ? 'make-safe' : 'ask-danger' });
  }
}

/** A shipped call with other faults than its own, so many, from a seed. */
function withFaults(call: CallFile, seed: number, many: number): CallFile {
  const day = call.start.slice(0, 8) + String(Number(call.start.slice(8, 10)) - 1).padStart(2, '0');
  const faults = Array.from({ length: many }, (_, i) => {
    const entry = FAULTS[Math.floor(draw(seed, 'fault', i) * FAULTS.length)];
    const part = entry?.parts?.[Math.floor(draw(seed, 'part', i) * entry.parts.length)];
    return { fault: entry?.id ?? '', ...(part ? { part } : {}), onset: `${day}T${10 + i}:00` };
  });
  return { ...call, seed, faults: faults.filter((f, i) => faults.findIndex((g) => g.fault === f.fault) === i) };
}

describe.each(calls.map((call) => [call.id, call] as const))('%s', (_id, call) => {
  it.each(PLAYERS)('is spoken whole when taken by %s', (player) => {
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

const walks = calls.flatMap((call) => [1, 2].map((seed) => [call.id, seed, call] as const));

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
