/** A class on one sheet: every record is replayed, and what it claims is not believed. */
import { beforeAll, describe, expect, it } from 'vitest';
import {
  type CallFile,
  CallSession,
  makeRecord,
  type PlayerId,
  type Prepared,
  play,
  prepareCall,
  shippedCalls,
} from '../../../src/calls/index.ts';
import type { CallRecord } from '../../../src/calls/schema.ts';
import { type Counts, classCsv, classSheet, type Marked, marked } from '../../../src/records/index.ts';

function shipped(id: string): CallFile {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`${id} does not ship`);
  return call;
}

const calls = new Map(['storm-light', 'sunny-line'].map((id) => [id, prepareCall(shipped(id))]));
const callOf = (id: string): Prepared | undefined => calls.get(id);

function recordOf(id: string, player: PlayerId): CallRecord {
  return JSON.parse(JSON.stringify(makeRecord(play(calls.get(id) as Prepared, player)))) as CallRecord;
}

const mark = (who: string, record: unknown) => marked({ who, text: JSON.stringify(record) }, callOf);

describe('a record', () => {
  const good = recordOf('sunny-line', 'solution');

  it('counts for what comes out when it is done again', () => {
    expect(mark('K.', good)).toMatchObject({ state: 'counts', who: 'K.', call: 'sunny-line', passed: true, flags: [] });
  });

  it('is known by what was done in it, whoever did it and whatever help it names', () => {
    const deedsOf = (record: unknown) => {
      const one = mark('K.', record);
      return one.state === 'counts' ? one.deeds : undefined;
    };
    const deeds = deedsOf(good);
    expect(deeds).toMatch(/^[0-9a-f]{64}$/);
    expect(deedsOf({ ...good, assistance: { hints: 1, likely: false } })).toBe(deeds);
    expect(deedsOf(recordOf('sunny-line', 'reset-only'))).not.toBe(deeds);
  });

  it('that was made with help says so', () => {
    const session = new CallSession(calls.get('storm-light') as Prepared, 'coached');
    for (const step of shipped('storm-light').solution) {
      session.act({ id: step.do, ...(step.fill ? { fill: step.fill } : {}) });
    }
    const of = (led?: 'led-whole') =>
      mark('K.', makeRecord(session, { hints: 0, likely: false, ...(led ? { led } : {}) }));
    expect(of()).toMatchObject({ state: 'counts', mode: 'coached', helped: false });
    expect(of('led-whole')).toMatchObject({ state: 'counts', helped: true });
  });

  it('that a trainer had a hand in says so, in the sheet and in its rows', () => {
    const session = new CallSession(calls.get('sunny-line') as Prepared, 'practice');
    session.act({ id: 'ask-danger' });
    session.act({ id: 'teach-freeze' });
    session.act({ id: 'teach-go' });
    const taught = mark('K.', makeRecord(session));
    expect(mark('M.', good)).toMatchObject({ taught: false });
    expect(taught).toMatchObject({ state: 'counts', taught: true });
    const [head, row] = classCsv(classSheet([taught], []), { why: () => '' }).split('\r\n');
    expect(row?.split(',')[head?.split(',').indexOf('trainer') ?? -1]).toBe('true');
  });

  /** What somebody might change, and the first thing that then differs. */
  const FORGED: readonly (readonly [string, (record: CallRecord) => unknown, string])[] = [
    ['a higher score', (r) => ({ ...r, claims: { ...r.claims, score: r.claims.score + 1 } }), 'replay.claim'],
    ['another verdict', (r) => ({ ...r, claims: { ...r.claims, passed: false } }), 'replay.claim'],
    ['fewer minutes', (r) => ({ ...r, claims: { ...r.claims, minutes: 5 } }), 'replay.claim'],
    ['an action left out', (r) => ({ ...r, actions: r.actions.filter((_, i) => i !== 5) }), 'replay.refused'],
    [
      'an action at another instant',
      (r) => ({ ...r, actions: r.actions.map((a, i) => (i === 5 ? { ...a, at_ms: a.at_ms - 60_000 } : a)) }),
      'replay.instant',
    ],
    [
      'another action in its place',
      (r) => ({ ...r, actions: r.actions.map((a, i) => (i === 3 ? { ...a, do: 'ask-smell' } : a)) }),
      'replay.state',
    ],
    ['another engine', (r) => ({ ...r, engine: '3' }), 'replay.engine'],
    ['the record of a changed call', (r) => ({ ...r, callHash: '0'.repeat(64) }), 'replay.call-changed'],
    ['a call that is not here', (r) => ({ ...r, call: 'no-such-call' }), 'class.call-unknown'],
    ['an end before its last action', (r) => ({ ...r, end_ms: 1000 }), 'replay.end'],
  ];

  it.each(FORGED)('with %s is refused with the first thing that differs', (_what, forge, why) => {
    expect(mark('K.', forge(good))).toMatchObject({
      state: 'refused',
      otherEngine: why === 'replay.engine',
      why: { id: why },
    });
  });

  it('made on a call with another seed is refused on the call as it is', () => {
    const other = prepareCall({ ...shipped('sunny-line'), seed: 99 });
    const record = makeRecord(play(other, 'solution'));
    expect(mark('K.', record)).toMatchObject({ state: 'refused', why: { id: 'replay.call-changed' } });
    expect(mark('K.', { ...record, callHash: good.callHash })).toMatchObject({ state: 'refused' });
  });

  it('that is none is refused with place and mend', () => {
    expect(marked({ who: 'K.', text: '{"kind": "underlawn-record"' }, callOf)).toMatchObject({ state: 'refused' });
    const broken = mark('K.', { ...good, seed: 'one' });
    expect(broken).toMatchObject({ state: 'refused', problems: [{ path: 'seed' }] });
  });
});

describe('the sheet of a class', () => {
  let all: readonly Marked[] = [];
  beforeAll(() => {
    all = [
      mark('M.', recordOf('sunny-line', 'reset-only')),
      mark('K.', recordOf('sunny-line', 'reset-only')),
      mark('K.', recordOf('sunny-line', 'solution')),
      mark('K.', recordOf('storm-light', 'solution')),
      mark('=2+3', { kind: 'something else' }),
    ];
  });

  it('has people by calls, in the order of the course, the best of each with how often it was tried', () => {
    const { calls: columns, rows, counted } = classSheet(all, ['storm-light', 'sunny-line']);
    expect(columns).toEqual(['storm-light', 'sunny-line']);
    expect(rows.map(({ who, passed }) => [who, passed])).toEqual([
      ['K.', 2],
      ['M.', 0],
    ]);
    expect(rows[0]?.cells.get('sunny-line')).toMatchObject({ tries: 2, best: { passed: true } });
    expect(rows[1]?.cells.get('storm-light')).toBeUndefined();
    expect(counted).toBe(4);
  });

  it('says what was missed most, each record once', () => {
    const { flags, short } = classSheet(all, []);
    expect(flags[0]).toEqual({ id: 'closed-needing-visit', records: 2 });
    expect(short.map(({ records }) => records)).toEqual([...short.map(({ records }) => records)].sort((a, b) => b - a));
    expect(short).toContainEqual({ id: 'decision', records: 2 });
  });

  it('goes into a spreadsheet as text, a formula for a name too', () => {
    const lines = classCsv(classSheet(all, []), { why: () => 'no record, "really"' }).split('\r\n');
    expect(lines[0]).toMatch(/^who,call,state,passed,score/);
    expect(lines.filter((line) => line.startsWith('K.,'))).toHaveLength(2);
    expect(lines.find((line) => line.startsWith("'=2+3,"))).toMatch(/,refused,.*"no record, ""really"""$/);
    expect(lines.at(-1)).toBe('');
  });

  it('has a column for the regret where it is asked for, empty where it is not known', () => {
    const regret = ({ call }: Counts) => (call === 'storm-light' ? 12.345 : undefined);
    const lines = classCsv(classSheet(all, []), { why: () => 'none', regret }).split('\r\n');
    const last = (line: string | undefined) => line?.split(',').at(-1);
    expect(last(lines[0])).toBe('regret_min');
    expect(last(lines.find((line) => line.startsWith('K.,storm-light')))).toBe('12.3');
    expect(last(lines.find((line) => line.startsWith('K.,sunny-line')))).toBe('');
    expect(last(lines.find((line) => line.includes(',refused,')))).toBe('');
  });
});
