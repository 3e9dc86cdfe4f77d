import { describe, expect, it } from 'vitest';
import { checkCall } from '../../src/calls/check.ts';
import { missingProofs } from '../../src/calls/flags.ts';
import {
  type CallFile,
  CallSession,
  isCleared,
  prepareCall,
  shippedCalls,
  shippedLibrary,
} from '../../src/calls/index.ts';
import { faultsOf, PLACED_FAULTS } from '../../src/faults/index.ts';
import { LOADS, say } from '../../src/service/index.ts';
import { readout } from '../../src/unit/index.ts';
import { doing, must } from './hands.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;
const HOUR_ms = 3_600_000;

function visit(unit: string, fault?: string, onset = '2031-04-15T12:00'): CallSession {
  const faults = fault ? [{ fault, onset }] : [];
  const session = new CallSession(prepareCall({ ...base, unit, household: 'family-4', faults }), 'practice');
  must(session, 'ask-danger');
  must(session, 'decide-visit', { urgency: 'now', load: [] });
  for (const load of LOADS) session.service.person.load.add(load);
  for (const id of ['make-safe', 'open-lid:riser', 'open-lid:pump']) must(session, id);
  return session;
}

function now(session: CallSession) {
  return readout(session.service.unit, session.now_ms / 1000);
}

/** Total chlorine of a strip dipped now, mg/L. */
function strip(session: CallSession): number {
  must(session, 'dip-strip');
  return session.service.person.facts.residual_mgL?.value ?? Number.NaN;
}

const KINDS = { u1: 'liquid', u2: 'tablets', u3: 'ultraviolet' } as const;
const OURS = [...PLACED_FAULTS.values()].filter((f) => f.family === 'disinfection');
const CASES = Object.entries(KINDS).flatMap(([unit, kind]) =>
  OURS.filter((f) => f.needs?.disinfection === kind).map((f) => [f.id, unit, f] as const),
);

describe('a fault of disinfection', () => {
  it('is to be had only on a unit that disinfects that way', () => {
    expect(CASES.map(([id]) => id).sort()).toEqual(OURS.map((f) => f.id).sort());
    for (const [unit, kind] of Object.entries(KINDS)) {
      const spec = prepareCall({ ...base, unit, faults: [] }).spec;
      const had = faultsOf(spec).filter((f) => f.family === 'disinfection');
      expect(had.map((f) => f.needs?.disinfection)).toEqual(had.map(() => kind));
    }
  });

  it('on another unit is refused with a mend', () => {
    const { id: _, ...call } = base;
    const file = { ...call, id: 'x', unit: 'u2', faults: [{ fault: 'feed-clogged', onset: '2031-04-15T12:00' }] };
    const checked = checkCall({ ...file, solution: [{ do: 'leave-site' }] }, shippedLibrary());
    expect(checked).toMatchObject({
      ok: false,
      problems: [
        { path: 'faults[0].fault', message: '"feed-clogged" cannot be on u2', mend: 'choose another fault or unit' },
      ],
    });
  });

  it.each(CASES)(
    '%s is told apart on %s by its checks, ended by each mend, and the cure can be proved',
    (_, unit, f) => {
      const [sound, faulty] = [visit(unit), visit(unit, f.id)];
      for (const check of f.shownBy) expect(doing(faulty, check), check).not.toBe(doing(sound, check));
      for (const mend of f.mendedBy) {
        const session = visit(unit, f.id);
        doing(session, mend);
        expect(isCleared(session, f.key), mend).toBe(true);
        for (const check of f.shownBy) expect(doing(session, check), check).toBe(doing(sound, check));
        const atWork = unit === 'u3' ? 'look-at-ultraviolet' : 'watch-feed';
        for (const id of [atWork, 'reset-panel', 'watch-panel']) must(session, id);
        expect(missingProofs(session), mend).toEqual([]);
      }
      for (const id of f.hiddenBy) {
        const session = visit(unit, f.id);
        doing(session, id);
        expect(isCleared(session, f.key), id).toBe(false);
      }
    },
  );
});

/** What stands in front of one who looks: each of these faults gives its own picture, no two of one unit the same. */
describe('the checks of disinfection', () => {
  it.each([
    ['u1', 6],
    ['u2', 5],
    ['u3', 3],
  ] as const)('together tell all faults of %s from each other', (unit, pictures) => {
    const checks = [...new Set(CASES.filter(([, on]) => on === unit).flatMap(([, , f]) => f.shownBy))];
    const seen = (fault?: string) => checks.map((c) => doing(visit(unit, fault), c)).join(' | ');
    const all = [seen(), ...CASES.filter(([, on]) => on === unit).map(([id]) => seen(id))];
    expect(new Set(all).size).toBe(pictures);
  });

  it.each([
    ['u1', ['read-tablet-label', 'look-at-sleeve', 'free-tablets', 'clean-sleeve']],
    ['u2', ['test-hypochlorite', 'look-at-sleeve', 'clean-feed', 'prime-feed']],
    ['u3', ['look-at-disinfectant', 'watch-feed', 'test-hypochlorite', 'refill-disinfectant']],
  ])('are on %s only those of what it has', (unit, ids) => {
    for (const id of ids) expect(visit(unit).act({ id })).toEqual(say('why.no-such-action', { id }));
  });

  it('read the store to a tenth', () => {
    const session = visit('u1');
    must(session, 'look-at-disinfectant');
    const share = session.service.person.notebook.at(-1)?.reading.values?.share;
    expect(share).toMatchObject({ measure: 'share', resolution: 0.1 });
    const { value } = share as { value: number };
    expect(value * 10).toBeCloseTo(Math.round(value * 10), 9);
    expect(Math.abs(value - now(session).stock.share)).toBeLessThanOrEqual(0.05);
  });
});

/** 30 TAC 285.91(4): 0.1 mg/L or more in all where water is sprayed. A sound unit's strip reads 0.5 or 1. */
describe('a day after its onset', () => {
  const after = (unit: string, fault?: string) => visit(unit, fault, '2031-04-15T09:00');

  it.each(['reservoir-empty', 'feed-clogged', 'feed-air-locked'])('%s leaves the strip without colour', (fault) => {
    expect(strip(after('u1', fault))).toBe(0);
  });

  it.each(['tablets-used-up', 'tablets-bridged', 'wrong-tablets'])('%s leaves the strip without colour', (fault) => {
    expect(strip(after('u2', fault))).toBe(0);
  });

  it('a sound unit has chlorine, free chlorine of it, and too strong a feed far more', () => {
    for (const unit of ['u1', 'u2']) expect([0.5, 1]).toContain(strip(after(unit)));
    expect(strip(after('u1', 'overfeed'))).toBeGreaterThanOrEqual(3);
    expect(strip(after('u2', 'tablets-drowned'))).toBeGreaterThanOrEqual(3);
  });

  it('stale hypochlorite leaves no free chlorine, whatever the total', () => {
    const [sound, stale] = [now(after('u1')).water.pump, now(after('u1', 'hypochlorite-stale')).water.pump];
    expect(stale.freeChlorine_mgL).toBeLessThan(0.05);
    expect(sound.freeChlorine_mgL).toBeGreaterThan(0.25);
  });

  /** Same rule: 200 fecal coliform per 100 mL at most. */
  it('a coated sleeve lets through more coliform than may be sprayed, a clean one does not', () => {
    expect(now(after('u3')).water.pump.coliform_per100mL).toBeLessThan(200);
    expect(now(after('u3', 'uv-sleeve-dirty')).water.pump.coliform_per100mL).toBeGreaterThan(200);
  });
});

it.each([
  ['u1', 'reservoir-empty', 'refill-disinfectant'],
  ['u2', 'tablets-used-up', 'refill-disinfectant'],
  ['u2', 'wrong-tablets', 'change-tablets'],
] as const)('%s filled up after %s is full, and its strip has colour again a day later', (unit, fault, mend) => {
  const session = visit(unit, fault, '2031-04-13T12:00');
  must(session, mend);
  expect(now(session).stock).toEqual({ share: 1, strength: 1 });
  session.advance(session.now_ms + 24 * HOUR_ms);
  expect(strip(session)).toBeGreaterThanOrEqual(0.5);
});

/** Texas A&M tablet chlorination sheet: trichlor and calcium hypochlorite are never mixed: they can explode. */
describe('fresh tablets on pool tablets', () => {
  it('are a breach of life safety', () => {
    const session = visit('u2', 'wrong-tablets');
    session.act({ id: 'refill-disinfectant' });
    expect(session.breach).toBe('chlorine-mixed');
    expect(session.ended).toBe(true);
  });

  it('are none once the pool tablets are out, nor on tablets of the right kind', () => {
    const session = visit('u2', 'wrong-tablets');
    for (const id of ['change-tablets', 'refill-disinfectant']) must(session, id);
    must(visit('u2'), 'refill-disinfectant');
  });
});
