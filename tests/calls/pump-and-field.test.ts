/** What checks of the pump, its line and its field show of each fault, what ends it, and what does not. */
import { describe, expect, it } from 'vitest';
import { missingProofs } from '../../src/calls/flags.ts';
import { type CallFile, CallSession, isCleared, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { faultsOf, PLACED_FAULTS } from '../../src/faults/index.ts';
import { ACTION_BY_ID, fits, LOADS, say } from '../../src/service/index.ts';
import { doing, must } from './hands.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;
const UNITS = ['u1', 'u2', 'u3'] as const;

function visit(unit: string, fault?: string): CallSession {
  const faults = fault ? [{ fault, onset: '2031-04-15T12:00' }] : [];
  const call = { ...base, unit, household: 'family-4', history_days: 2, faults };
  const session = new CallSession(prepareCall(call), 'practice');
  must(session, 'ask-danger');
  must(session, 'decide-visit', { urgency: 'now', load: [] });
  for (const load of LOADS) session.service.person.load.add(load);
  for (const id of ['make-safe', 'clear-field', 'open-lid:pump']) {
    if (session.definition(id)) must(session, id);
  }
  return session;
}

/** What is seen of the field in a run. */
function running(session: CallSession, id: string): string {
  must(session, 'selector-hand');
  const seen = doing(session, id);
  must(session, 'selector-auto');
  return seen;
}

const specOf = (unit: string) => prepareCall({ ...base, unit, faults: [] }).spec;
const reachable = (unit: string, id: string) => {
  const def = ACTION_BY_ID.get(id);
  return def !== undefined && def.place !== 'phone' && fits(def, specOf(unit));
};
const NEW = [
  'impeller-worn',
  'impeller-clogged',
  'intake-screened',
  'capacitor-weak',
  'check-valve-stuck-open',
  'check-valve-stuck-shut',
  'weep-hole-blocked',
  'air-locked',
  'siphoning',
  ...[...PLACED_FAULTS.values()].filter((f) => f.family === 'field').map((f) => f.key),
];
const CASES = UNITS.flatMap((unit) =>
  faultsOf(specOf(unit))
    .filter((f) => NEW.includes(f.key))
    .map((f) => [f.key, unit, f] as const),
);

describe('a fault of the pump or the field', () => {
  it('of sprinklers is not to be had on a drip field, nor the other way round', () => {
    const had = (unit: string) => CASES.filter(([, on]) => on === unit).map(([key]) => key);
    expect(had('u1')).toContain('head-broken');
    expect(had('u1')).not.toContain('zone-valve-stuck');
    expect(had('u3')).toContain('lateral-broken');
    expect(had('u3')).not.toContain('head-broken');
  });

  it.each(CASES.filter(([, unit]) => unit !== 'u2'))(
    '%s on %s is told from a sound unit by each of its checks, ended by each mend, and by nothing that hides it',
    (_key, unit, f) => {
      const look = (session: CallSession, id: string) =>
        id === 'look-at-field' ? running(session, id) : doing(session, id);
      for (const check of f.shownBy.filter((id) => reachable(unit, id))) {
        expect(look(visit(unit, f.id), check), check).not.toBe(look(visit(unit), check));
      }
      for (const mend of f.mendedBy) {
        const session = visit(unit, f.id);
        doing(session, mend);
        expect(isCleared(session, f.key), mend).toBe(true);
      }
      for (const id of f.hiddenBy.filter((hides) => reachable(unit, hides))) {
        const session = visit(unit, f.id);
        doing(session, id);
        expect(isCleared(session, f.key), id).toBe(false);
      }
    },
  );
});

/** Published symptom tables and common practice: flow, current and pressure together part a pump from what holds or loses its water. */
describe('gauge, clamp and draw-down part them', () => {
  it.each([
    ['u1', undefined, 'good', 'rated-amps', 'ordinary', 'filter-drop'],
    ['u2', undefined, 'good', 'rated-amps', 'ordinary', 'filter-drop'],
    ['u3', undefined, 'good', 'rated-amps', 'ordinary', 'filter-drop'],
    ['u1', 'impeller-worn', 'low', 'amps-low', 'pump-head-low', 'filter-drop'],
    ['u1', 'impeller-clogged', 'low', 'amps-low', 'pump-head-low', 'filter-drop'],
    ['u1', 'intake-screened', 'low', 'amps-low', 'pump-run-low', 'filter-drop'],
    ['u1', 'weep-hole-blocked', 'low', 'amps-low', 'pump-head-low', 'filter-drop'],
    ['u1', 'air-locked', 'low', 'amps-low', 'pump-head-low', 'nothing-arrives'],
    ['u1', 'disc-filter-clogged', 'low', 'amps-low', 'held-back', 'filter'],
    ['u1', 'check-valve-stuck-shut', 'low', 'amps-low', 'held-back', 'nothing-arrives'],
    ['u1', 'nozzle-clogged', 'low', 'rated-amps', 'ordinary', 'filter-drop'],
    ['u1', 'discharge-broken', 'high', 'amps-high', 'pump-run-low', 'filter-drop'],
    ['u1', 'head-broken', 'high', 'amps-high', 'pump-run-low', 'filter-drop'],
    ['u3', 'lateral-broken', 'high', 'amps-high', 'pump-run-low', 'filter-drop'],
    ['u3', 'zone-valve-stuck', 'low', 'amps-low', 'held-back', 'filter-drop'],
    ['u1', 'soil-saturated', 'good', 'rated-amps', 'ordinary', 'filter-drop'],
    ['u1', 'check-valve-stuck-open', 'good', 'rated-amps', 'ordinary', 'filter-drop'],
  ])('%s with %s: draw-down %s, %s, pressure %s, filter %s', (unit, fault, drawDown, amps, pressure, filter) => {
    const session = visit(unit, fault);
    expect(doing(session, 'draw-down')).toContain(`remark.draw-down-${drawDown}`);
    expect(doing(session, 'amps-in-hand')).toContain(`remark.${amps} `);
    expect(doing(session, 'pump-pressure')).toContain(`remark.${pressure} `);
    expect(doing(session, 'filter-pressures')).toContain(`remark.${filter} `);
  });
});

describe('all checks together', () => {
  const CHECKS = [
    ...['listen-pump', 'look-at-weep-hole', 'draw-down', 'pump-pressure', 'filter-pressures', 'walk-field'],
    ...['watch-after-stop', 'inspect-openings', 'inspect-pump', 'inspect-check-valve', 'test-capacitor', 'check-zones'],
  ];

  it.each(UNITS)('tell every fault of pump and field on %s from every other', (unit) => {
    const checks = CHECKS.filter((id) => reachable(unit, id));
    const pictures = new Map<string, string>();
    for (const fault of [undefined, ...CASES.filter(([, on]) => on === unit).map(([key]) => key)]) {
      const session = visit(unit, fault);
      const picture = checks.map((id) => doing(session, id)).join(' | ');
      expect(pictures.get(picture), `${fault} looks like`).toBeUndefined();
      pictures.set(picture, fault ?? 'a sound unit');
    }
  });

  it('a capacitor stays weak between its spells, and a seized shaft is no capacitor’s', () => {
    expect(doing(visit('u1', 'capacitor-weak'), 'inspect-pump')).toContain('reading.pump-whole');
    expect(doing(visit('u1', 'pump-seized'), 'inspect-pump')).toContain('reading.shaft-stands');
    expect(doing(visit('u1', 'pump-seized'), 'test-capacitor')).toContain('good');
    const session = visit('u1', 'capacitor-weak');
    for (let hour = 0; session.service.unit.has('capacitor-weak'); hour++) {
      session.advance(session.now_ms + 3_600_000);
      expect(hour).toBeLessThan(200);
    }
    expect(doing(session, 'test-capacitor')).toContain('off');
  });
});

it('the cure of a broken head is proved by a dose and by its spray', () => {
  const session = visit('u1', 'head-broken');
  doing(session, 'renew-head');
  expect(missingProofs(session)).toEqual(['dosing', 'spray']);
  must(session, 'advance-timer');
  must(session, 'look-at-field');
  expect(missingProofs(session)).toEqual([]);
});

it('checks of a drip field’s zones are not offered where heads spray', () => {
  expect(visit('u1').act({ id: 'check-zones' })).toEqual(say('why.no-such-action', { id: 'check-zones' }));
});
