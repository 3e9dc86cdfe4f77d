import { expect, it } from 'vitest';
import { type Route, readRoute, writeRoute } from '../../../src/desk/routes.ts';

const ROUTES: readonly Route[] = [
  { screen: 'start' },
  { screen: 'start', find: 'olor a huevo / 50 %' },
  { screen: 'call', callId: 'storm-light' },
  { screen: 'call', callId: 'storm-light', rung: 'led-whole' },
  { screen: 'call', callId: 'storm-light', rung: 'coached' },
  { screen: 'debrief', key: 12 },
  { screen: 'drills' },
  { screen: 'drills', seed: 40 },
  { screen: 'quiz' },
  { screen: 'quiz', form: 41 },
  { screen: 'round' },
  { screen: 'instructor' },
  { screen: 'take' },
  { screen: 'class' },
  { screen: 'class', record: 17 },
  { screen: 'notebook', key: 4 },
  { screen: 'home' },
  { screen: 'home', card: true },
  { screen: 'faults' },
  { screen: 'faults', fault: 'line-split' },
  { screen: 'take', link: 'AbC-_9' },
  { screen: 'sheet', callId: 'storm-light', who: 'trainer' },
  { screen: 'sheet', callId: 'storm-light', who: 'trainee' },
];

it.each(ROUTES)('comes back to $screen by its address', (route) => {
  expect(readRoute(writeRoute(route))).toEqual(route);
});

it.each(['', '#/', '#/nowhere', '#/call/', '#/call/../x', '#/debrief/x', '#/sheet/x', '#/sheet/x/y'])(
  'leads from "%s" to the start',
  (hash) => {
    expect(readRoute(hash)).toEqual({ screen: 'start' });
  },
);

it('takes a call alone where its address names no rung of the ladder', () => {
  expect(readRoute('#/call/storm-light/carried')).toEqual({ screen: 'call', callId: 'storm-light' });
});

it.each(['#/drills/', '#/drills/x', '#/drills/-3', '#/drills/12345678901'])('takes no seed from "%s"', (hash) => {
  expect(readRoute(hash)).toEqual({ screen: 'drills' });
});

it.each(['#/faults/', '#/faults/..', '#/faults/a b'])('lists all faults at "%s"', (hash) => {
  expect(readRoute(hash)).toEqual({ screen: 'faults' });
});

it('searches for what stands in a damaged address', () => {
  expect(readRoute('#/find/100%')).toEqual({ screen: 'start', find: '100%' });
});

it('takes a damaged link along, to say so', () => {
  expect(readRoute('#/take/ab%20c.')).toEqual({ screen: 'take', link: 'ab%20c.' });
});
