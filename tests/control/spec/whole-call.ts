/**
 * A whole call, from the first ring to the closed record, with the short cuts people take. What each short cut costs is
 * said beside it: the flags that a debrief must show, those and no others.
 */
import { setup } from 'xstate';

export type CallEvent =
  | 'danger and history asked'
  | 'silenced'
  | 'breakers read out'
  | 'reset'
  | 'five minutes watched'
  | 'closed by phone'
  | 'visit decided'
  | 'site made safe, pressure read'
  | 'cause named'
  | 'line spliced'
  | 'cure proved'
  | 'record written'
  | 'household told'
  | 'left';

export interface CallSays {
  readonly says: string;
  readonly stage?: string;
  /** Flags that the debrief shows if the call ends like this. */
  readonly flags?: readonly string[];
}

const call = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: CallEvent }, meta: {} as CallSays },
});

const stage = (says: string, shown: string): CallSays => ({ says, stage: shown });
const flagged = (says: string, ...flags: string[]): CallSays => ({ says, flags });

export const callMachine = call.createMachine({
  id: 'whole call',
  type: 'parallel',
  context: {},
  states: {
    progress: {
      initial: 'ringing',
      states: {
        ringing: { meta: stage('the phone rings', 'danger'), on: { 'danger and history asked': 'asked' } },
        asked: {
          meta: stage('danger is ruled out, the story is told', 'silence'),
          on: { silenced: 'silenced', 'visit decided': 'there' },
        },
        silenced: {
          meta: stage('it is quiet', 'breakers'),
          on: { 'breakers read out': 'read', reset: 'reset' },
        },
        read: { meta: stage('evidence is written down', 'reset'), on: { reset: 'reset' } },
        reset: {
          meta: stage('off, a minute, on again', 'watch'),
          on: { 'five minutes watched': 'watched', 'closed by phone': 'closed' },
        },
        watched: {
          meta: stage('the lamp is lit again', 'decide'),
          on: { 'closed by phone': 'closed', 'visit decided': 'there' },
        },
        there: { meta: stage('the truck is parked', 'safe'), on: { 'site made safe, pressure read': 'looked' } },
        looked: {
          meta: stage('the first split is made', 'cause'),
          on: { 'cause named': 'named', 'line spliced': 'mended' },
        },
        named: { meta: stage('it has a name', 'mend'), on: { 'line spliced': 'mended' } },
        mended: {
          meta: stage('the air is back', 'prove'),
          on: { 'cure proved': 'proved', 'record written': 'recorded', left: 'closed' },
        },
        proved: { meta: stage('it is seen to work', 'record'), on: { 'record written': 'recorded', left: 'closed' } },
        recorded: { meta: stage('it is on paper', 'household'), on: { 'household told': 'told', left: 'closed' } },
        told: { meta: stage('the household knows', 'household'), on: { left: 'closed' } },
        closed: { meta: stage('the call is over', 'closed') },
      },
    },
    evidence: {
      initial: 'untouched',
      states: {
        untouched: { on: { 'breakers read out': 'read', reset: 'lost' } },
        read: {},
        lost: { meta: flagged('a lever that was moved tells nothing any more', 'reset-before-reading') },
      },
    },
    watch: {
      initial: 'not watched',
      states: {
        'not watched': { on: { 'five minutes watched': 'watched', 'closed by phone': 'closed unwatched' } },
        watched: { on: { 'closed by phone': 'closed with a fault' } },
        'closed unwatched': {
          meta: flagged('a lamp that is out after a minute says little', 'closed-unwatched', 'closed-needing-visit'),
        },
        'closed with a fault': { meta: flagged('a lamp that comes back wants a visit', 'closed-needing-visit') },
      },
    },
    cause: {
      initial: 'not named',
      states: {
        'not named': { on: { 'cause named': 'named', 'line spliced': 'mended blindly' } },
        named: {},
        'mended blindly': { meta: flagged('a mend before a name is a guess', 'cause-after-mend', 'no-suspect') },
      },
    },
    proof: {
      initial: 'not wanted',
      states: {
        'not wanted': { on: { 'line spliced': 'missing' } },
        missing: {
          meta: flagged('unproved, with the lamp still latched', 'unverified-close', 'left-unready'),
          on: { 'cure proved': 'shown' },
        },
        shown: {},
      },
    },
    record: {
      initial: 'not wanted',
      states: {
        'not wanted': { on: { 'visit decided': 'missing' } },
        missing: { meta: flagged('nothing was written', 'record-short'), on: { 'record written': 'written' } },
        written: {},
      },
    },
    household: {
      initial: 'not wanted',
      states: {
        'not wanted': { on: { 'visit decided': 'uninformed' } },
        uninformed: {
          meta: flagged('nobody told the household', 'household-not-told'),
          on: { 'household told': 'informed' },
        },
        informed: {},
      },
    },
  },
});
