/**
 * The expert: asks and reads what the diagnosis values most, names a cause when it is likely enough and shown by a check,
 * mends, proves, and goes on when the cure does not hold. It knows what was seen, and nothing else.
 */
import {
  type Chance,
  type Diagnosis,
  keysOf,
  outlookOf,
  type Probe,
  SOMETHING_ELSE,
  SOUND_CAUSE,
} from '../../diagnosis/index.ts';
import { placedFault } from '../../faults/index.ts';
import { ACTION_BY_ID, LOADS, type LoadId, TRUCK_HOLDS } from '../../service/index.ts';
import { diagnosisOf, probesIn, seenOf } from '../expertise.ts';
import type { CallSession } from '../session.ts';
import { cleanWear, LASTING_ADVICE } from './care.ts';
import { Hand } from './hand.ts';
import { closeByPhone, leave, makeSafe, nameCause, proveCure } from './site.ts';

/** Likely enough to act on; and so unlikely that it is not worth a look (conventions). */
const SURE = 0.9;
const LIKELY_TO_PASS = 0.7;
const MOST_CHECKS = 25;
const MOST_MENDS = 4;
/** Checks that bring less are not worth making; those that bring so much are made before a cause is named. */
const LEAST_bits = 0.02;
const TELLING_bits = 0.15;

export function playExpert(session: CallSession): void {
  expertOn(session).play();
}

/** The expert at a call, wherever it stands: what was done so far is taken in. */
export function expertOn(session: CallSession): Expert {
  const probes = probesIn(session.prepared);
  return new Expert(session, (diagnosis) => {
    const made = madeSinceMend(session);
    return bestCheck(
      diagnosis,
      probes.filter((probe) => !probe.acts.every((def) => made.has(def.id))),
    );
  });
}

/** Checks made since something was mended: the same again tells nothing new. */
function madeSinceMend({ done }: CallSession): ReadonlySet<string> {
  const last = done.findLastIndex((d) => d.def.group === 'mend');
  return new Set(done.slice(last + 1).map((d) => d.def.id));
}

/** The check whose regret is least among those that tell anything. */
function bestCheck(diagnosis: Diagnosis, probes: readonly Probe[]): readonly string[] | undefined {
  const { options, stop } = outlookOf(diagnosis, probes);
  const worth = options.find((o) => o.bits > LEAST_bits && o.toCome < stop);
  const [telling] = options.filter((o) => o.bits > TELLING_bits).sort((a, b) => b.bits / b.cost - a.bits / a.cost);
  const best = worth ?? telling;
  return probes.find((p) => p.id === best?.id)?.acts.map((def) => def.id);
}

/** Which check to make next, by the ids of its acts; undefined when none is worth it. */
export type Choice = (diagnosis: Diagnosis) => readonly string[] | undefined;

export class Expert {
  private readonly hand: Hand;
  private readonly diagnosis: Diagnosis;
  private readonly choose: Choice;

  constructor(session: CallSession, choose: Choice) {
    this.diagnosis = diagnosisOf(session.prepared);
    for (const done of session.done) this.diagnosis.observe(seenOf(session, done));
    this.hand = new Hand(session, (done) => this.diagnosis.observe(seenOf(session, done)));
    this.choose = choose;
  }

  play(): void {
    this.onThePhone();
    if (this.hand.ended) return;
    makeSafe(this.hand);
    this.onSite();
  }

  private onThePhone(): void {
    const { hand } = this;
    const { call, spec } = hand.session.prepared;
    const alarm = call.kind === 'alarm';
    const danger = hand.do('ask-danger');
    const sewage = danger?.outcome.notes.some((n) => n.reading.id === 'reading.sewage-out') ?? false;
    hand.do('ask-history');
    if (!sewage) {
      hand.do('ask-hum');
      hand.do('ask-smell');
      if (!alarm) hand.do('ask-drains');
      if (alarm && !call.report.silenced) hand.do('guide-silence');
      hand.do('ask-breakers');
      if (alarm && spec.panel.alarm === 'latching') {
        hand.do('guide-reset');
        hand.do('guide-watch');
        if (this.mayPass()) {
          closeByPhone(hand);
          return;
        }
      } else hand.do('ask-use');
    } else hand.do('advise-keep-away');
    this.advise();
    const urgent = sewage || hand.session.service.person.facts.backingUp?.value === true;
    hand.do('decide-visit', { urgency: urgent ? 'now' : this.urgency(), load: this.load() });
  }

  /** The lamp stays out, most of what is left has passed with the reset, and it was not the second trip in a month. */
  private mayPass(): boolean {
    const { session } = this.hand;
    if (session.service.person.facts.lamp?.value === 'lit') return false;
    if ((session.prepared.call.report.earlier_trips ?? 0) > 0) return false;
    const over = this.diagnosis.shareOf(({ hypothesis, twin }) =>
      hypothesis.faults.every((f) => twin.unit.isOver(f.id)),
    );
    return over > LIKELY_TO_PASS;
  }

  /** Share of the belief whose causes have a property; a pair has it only when both have. */
  private weigh(has: (key: string) => boolean): number {
    return this.diagnosis
      .belief()
      .filter(({ cause }) => cause !== SOMETHING_ELSE.cause && keysOf(cause).every(has))
      .reduce((sum, { chance }) => sum + chance, 0);
  }

  /**
   * Advice that may end the trouble costs a minute. On a living property what a household goes on doing comes back: it is
   * told so whether or not that explains this call.
   */
  private advise(): void {
    const lasting = this.hand.session.prepared.lived ? LASTING_ADVICE : [];
    for (const id of lasting) this.hand.do(id);
    for (const id of ['advise-save-water', 'advise-spare-drains']) {
      if (lasting.some((told) => told === id)) continue;
      if (this.weigh((key) => placedFault(key).mendedBy.includes(id)) > 0.05) this.hand.do(id);
    }
  }

  private urgency(): string {
    const soon = this.weigh((key) => placedFault(key).urgency !== 'next-visit');
    return soon > 0.4 ? 'before-dosing' : 'next-visit';
  }

  /** What is likeliest to be needed on the truck. */
  private load(): LoadId[] {
    const weights = new Map<LoadId, number>();
    for (const { cause, chance } of this.diagnosis.belief()) {
      for (const key of keysOf(cause)) {
        const { mendedBy } = placedFault(key);
        for (const id of mendedBy) {
          const load = ACTION_BY_ID.get(id)?.load;
          if (load) weights.set(load, (weights.get(load) ?? 0) + chance / mendedBy.length);
        }
      }
    }
    return [...LOADS]
      .filter((id) => weights.has(id))
      .sort((a, b) => (weights.get(b) ?? 0) - (weights.get(a) ?? 0))
      .slice(0, TRUCK_HOLDS);
  }

  /** Puts right what is wrong on a site made safe; on a living property it also cleans what wears, as on every visit. */
  onSite(): void {
    const { hand } = this;
    const living = hand.session.prepared.lived !== undefined;
    const mended = this.putRight(living ? () => cleanWear(hand) : undefined);
    if (living && mended.length === 0) cleanWear(hand);
    leave(hand);
  }

  /** Finds, mends and proves; `besides` is done once with the first mend. Returns what was named and mended, by key. */
  putRight(besides?: () => void): readonly string[] {
    const { hand } = this;
    const mended = new Set<string>();
    for (let i = 0; i < MOST_MENDS && !hand.ended; i++) {
      const keys = this.find().filter((key) => !mended.has(key));
      if (keys.length === 0) break;
      for (const key of keys) mended.add(key);
      nameCause(
        hand,
        [...mended],
        [...mended].flatMap((key) => placedFault(key).shownBy),
      );
      for (const key of keys) this.mend(key);
      if (i === 0) besides?.();
      proveCure(hand, [...mended]);
      if (this.quiet()) break;
    }
    return [...mended];
  }

  /** Lamp dark and nothing more likely left than what was mended. */
  private quiet(): boolean {
    const { hand } = this;
    hand.do('reset-panel');
    hand.do('watch-panel');
    return hand.session.service.person.facts.lamp?.value !== 'lit';
  }

  /** Checks until one cause is likely enough and shown, or nothing more can be told. */
  private find(): readonly string[] {
    const { hand, diagnosis } = this;
    for (let i = 0; i < MOST_CHECKS; i++) {
      const [top] = diagnosis.belief();
      if (!top) return [];
      const sure = top.chance > SURE;
      if (sure || !this.check()) {
        const keys = keysOf(this.namable().cause);
        const unshown = keys.filter((key) => !this.isShown(key));
        if (unshown.length === 0) return keys;
        for (const key of unshown) this.show(key);
        const { cause, chance } = this.namable();
        // What was to be shown and was not there is named only where nothing else is left to look at.
        const holds = chance > SURE || unshown.every((key) => this.isShown(key));
        if (cause === top.cause && (holds || !sure)) return keys;
      }
      if (hand.ended) return [];
    }
    const keys = keysOf(this.namable().cause);
    for (const key of keys) if (!this.isShown(key)) this.show(key);
    return keys;
  }

  /** The likeliest cause that has a name. */
  private namable(): Chance {
    const named = this.diagnosis.belief().find(({ cause }) => cause !== SOMETHING_ELSE.cause);
    return named ?? { cause: SOUND_CAUSE, chance: 1 };
  }

  /** Makes the best check there is; false when none is worth its cost. */
  private check(): boolean {
    const acts = this.choose(this.diagnosis);
    for (const id of acts ?? []) this.hand.doSafely(id);
    return acts !== undefined;
  }

  private isShown(key: string): boolean {
    const { shownBy } = placedFault(key);
    const { notebook } = this.hand.session.service.person;
    return notebook.some((n) => n.by !== undefined && shownBy.includes(n.by) && n.remark?.tone !== 'good');
  }

  private show(key: string): void {
    const check = placedFault(key).shownBy.find((id) => ACTION_BY_ID.get(id)?.place !== 'phone' && this.hand.has(id));
    if (check) this.hand.doSafely(check);
  }

  /** The cheapest mend that can be done from here. */
  private mend(key: string): void {
    const { hand } = this;
    const possible = placedFault(key).mendedBy.flatMap((id) => ACTION_BY_ID.get(id) ?? []);
    const def = possible.find((d) => d.place !== 'phone' && hand.has(d.id));
    if (!def) return;
    if (def.id.startsWith('breaker-on:')) hand.do(def.id.replace('on', 'off'));
    hand.doSafely(def.id);
  }
}
