/** A coach beside a call: does what was done, at the same instants, and weighs the causes by what it brought. */
import type { Diagnosis, Lived } from '../diagnosis/index.ts';
import { type Message, say } from '../service/index.ts';
import { type Advice, adviceOn } from './coach.ts';
import { diagnosisOf, seenOf } from './expertise.ts';
import { replayActions } from './progress.ts';
import type { Progress } from './schema.ts';
import { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';
import { changedAt_ms } from './taught.ts';
import { TEACH } from './teach-ids.ts';
import type { CallMode } from './view.ts';

export class Coach {
  readonly session: CallSession;
  private readonly diagnosis: Diagnosis;
  private observed = 0;

  /** Takes seconds: every cause is lived through up to the report. `lived` hears how it goes. */
  constructor(prepared: Prepared, mode: CallMode, lived?: Lived) {
    this.session = new CallSession(prepared, mode);
    this.diagnosis = diagnosisOf(prepared, lived);
  }

  /** Whether what was kept goes on from where this coach stands; what was seen before going back is not unseen. */
  follows({ actions }: Progress): boolean {
    const { log } = this.session;
    if (actions.slice(log.length).some((one) => one.do === TEACH.back)) return false;
    return log.length <= actions.length && log.every((one, i) => one.state === actions[i]?.state);
  }

  /** Does what was done since. Says what differs where it does not come out to the same bits. */
  hear({ actions }: Progress): Message | undefined {
    const { session, diagnosis } = this;
    const difference = replayActions(session, actions.slice(session.log.length));
    if (difference) return say('trouble.progress-differs', { what: difference });
    for (const done of session.done.slice(this.observed)) diagnosis.observe(seenOf(session, done));
    this.observed = session.done.length;
    return undefined;
  }

  /** Once a trainer has changed the works, what is reckoned from the report holds no longer. */
  advice(): Advice {
    if (changedAt_ms(this.session.log) <= this.session.now_ms) {
      return { hints: [say('hint.works-changed')], likely: [], check: '' };
    }
    return adviceOn(this.session, this.diagnosis);
  }
}
