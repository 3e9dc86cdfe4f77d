/** Put the steps of a lock-out in order. No simulation has them: they are the rule's own. */
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker } from './drill.ts';
import { ordering } from './sequence.ts';
import { unitRows } from './sheet.ts';

/** 29 CFR 1910.147 (from memory), with the three tests of the trade: a meter that is proved, used and proved again. */
const LOCK_OUT = [
  'tell',
  'shut-down',
  'isolate',
  'lock',
  'release',
  'prove-meter',
  'test-dead',
  'prove-again',
] as const;

export const lockOutDrill: Maker = (seed, spec) => ({
  skill: 'lockout',
  seed,
  prompt: say('drill.lockout.ask'),
  figure: { kind: 'sheet', rows: unitRows(spec) },
  ask: ordering(new Draws(seed, 'lockout'), 'lockout', LOCK_OUT),
});
