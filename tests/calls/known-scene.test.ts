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
