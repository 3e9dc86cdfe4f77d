/**
 * A routine visit as the expert makes it: the household asked and advised, every chamber looked into, what wears cleaned,
 * what has gathered pumped out. A reading that none of this explains is followed up like a call.
 */
import { faultsOf } from '../../faults/index.ts';
import type { CallSession, Done } from '../session.ts';
import { cleanWear, LASTING_ADVICE } from './care.ts';
import { expertOn } from './expert.ts';
import { Hand } from './hand.ts';
import { leave, makeSafe, nameCause, proveCure } from './site.ts';

const BY_PHONE = ['ask-danger', 'ask-history', 'ask-use', 'ask-smell', 'ask-drains', ...LASTING_ADVICE] as const;

/** A round of the works from the panel down to the field (common practice, no source). Those a unit lacks are passed over. */
const LOOKS = [
  'read-panel',
  'press-test',
  'look-at-intake-filter',
  'tee-pressure',
  'follow-air-line',
  'look-into-aeration',
  'measure-oxygen',
  'settle-jar',
  'probe-trash',
  'look-into-pump-tank',
  'look-at-disinfectant',
  'look-at-sleeve',
  'open-disc-filter',
  'walk-field',
  'look-at-traps',
] as const;

type Look = (typeof LOOKS)[number];

type Acts = Readonly<Partial<Record<Look, string>>>;

/** What ends a finding without a search: of parts that wear, which are named, and of what has gathered or is used up. */
const WORN: Acts = {
  'look-at-intake-filter': 'clean-intake-filter',
  'open-disc-filter': 'clean-disc-filter',
  'look-at-sleeve': 'clean-sleeve',
  'look-at-traps': 'fill-trap',
};
const GATHERED: Acts = {
  'look-at-disinfectant': 'refill-disinfectant',
  'settle-jar': 'pump-out:aeration',
  'probe-trash': 'pump-out:trash',
};

/** What the hour of the day and the last days decide, and no one part: written down, and not searched for. */
const SLOW: readonly Look[] = ['look-into-aeration', 'measure-oxygen'];

export function playRoutine(session: CallSession): void {
  const hand = new Hand(session);
  for (const id of BY_PHONE) hand.do(id);
  hand.do('decide-visit', { urgency: 'next-visit', load: ['chlorine'] });
  makeSafe(hand);
  const off = looksOff(hand, LOOKS);
  const keys = keysWorn(session, off);
  nameCause(hand, keys, off);
  for (const look of off) {
    const cure = WORN[look] ?? GATHERED[look];
    if (cure !== undefined) hand.doSafely(cure);
  }
  cleanWear(hand);
  const unexplained = off.filter((look) => !(look in WORN) && !(look in GATHERED) && !SLOW.includes(look));
  if (looksOff(hand, unexplained).length > 0) {
    expertOn(session).onSite();
    return;
  }
  proveCure(hand, keys);
  leave(hand);
}

function looksOff(hand: Hand, looks: readonly Look[]): readonly Look[] {
  return looks.filter((id) => hand.has(id) && isOff(hand.doSafely(id)));
}

function isOff(done: Done | undefined): boolean {
  return done?.outcome.notes.some((n) => n.remark?.tone === 'off') ?? false;
}

/** The one fault that such a look shows and its cure mends. */
function keysWorn({ prepared }: CallSession, off: readonly Look[]): readonly string[] {
  const faults = faultsOf(prepared.spec);
  return off.flatMap((look) => {
    const cure = WORN[look];
    const worn = faults.find((f) => cure !== undefined && f.shownBy.includes(look) && f.mendedBy.includes(cure));
    return worn ? [worn.key] : [];
  });
}
