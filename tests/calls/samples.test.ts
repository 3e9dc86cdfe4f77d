import { describe, expect, it } from 'vitest';
import { type CallFile, CallSession, clockAt, liveFacts, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { type JarReading, jarVerdict, readJar, SPOTS } from '../../src/plant/index.ts';
import { known, xray } from '../../src/scene/index.ts';
import { jarNote, residualRemark } from '../../src/service/actions/samples.ts';
import { INSTRUMENTS, showing } from '../../src/service/instruments.ts';
import { type Readout, readout } from '../../src/unit/index.ts';
import { must } from './hands.ts';

const base = shippedCalls().find((c) => c.id === 'noon-sprinklers') as CallFile;

/** A visit with every lid off, to a sound property or to one with the faults named. */
function visit(change: Partial<CallFile> = {}): CallSession {
  const session = new CallSession(prepareCall({ ...base, faults: [], ...change }), 'practice');
  must(session, 'ask-danger');
  must(session, 'decide-visit', { urgency: 'now', load: [] });
  for (const id of ['make-safe', 'open-lid:trash', 'open-lid:aeration', 'open-lid:riser', 'open-lid:pump']) {
    must(session, id);
  }
  return session;
}

function now(session: CallSession): Readout {
  return readout(session.service.unit, session.now_ms / 1000);
}

/** The notes an action made, and what a note's reading holds under a name. */
function notesBy(session: CallSession, id: string) {
  return session.service.person.notebook.filter((n) => n.by === id);
}

function values(session: CallSession, id: string): Record<string, number> {
  const [note] = notesBy(session, id);
  const entries = Object.entries(note?.reading.values ?? {});
  return Object.fromEntries(entries.map(([key, v]) => [key, typeof v === 'number' ? v : Number(numberIn(v))]));
}

function numberIn(value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'value' in value ? value.value : Number.NaN;
}

function aroundOf(session: CallSession) {
  const clock = clockAt(session, session.now_ms / 1000);
  return { day: clock, secondOfDay: clock.secondOfDay, cloud: 0, rain: 0 };
}

function sceneOf(session: CallSession) {
  return known({
    spec: session.prepared.spec,
    person: session.service.person,
    live: liveFacts(session),
    now_s: session.now_ms / 1000,
    around: aroundOf(session),
  });
}

/** Printed colours 0, 0.5, 1, 2, 3, 5 and 10 mg/L, pH by halves from 6 to 9 (common practice). */
describe('a chlorine strip', () => {
  const read = (truth: number, seed: number) => showing(INSTRUMENTS.totalChlorine_mgL, truth, seed, 0);
  const readings = (truth: number) => Array.from({ length: 200 }, (_, seed) => read(truth, seed));

  it('shows no colour where there is no chlorine, and none below half the first colour', () => {
    expect(new Set(readings(0))).toEqual(new Set([0]));
    expect(new Set(readings(0.12))).toEqual(new Set([0]));
  });

  it('shows the nearest colour, and between two now one, now the other', () => {
    expect(new Set(readings(0.55))).toEqual(new Set([0.5]));
    expect(new Set(readings(4))).toEqual(new Set([3, 5]));
    expect(new Set(readings(60))).toEqual(new Set([10]));
    expect(read(4, 7)).toBe(read(4, 7));
  });

  it('reads the pump tank: free no more than total, pH by halves', () => {
    const session = visit();
    const truth = now(session).water.pump;
    must(session, 'dip-strip');
    const { total = -1, free = -1, pH = -1 } = values(session, 'dip-strip');
    expect([0, 0.5, 1]).toContain(total);
    expect(Math.abs(total - truth.residual_mgL)).toBeLessThan(0.5);
    expect(free).toBeLessThanOrEqual(total);
    expect(pH * 2).toBe(Math.round(pH * 2));
    expect(Math.abs(pH - truth.pH)).toBeLessThan(0.8);
  });

  /** 30 TAC 285.91(4): 0.1 mg/L or more where it is sprayed; over 4 mg/L harms turf (common practice). */
  it.each([
    [0, 'remark.no-colour', 'off'],
    [0.5, 'remark.residual', 'good'],
    [3, 'remark.residual', 'good'],
    [5, 'remark.residual', 'off'],
  ] as const)('of %f mg/L in all is judged', (total, id, tone) => {
    expect(residualRemark(total)).toMatchObject({ tone, text: { id } });
  });

  it('needs the lid off, and is not offered where light disinfects', () => {
    const session = visit();
    must(session, 'close-lid:pump');
    expect(session.act({ id: 'dip-strip' })?.id).toBe('why.lid');
    expect(visit({ unit: 'u3' }).act({ id: 'dip-strip' })?.id).toBe('why.no-such-action');
  });
});

/** A litre of mixed liquor, half an hour still, the line read to 10 mL: 30 to 50 % is satisfactory (common practice). */
describe('a jar of settled sludge', () => {
  it('takes half an hour and shows what the liquor drawn at its start settles to', () => {
    const [session, twin] = [visit(), visit()];
    const began_ms = session.now_ms;
    must(session, 'settle-jar');
    expect((session.now_ms - began_ms) / 60_000).toBe(35);
    twin.advance(began_ms + 5 * 60_000);
    const truth = readJar(now(twin).liquor, 30).settled_mLL;
    const settled_mL = (values(session, 'settle-jar').settled ?? 0) * 1000;
    expect(settled_mL % 10).toBeCloseTo(0, 6);
    expect(Math.abs(settled_mL - truth)).toBeLessThan(25);
    expect(notesBy(session, 'settle-jar')[0]?.reading.values).toMatchObject({
      colour: { id: 'word.chocolate-brown' },
      above: { id: 'word.clear' },
    });
  });

  it('is drawn in pencil until it was taken, then as it was read and never as it is', () => {
    const session = visit();
    expect(sceneOf(session).jar).toMatchObject({ ink: { kind: 'pencil' }, settled_mLL: null, above: null, curve: [] });
    must(session, 'settle-jar');
    const { jar } = sceneOf(session);
    expect(jar.ink.kind).toBe('ink');
    expect(jar.settled_mLL).toBeCloseTo((values(session, 'settle-jar').settled ?? 0) * 1000, 6);
    expect(jar).toMatchObject({ minutes: 30, floats: false, curve: [] });
    expect(jar.verdict).toBe(jarVerdict(jar.settled_mLL ?? 0));
    // Colours by their names: what an eye tells, in the middle of what goes by it.
    expect(jar.above?.solids_mgL).toBe(15);
    expect(jar.sludge?.solids_mgL).toBe(3000);
    session.advance(session.now_ms + 24 * 3_600_000);
    const { ink: _ink, ...later } = sceneOf(session).jar;
    expect(jar).toMatchObject(later);
  });

  it('of an instant with everything open is what its liquor would settle to, to the mark', () => {
    for (const change of [{}, { unit: 'u3' }]) {
      const session = visit(change);
      const { jar } = xray(session.service.unit, session.now_ms / 1000, aroundOf(session));
      const truth = readJar(now(session).liquor, 30);
      expect(jar.ink.kind).toBe('live');
      expect(Math.abs((jar.settled_mLL ?? 0) - truth.settled_mLL)).toBeLessThan(10);
      expect(Math.abs((jar.above?.solids_mgL ?? 0) - truth.above_mgL)).toBeLessThan(1);
      expect(jar.floats).toBe(truth.floats);
      expect(jar.curve.at(-1)).toEqual({ minutes: 30, settled_mLL: jar.settled_mLL });
    }
  });

  const jar: JarReading = { settled_mLL: 300, above_mgL: 12, clarity_m: 0.8, floats: false };
  it.each([
    [60, 'remark.jar-scant', 'plain'],
    [250, 'remark.jar-thin', 'plain'],
    [400, 'remark.jar-satisfactory', 'good'],
    [550, 'remark.jar-thick', 'off'],
    [700, 'remark.jar-remove', 'off'],
  ] as const)('%i mL is judged %s', (settled, id, tone) => {
    expect(jarNote(jar, settled, 'chocolate-brown').remark).toEqual({ tone, text: { id } });
  });

  it('has no line to read where gas lifts the sludge, or where nothing settles', () => {
    expect(jarNote({ ...jar, floats: true }, 300, 'tan').reading.id).toBe('reading.jar-floats');
    expect(jarNote({ ...jar, settled_mLL: 1000 }, 990, 'tan').reading.id).toBe('reading.jar-no-line');
  });
});

/** Three spots away from the pump, averaged: the pump stirs up what lies near it. */
describe('sludge cores', () => {
  it('are read to a centimetre at three spots, and averaged', () => {
    const session = visit();
    must(session, 'core-sludge');
    const truth = now(session).sediment_m;
    const { inlet = -1, middle = -1, far = -1, mean = -1 } = values(session, 'core-sludge');
    expect(Math.abs(inlet - truth.inlet)).toBeLessThan(0.025);
    expect(Math.abs(middle - truth.middle)).toBeLessThan(0.025);
    expect(Math.abs(far - truth.far)).toBeLessThan(0.025);
    expect(inlet * 100).toBeCloseTo(Math.round(inlet * 100), 6);
    expect(mean).toBeCloseTo((inlet + middle + far) / 3, 9);
    const tank = sceneOf(session).chambers['pump-tank'];
    expect(tank.sludge_m).toBeCloseTo(mean, 9);
    expect(tank.cores).toEqual([
      { across: 0.125, sludge_m: inlet },
      { across: 0.375, sludge_m: middle },
      { across: 0.875, sludge_m: far },
    ]);
  });

  it('of the trash tank: sludge and scum, pumped out over a quarter of its depth', () => {
    const session = visit();
    must(session, 'probe-trash');
    const truth = now(session);
    const { sludge = -1, scum = -1 } = values(session, 'probe-trash');
    expect(Math.abs(sludge - truth.trashSludge_m)).toBeLessThan(0.025);
    expect(Math.abs(scum - truth.trashScum_m)).toBeLessThan(0.035);
    expect(notesBy(session, 'probe-trash')[0]?.remark?.tone).toBe('good');
    expect(sceneOf(session).chambers['trash-tank']).toMatchObject({ sludge_m: sludge, scum_m: scum });
  });
});

const LOOKS = ['look-into-aeration', 'look-into-clarifier', 'look-into-riser', 'look-into-pump-tank'] as const;

/** Chocolate brown with a little crisp foam and an earthy smell is health; black and rotten eggs is too little air. */
describe('what looking and smelling tells', () => {
  const words = (session: CallSession, id: string) => {
    must(session, id);
    return JSON.stringify(notesBy(session, id).map((n) => [n.reading, n.remark?.tone]));
  };

  it('of a healthy chamber', () => {
    const said = words(visit(), 'look-into-aeration');
    for (const id of ['chocolate-brown', 'smell-earthy', 'foam-crisp-white', 'foam-little', 'reading.bubbles']) {
      expect(said).toContain(id);
    }
    expect(said).not.toContain('off');
  });

  it('of one that has been without air for two days', () => {
    const session = visit({ faults: [{ fault: 'compressor-stopped', onset: '2031-04-14T10:00' }] });
    const said = words(session, 'look-into-aeration');
    for (const id of ['word.black', 'smell-rotten-eggs', 'reading.still', 'off']) expect(said).toContain(id);
    expect(said).not.toContain('foam');
  });

  it.each(LOOKS)('%s says colour and smell', (id) => {
    expect(words(visit(), id)).toMatch(/"word\.(clear|cloudy|chocolate-brown)".*"word\.smell-/);
  });
});

describe('water in the picture', () => {
  it('is ordinary until it is looked at, then of the colour seen, with the chlorine of the strip', () => {
    const session = visit({ faults: [{ fault: 'compressor-stopped', onset: '2031-04-14T10:00' }] });
    must(session, 'look-into-aeration');
    const before = sceneOf(session).chambers;
    expect(before.aeration.water?.hoursWithoutOxygen).toBeGreaterThan(24);
    expect(before.clarifier.water).toMatchObject({ solids_mgL: 15, hoursWithoutOxygen: 0 });
    must(session, 'look-into-pump-tank');
    expect(sceneOf(session).chambers['pump-tank'].water?.residual_mgL).toBe(0.6);
    must(session, 'dip-strip');
    const { total } = values(session, 'dip-strip');
    expect(sceneOf(session).chambers['pump-tank'].water?.residual_mgL).toBe(total);
  });

  it('is of the same look where the same was read, whatever a laboratory would find', () => {
    const look = (household: string) => {
      const session = visit({ household });
      for (const id of LOOKS) must(session, id);
      const { chambers } = sceneOf(session);
      const water = Object.fromEntries(Object.entries(chambers).map(([id, c]) => [id, c.water]));
      const said = notesBy(session, 'look-into-clarifier').concat(notesBy(session, 'look-into-aeration'));
      return { water, said: said.map((n) => n.reading), truth: now(session).water };
    };
    const [a, b] = [look('family-2'), look('family-3')];
    expect(a.truth.aeration.solids_mgL).not.toBe(b.truth.aeration.solids_mgL);
    expect(a.said).toEqual(b.said);
    expect(a.water.aeration).toEqual(b.water.aeration);
    expect(a.water.clarifier).toEqual(b.water.clarifier);
  });

  it('with everything open shows the mean of the sediment', () => {
    const session = visit();
    const t = session.now_ms / 1000;
    const { sediment_m } = now(session);
    const mean = SPOTS.reduce((sum, spot) => sum + sediment_m[spot] / 4, 0);
    const scene = xray(session.service.unit, t, aroundOf(session));
    expect(scene.chambers['pump-tank'].sludge_m).toBeCloseTo(mean, 9);
  });
});
