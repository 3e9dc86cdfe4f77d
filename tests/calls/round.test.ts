import { describe, expect, it } from 'vitest';
import { shippedClimates } from '../../src/calls/climates.ts';
import {
  CallSession,
  checkRound,
  firstState,
  type Lot,
  type LotState,
  liveOn,
  liveYear,
  liveYearAs,
  lotsOf,
  makeProgress,
  makeRecord,
  preparedOf,
  replay,
  replayYear,
  resumeCall,
  rowOf,
  shippedLibrary,
  shippedRound,
  totalOf,
  yearRecord,
} from '../../src/calls/index.ts';
import { Hand } from '../../src/calls/players/hand.ts';
import { leave, makeSafe } from '../../src/calls/players/site.ts';

const DAY_s = 86_400;
/** The expert thinks for seconds at each call; a busy machine may take minutes over it. */
const LONG_ms = 600_000;

/** One lot of the shipped round, over a year cut short to save time. */
function lotOf(number: string, days: number): Lot {
  const lot = lotsOf({ ...shippedRound(), days }).find((l) => l.file.lot === number);
  if (!lot) throw new Error(`no lot ${number}`);
  return lot;
}

/** Drives out on every ring, does these things, and leaves the property ready. */
function always(...ids: readonly string[]): (session: CallSession) => void {
  return (session) => {
    const hand = new Hand(session);
    hand.do('ask-danger');
    for (const id of ids) if (id.startsWith('advise-')) hand.do(id);
    hand.do('decide-visit', { urgency: 'now', load: [] });
    makeSafe(hand);
    for (const id of ids) if (!id.startsWith('advise-')) hand.doSafely(id);
    leave(hand);
  };
}

/** Day and reason of each ring. */
function rings({ visits }: LotState): string[] {
  return visits.map(({ ring }) => `${Math.floor(ring.at_s / DAY_s)} ${ring.symptoms.join(' ') || ring.kind}`);
}

describe('two years of one lot that differ in one action', () => {
  // Lot 3 is visited on day 44; its disc filter takes 170 days to clog.
  const cleaned = liveYear(lotOf('3', 130), always('clean-disc-filter'));
  const skipped = liveYear(lotOf('3', 130), always());

  it('are the same up to it', () => {
    expect(skipped.visits[0]?.ring).toEqual(cleaned.visits[0]?.ring);
    expect(skipped.visits[0]?.from).toEqual(cleaned.visits[0]?.from);
  });

  it('the filter that was cleaned brings nobody; the one that was skipped sprays by day two months later', () => {
    expect(rings(cleaned)).toEqual(['44 routine']);
    expect(rings(skipped).length).toBeGreaterThan(1);
    const second = skipped.visits[1];
    expect(second?.ring.symptoms).toContain('sprays-by-day');
    expect((second?.ring.at_s ?? 0) / DAY_s).toBeGreaterThan(44 + 60);
    expect(second?.entry.stood.map((s) => s.key)).toContain('disc-filter-clogged');
  });

  it('the book says what was cleaned, and from when the clock runs anew', () => {
    expect(cleaned.visits[0]?.entry.cleaned).toEqual(['clean-disc-filter']);
    expect(skipped.visits[0]?.entry.cleaned).toEqual([]);
    expect(cleaned.since_s[0]).toBeGreaterThan(44 * DAY_s);
    expect(skipped.since_s[0]).toBe(-20 * DAY_s);
  });
});

describe('a trap that is filled', () => {
  it('dries again within two months where nobody said why, and stays sealed where somebody did', () => {
    // A trap loses its 50 mm in five to six weeks; half a minute of water a week keeps it (common practice, no source).
    const filled = liveYear(lotOf('15', 90), always('fill-trap'));
    const advised = liveYear(lotOf('15', 90), always('fill-trap', 'advise-run-water'));
    expect(rings(filled).filter((r) => r.includes('smell-indoors')).length).toBe(2);
    expect(rings(advised).filter((r) => r.includes('smell-indoors')).length).toBe(1);
  });
});

describe('a poor mend', () => {
  it('brings the same cause back to the same door, until the household has had enough', () => {
    // A mown-off head stays whatever is done at the panel.
    const poor = liveYear(lotOf('27', 150), always('reset-panel'));
    const row = rowOf(lotOf('27', 150), poor);
    expect(row.again).toBeGreaterThanOrEqual(3);
    expect(row.lost).toBe(1);
    const lost = poor.visits.findIndex((v) => v.entry.lost);
    expect(poor.visits.slice(lost + 1).flatMap((v) => v.entry.stood.map((s) => s.key))).not.toContain('head-broken');
  });
});

describe('a call on a living lot', () => {
  const lot = lotOf('15', 60);
  const rung = liveOn(lot, firstState(lot));
  const prepared = preparedOf(lot, rung, 0);
  if (!prepared) throw new Error('nobody rang');

  it('begins on that very unit at the instant of the ring', () => {
    const { unit } = new CallSession(prepared, 'practice').service;
    expect(unit.t).toBe(rung.door?.ring.at_s);
    expect(prepared.call.report.noticed).toEqual(['smell-indoors']);
    expect(prepared.lived?.causes).toEqual(['trap-dry']);
  });

  it(
    'is recorded, replayed and taken up again to the same bits',
    () => {
      const session = new CallSession(prepared, 'practice');
      const hand = new Hand(session);
      hand.do('ask-danger');
      hand.do('decide-visit', { urgency: 'next-visit', load: [] });
      makeSafe(hand);
      const resumed = resumeCall(prepared, 'practice', JSON.parse(JSON.stringify(makeProgress(session))));
      if (!('session' in resumed)) throw new Error(resumed.why.id);
      expect(resumed.session.stateDigest()).toBe(session.stateDigest());
      hand.doSafely('look-at-traps');
      hand.do('leave-site');
      const made = JSON.parse(JSON.stringify(makeRecord(session)));
      expect(replay(prepared, made).ok).toBe(true);
    },
    LONG_ms,
  );

  it('is another call where the lot was lived otherwise', () => {
    const other = preparedOf(
      lot,
      { ...rung, ...(rung.door ? { door: { ...rung.door, since_s: [-3 * DAY_s] } } : {}) },
      0,
    );
    const session = new CallSession(prepared, 'practice');
    expect(other && resumeCall(other, 'practice', makeProgress(session))).toMatchObject({
      why: { id: 'trouble.progress-other-version' },
    });
  });
});

describe('a recorded year', () => {
  const lot = lotOf('15', 60);
  const lived = liveYear(lot, always('fill-trap'));
  const record = () => JSON.parse(JSON.stringify(yearRecord(lot.round, [[lot, lived]], 0)));

  it('is lived again to the same bits', () => {
    expect(record().visits.length).toBeGreaterThan(0);
    expect(replayYear([lot], record())).toBeUndefined();
  });

  it('is refused where an action was left out, or the round is another', () => {
    const forged = record();
    forged.visits[0].actions = forged.visits[0].actions.filter((a: { do: string }) => a.do !== 'fill-trap');
    expect(replayYear([lot], forged)).toBeDefined();
    expect(replayYear([lotOf('15', 61)], record())?.id).toBe('replay.call-changed');
  });
});

describe('the year of the expert', () => {
  // Two lots of the shipped round, made to live fast: a disc filter that clogs within two months, wipes in the inlet.
  const days = 75;
  const fast = shippedRound().lots.flatMap((lot) => {
    if (lot.lot === '3') {
      const wears = [{ fault: 'disc-filter-clogged', severity: 1, grows_d: 60, since_d: 0 }];
      return [{ ...lot, wears, visits: ['2031-03-25T09:00'] }];
    }
    if (lot.lot !== '36') return [];
    return [{ ...lot, wears: [], visits: [], happens: [{ fault: 'inlet-blocked', onset: '2031-03-12T08:40' }] }];
  });
  const sheet = (player: 'expert' | 'parts-swapper') =>
    totalOf(lotsOf({ ...shippedRound(), days, lots: fast }).map((lot) => rowOf(lot, liveYearAs(lot, player))));

  it(
    'opens fewer doors than that of somebody who swaps parts, and does less harm',
    () => {
      const [expert, swapper] = [sheet('expert'), sheet('parts-swapper')];
      expect(expert.doors).toBeLessThan(swapper.doors);
      expect(expert.again).toBe(0);
      expect(swapper.again).toBeGreaterThan(3);
      expect(expert.ground_m3).toBeLessThan(swapper.ground_m3);
    },
    LONG_ms,
  );
});

describe('a round file', () => {
  const check = (change: (round: ReturnType<typeof copy>) => void) => {
    const round = copy();
    change(round);
    const checked = checkRound(round, shippedLibrary(), shippedClimates());
    return checked.ok ? [] : checked.problems.map((p) => `${p.path}: ${p.message}`);
  };
  const copy = () => JSON.parse(JSON.stringify(shippedRound()));

  it('ships twelve lots and is whole', () => {
    expect(shippedRound().lots.length).toBe(12);
    expect(check(() => undefined)).toEqual([]);
  });

  it.each([
    ['an unknown key', (r: ReturnType<typeof copy>) => (r.lots[0].colour = 'red'), 'lots[0].colour: unknown key'],
    [
      'a unit that is not there',
      (r: ReturnType<typeof copy>) => (r.lots[1].unit = 'u9'),
      'lots[1].unit: no such id "u9"',
    ],
    [
      'a climate that is not there',
      (r: ReturnType<typeof copy>) => (r.lots[1].climate = 'moon'),
      'lots[1].climate: no such id "moon"',
    ],
    [
      'a fault that is not there',
      (r: ReturnType<typeof copy>) => (r.lots[0].wears[0].fault = 'rust'),
      'lots[0].wears[0].fault: no such id "rust"',
    ],
    [
      'a wear that cannot grow',
      (r: ReturnType<typeof copy>) => (r.lots[0].wears[0].fault = 'pump-seized'),
      'lots[0].wears[0].fault: "pump-seized" does not grow',
    ],
    [
      'a fault the unit cannot have',
      (r: ReturnType<typeof copy>) => (r.lots[3].happens = [{ fault: 'uv-lamp-out', onset: '2031-05-01T08:00' }]),
      'lots[3].happens[0].fault: "uv-lamp-out" cannot be on u2',
    ],
    [
      'a day outside of the year',
      (r: ReturnType<typeof copy>) => (r.lots[0].visits[0] = '2033-01-01T09:00'),
      'lots[0].visits[0]: outside of the year',
    ],
    [
      'a day that is not',
      (r: ReturnType<typeof copy>) => (r.lots[0].visits[0] = '2031-02-30T09:00'),
      'lots[0].visits[0]: no such day or hour',
    ],
    ['one number twice', (r: ReturnType<typeof copy>) => (r.lots[1].lot = '3'), 'lots[1].lot: a second lot 3'],
  ])('with %s is refused, and says where', (_, change, line) => {
    expect(check(change)).toContain(line);
  });
});
