/** What a trainer withholds cannot be done, is not shown, and is not weighed. */
import { expect, it } from 'vitest';
import { probesIn } from '../../src/calls/expertise.ts';
import { CallSession, prepareCall, shippedCalls, viewOf } from '../../src/calls/index.ts';

const call = shippedCalls().find((c) => c.id === 'sunny-line');
if (!call) throw new Error('the call does not ship');

const whole = prepareCall(call);
const without = prepareCall({ ...call, withheld: ['soap-air-line', 'replace-compressor'] });

/** What can be done stands beside the picture, whatever it shows. */
const NO_SCENE = {} as Parameters<typeof viewOf>[1];

const shown = (prepared: typeof whole) => {
  const session = new CallSession(prepared, 'practice');
  return viewOf(session, NO_SCENE).parts.flatMap((part) => part.actions.map(({ action }) => action.id));
};

it('cannot be done, and says so', () => {
  const session = new CallSession(without, 'practice');
  session.act({ id: 'ask-danger' });
  session.act({ id: 'decide-visit', fill: { urgency: 'now', load: [] } });
  session.act({ id: 'make-safe' });
  expect(session.act({ id: 'soap-air-line' })?.id).toBe('why.withheld');
  expect(session.act({ id: 'soap-air-lines' })?.id).toBe('why.no-such-action');
  expect(session.act({ id: 'follow-air-line' })).toBeUndefined();
});

it('is not shown', () => {
  expect(shown(whole)).toEqual(expect.arrayContaining(['soap-air-line', 'replace-compressor']));
  expect(shown(whole).filter((id) => !shown(without).includes(id))).toEqual(['soap-air-line', 'replace-compressor']);
});

it('is not weighed', () => {
  const ids = (prepared: typeof whole) => probesIn(prepared).map(({ id }) => id);
  expect(ids(whole).filter((id) => !ids(without).includes(id))).toEqual(['soap-air-line']);
});
