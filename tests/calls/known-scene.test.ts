import { describe, expect, it } from 'vitest';
import { type CallFile, CallSession, clockAt, liveFacts, prepareCall, shippedCalls } from '../../src/calls/index.ts';
import { known } from '../../src/scene/index.ts';

const sunny = shippedCalls().find((c) => c.id === 'sunny-line');
if (!sunny) throw new Error('the call does not ship');

/** The same call with another hidden truth. */
function variant(change: Partial<CallFile>): CallSession {
  return new CallSession(prepareCall({ ...(sunny as CallFile), ...change }), 'practice');
}

function sceneOf(session: CallSession) {
  const t = session.now_ms / 1000;
  const clock = clockAt(session, t);
  return known({
    spec: session.prepared.spec,
    person: session.service.person,
    live: liveFacts(session),
    now_s: t,
    around: { day: clock, secondOfDay: clock.secondOfDay, cloud: 0, rain: 0 },
  });
}

/** The drawing is the trainee's knowledge: what nobody has seen cannot show in it. */
describe('two units with different hidden state and the same readings', () => {
  const split = () => variant({});
  // Torn diaphragms, a stuck float and a clogged filter besides: nothing of it was looked at.
  const others = () =>
    variant({
      faults: [
        { fault: 'diaphragm-torn', onset: '2031-05-14T15:07' },
        { fault: 'disc-filter-clogged', onset: '2031-05-13T09:00' },
        { fault: 'stuck-up', part: 'overrideFloat', onset: '2031-05-14T15:00' },
      ],
      household: 'family-2',
    });

  it('give the same Scene when the phone rings', () => {
    const [a, b] = [split(), others()];
    expect(a.service.unit.y).not.toEqual(b.service.unit.y);
    expect(sceneOf(a)).toEqual(sceneOf(b));
  });

  it('give the same Scene after the same answers by phone', () => {
    const [a, b] = [split(), others()];
    for (const session of [a, b]) {
      for (const id of ['ask-danger', 'ask-history', 'ask-smell', 'ask-breakers']) session.act({ id });
    }
    expect(b.service.person.notebook.map((n) => n.reading)).toEqual(a.service.person.notebook.map((n) => n.reading));
    expect(sceneOf(a)).toEqual(sceneOf(b));
  });

  it('give another Scene once a reading tells them apart', () => {
    const [a, b] = [split(), others()];
    for (const session of [a, b]) session.act({ id: 'ask-hum' });
    expect(sceneOf(a).compressor.rattle).toBe(false);
    expect(sceneOf(b).compressor.rattle).toBe(true);
  });

  it('draws everything in pencil at the first ring', () => {
    const scene = sceneOf(split());
    for (const chamber of Object.values(scene.chambers)) expect(chamber.ink.kind).toBe('pencil');
    for (const float of scene.floats) expect(float.position).toBeNull();
    expect(scene.compressor.flow_Lmin).toBeNull();
    expect(scene.panel.breakers.map((b) => b.lever)).toEqual([null, null, null]);
  });

  it('inks what was seen and lets it age', () => {
    const session = split();
    session.act({ id: 'ask-danger' });
    session.act({ id: 'decide-visit', fill: { urgency: 'now', load: ['tubing'] } });
    for (const id of ['make-safe', 'open-lid:aeration', 'look-into-aeration']) session.act({ id });
    expect(sceneOf(session).chambers.aeration).toMatchObject({ ink: { kind: 'live' }, bubbles_Lmin: 0 });
    session.act({ id: 'read-panel' });
    const fresh = sceneOf(session).chambers.aeration.ink;
    expect(fresh.kind).toBe('ink');
    session.advance(session.now_ms + 3 * 3_600_000);
    const aged = sceneOf(session).chambers.aeration.ink;
    expect(aged.kind === 'ink' && fresh.kind === 'ink' && aged.fresh < fresh.fresh).toBe(true);
  });
});

const AT = '2031-05-14T15:07';

/** On site, gear on, in front of the open riser and the housing, nothing looked at yet. */
function arrive(session: CallSession): void {
  session.act({ id: 'ask-danger' });
  session.act({ id: 'decide-visit', fill: { urgency: 'now', load: ['tubing'] } });
  expect(session.act({ id: 'make-safe' })).toBeUndefined();
}

describe('a demand panel with an outlet that trips', () => {
  const tripped = () => variant({ unit: 'u2', faults: [{ fault: 'gfci-tripped', onset: AT }] });
  const unplugged = () =>
    variant({
      unit: 'u2',
      faults: [
        { fault: 'compressor-unplugged', onset: AT },
        { fault: 'stuck-down', part: 'startStopFloat', onset: AT },
      ],
    });

  it('shows no outlet until it is looked at, however near one stands', () => {
    const [a, b] = [tripped(), unplugged()];
    expect(sceneOf(a)).toEqual(sceneOf(b));
    for (const session of [a, b]) {
      arrive(session);
      session.act({ id: 'listen-compressor' });
    }
    expect(sceneOf(a)).toEqual(sceneOf(b));
    expect(sceneOf(a).compressor).toMatchObject({
      running: false,
      outlet: { gfci: true, plugged: null, tripped: null },
    });
    for (const session of [a, b]) session.act({ id: 'look-at-outlet' });
    expect(sceneOf(a).compressor.outlet).toMatchObject({ ink: { kind: 'live' }, plugged: true, tripped: true });
    expect(sceneOf(b).compressor.outlet).toMatchObject({ ink: { kind: 'live' }, plugged: false, tripped: false });
    a.act({ id: 'reset-gfci' });
    expect(sceneOf(a).compressor.outlet.tripped).toBe(false);
  });

  it('remembers the outlet as it was seen, from elsewhere', () => {
    const session = tripped();
    arrive(session);
    for (const id of ['look-at-outlet', 'read-panel']) session.act({ id });
    session.service.unit.send('gfci.reset');
    expect(sceneOf(session).compressor.outlet).toMatchObject({ ink: { kind: 'ink' }, tripped: true });
  });

  it('is drawn as its plans have it: two floats, two heads, one lamp, no timer', () => {
    const scene = sceneOf(tripped());
    expect(scene.floats.map((f) => f.id)).toEqual(['start-stop', 'high-water']);
    expect(scene.field).toMatchObject({ kind: 'spray', heads: 2, headPressure_kPa: null });
    expect(scene.panel).toMatchObject({ alarm: 'following', timer: null });
    expect(scene.panel.lamps.map((l) => l.id)).toEqual(['lamp']);
    expect(scene.ultraviolet).toMatchObject({ present: false });
  });
});

describe('a drip unit with two lamps and an ultraviolet lamp', () => {
  const dark = () => variant({ unit: 'u3', faults: [{ fault: 'uv-lamp-out', onset: AT }] });
  const split = () =>
    variant({
      unit: 'u3',
      faults: [
        { fault: 'line-split', onset: AT, severity: 1 },
        { fault: 'stuck-up', part: 'redundantOffFloat', onset: AT },
        { fault: 'disc-filter-clogged', onset: '2031-05-13T09:00' },
      ],
    });

  it('shows by its air lamp no more than that air or light fails', () => {
    const [a, b] = [dark(), split()];
    for (const session of [a, b]) arrive(session);
    expect(sceneOf(a)).toEqual(sceneOf(b));
    expect(sceneOf(a).panel.lamps).toEqual([
      { id: 'air', ink: { kind: 'live' }, state: 'lit' },
      { id: 'water', ink: { kind: 'live' }, state: 'dark' },
    ]);
    for (const session of [a, b]) session.act({ id: 'open-lid:riser' });
    expect(sceneOf(a)).toEqual(sceneOf(b));
    expect(sceneOf(a).ultraviolet).toEqual({ ink: { kind: 'pencil' }, present: true, lit: null });
    for (const session of [a, b]) session.act({ id: 'look-at-ultraviolet' });
    expect(sceneOf(a).ultraviolet).toMatchObject({ ink: { kind: 'live' }, lit: false });
    expect(sceneOf(b).ultraviolet).toMatchObject({ ink: { kind: 'live' }, lit: true });
  });

  it('draws the field in pencil while it drips: nobody sees under the lawn', () => {
    const session = split();
    arrive(session);
    expect(sceneOf(session).field).toMatchObject({
      ink: { kind: 'pencil' },
      kind: 'drip',
      heads: 0,
      headPressure_kPa: null,
      wet: null,
    });
  });

  it('draws the timer blank until the panel is read, and five floats', () => {
    const session = split();
    expect(sceneOf(session).floats).toHaveLength(5);
    expect(sceneOf(session).panel.timer).toEqual({ kind: 'timed', dial: null });
    arrive(session);
    session.act({ id: 'read-panel' });
    expect(sceneOf(session).panel.timer).toEqual({ kind: 'timed', dial: { every_min: 60, run_min: 4.7 } });
  });
});
