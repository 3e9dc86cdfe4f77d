import { describe, expect, it } from 'vitest';
import { type CallFile, CallSession, isCleared, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { faultsOf, PLACED_FAULTS, type PlacedFault } from '../../src/faults/index.ts';
import { ACTION_BY_ID, ACTIONS, circuitsToLock, LOADS, type LoadId } from '../../src/service/index.ts';
import { must, safely } from './hands.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;

/** A seal of 60 mm that loses 1.5 mm a day and a little more in a warm room (see published/trap.test.ts) takes 38 days. */
const SLOW: Readonly<Record<string, { readonly history_days: number; readonly onset: string }>> = {
  'trap-dry': { history_days: 41, onset: '2031-03-07T12:00' },
};

/** A visit to a property with one fault (or none) since yesterday noon or since it takes, every lid off, parts at hand. */
function visit(fault?: PlacedFault): CallSession {
  const { id: _, ...rest } = base;
  const { onset, history_days } = SLOW[fault?.id ?? ''] ?? {
    onset: '2031-04-15T12:00',
    history_days: base.history_days,
  };
  const faults = fault ? [{ fault: fault.id, ...(fault.part ? { part: fault.part } : {}), onset }] : [];
  const session = new CallSession(
    prepareCall({ ...rest, id: 'probe', household: 'family-3', history_days, faults }),
    'practice',
  );
  must(session, 'ask-danger');
  must(session, 'decide-visit', { urgency: 'now', load: ['tubing', 'diaphragm-kit'] });
  for (const load of LOADS) session.service.person.load.add(load as LoadId);
  must(session, 'make-safe');
  for (const lid of ['trash', 'aeration', 'riser', 'pump']) must(session, `open-lid:${lid}`);
  return session;
}

/** What an action's notes say, without the numbers: those scatter. */
function readings(session: CallSession, id: string): string[] {
  const notes = session.service.person.notebook.filter((n) => n.by === id);
  return notes.map((n) =>
    JSON.stringify([n.what, n.reading, n.remark?.text.id, n.remark?.tone]).replace(/"value":[-\d.]+/g, ''),
  );
}

const onSite = (id: string) => ACTION_BY_ID.get(id)?.place !== 'phone' && !id.startsWith('ask-');
const faults = faultsOf(prepareCall(base).spec).filter((f) => f.family !== 'use');

describe('every fault of the catalogue', () => {
  it('names actions that exist', () => {
    for (const fault of PLACED_FAULTS.values()) {
      for (const id of [...fault.shownBy, ...fault.mendedBy, ...fault.hiddenBy]) {
        expect(ACTION_BY_ID.has(id), `${fault.key}: ${id}`).toBe(true);
      }
    }
  });

  it.each(faults.map((f) => [f.key, f] as const))(
    '%s is told apart by a check that shows it, and is over when mended',
    (_key, fault) => {
      const check = fault.shownBy.find(onSite);
      if (!check) throw new Error('no check on site shows it');
      const [sound, faulty] = [visit(), visit(fault)];
      for (const session of [sound, faulty]) safely(session, check);
      if (fault.id !== 'surge-latch') expect(readings(faulty, check)).not.toEqual(readings(sound, check));

      const mended = visit(fault);
      if (fault.id !== 'surge-latch') expect(isCleared(mended, fault.key)).toBe(false);
      const mend = fault.mendedBy.find(onSite);
      if (!mend) throw new Error('nothing on site mends it');
      // A tripped lever must be pushed fully off before it goes on.
      if (mend.startsWith('breaker-on')) must(mended, mend.replace('on', 'off'));
      safely(mended, mend);
      expect(isCleared(mended, fault.key)).toBe(true);
    },
  );
});

/** Which faults light the lamp by themselves, and which only weaken the works: what the trade must learn. */
describe('the alarm', () => {
  const lights = [
    'line-split',
    'line-off-fitting',
    'diaphragm-torn',
    'compressor-stopped',
    'breaker-tripped:compressorBreaker',
    'surge-latch',
    'stuck-up:highWaterFloat',
  ];
  const silent = [
    'joint-leak',
    'line-pinched',
    'diffuser-fouled',
    'drop-line-broken',
    'diaphragm-worn',
    'intake-clogged',
    'timer-misset',
    'stuck-down:doseFloat',
    'stuck-up:stopFloat',
    'lamp-dead:lamp',
    'breaker-tripped:alarmBreaker',
  ];

  it.each(lights)('comes with %s', (key) => {
    const session = visit(PLACED_FAULTS.get(key));
    expect(session.service.unit.log.some((e) => e.what === 'lamp.on')).toBe(true);
  });

  it.each(silent)('stays dark with %s', (key) => {
    const session = visit(PLACED_FAULTS.get(key));
    expect(session.service.unit.log.some((e) => e.what === 'lamp.on')).toBe(false);
  });
});

/** Pressure up and bubbles down is a blockage, both down a leak or an open line (a trade article). */
describe('what the air shows', () => {
  it.each([
    ['none', 'hums-even', 'case-warm', 'good', 'bubbles', 'line-whole'],
    ['line-off-fitting', 'hums-light', 'case-warm', 'off', 'still', 'line-off'],
    ['line-pinched', 'hums-laboured', 'case-hot', 'off', 'weak-bubbles', 'line-pinched'],
    ['diffuser-fouled', 'hums-laboured', 'case-warm', 'off', 'bubbles', 'line-whole'],
    ['drop-line-broken', 'hums-even', 'case-warm', 'good', 'one-spot', 'line-whole'],
  ])('with %s: %s, %s, the gauge %s, %s, %s', (key, hum, heat, gauge, surface, line) => {
    const session = visit(PLACED_FAULTS.get(key));
    const looks = { 'listen-compressor': hum, 'feel-compressor': heat, 'look-into-aeration': surface };
    for (const [id, said] of Object.entries({ ...looks, 'follow-air-line': line })) {
      must(session, id);
      expect(readings(session, id).join(), id).toContain(`"reading.${said}"`);
    }
    must(session, 'tee-pressure');
    expect(readings(session, 'tee-pressure').join()).toContain(`"${gauge}"`);
  });
});

describe('a trap that dried out', () => {
  it('is full again once water has run into it', () => {
    const session = visit(PLACED_FAULTS.get('trap-dry'));
    must(session, 'look-at-traps');
    must(session, 'fill-trap');
    must(session, 'look-at-traps');
    const said = readings(session, 'look-at-traps').map((r) => /reading\.[a-z-]+/.exec(r)?.[0]);
    expect(said).toEqual(['reading.trap-dry', 'reading.traps-full']);
  });
});

describe('every action', () => {
  it('can be done on a sound unit at its place, or says why not', () => {
    const session = visit();
    for (const action of ACTIONS.filter((a) => a.place !== 'phone' && a.id !== 'leave-site')) {
      for (const lock of circuitsToLock(action)) {
        if (!session.service.person.locks.has(lock)) must(session, `lock-out:${lock}`);
      }
      if (action.form) continue;
      const refused = session.act({ id: action.id });
      expect(refused === undefined || /^why\./.test(refused.id), action.id).toBe(true);
      expect(session.breach, action.id).toBeUndefined();
      for (const lock of circuitsToLock(action)) {
        if (!session.service.person.locks.has(lock)) continue;
        must(session, `unlock:${lock}`);
        session.act({ id: `breaker-on:${lock}` });
      }
    }
  });
});
