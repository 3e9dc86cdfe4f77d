/**
 * Answers what an expert is asked: of a finished call what each step was worth, of one in progress what a coach would say.
 * Runs in a worker of its own, for it takes seconds; in tests it runs without one.
 */
import { Coach } from '../calls/coached.ts';
import { stepReviewView } from '../calls/lesson.ts';
import { reviewAll, type StepReview } from '../calls/review.ts';
import type { Prepared } from '../calls/setup.ts';
import { togetherView } from '../calls/together.ts';
import { callBy } from './call-files.ts';
import { EngineError } from './engine.ts';
import type { ExpertReply, ExpertRequest } from './expert-protocol.ts';
import { fetched } from './fetched.ts';
import type { SavedCall } from './protocol.ts';

/** Of the causes lived through, every so many is told. */
const TOLD_EVERY = 20;

export class Expert {
  private readonly tell: (reply: ExpertReply) => void;
  private coach: Coach | undefined;
  /** The call that was asked about last: what its diagnosis begins with is worked out once for all that was done on it. */
  private last: { readonly callId: string; readonly brought: string | undefined; readonly call: Prepared } | undefined;

  constructor(tell: (reply: ExpertReply) => void) {
    this.tell = tell;
  }

  async answer(request: ExpertRequest): Promise<void> {
    try {
      if (request.kind === 'review') await this.review(request.saved);
      else await this.advise(request.saved);
    } catch (error) {
      if (error instanceof EngineError) return this.tell({ kind: 'error', message: error.told });
      console.error(error);
      this.tell({ kind: 'error', message: { id: 'trouble.expert' } });
    }
  }

  private async review(saved: SavedCall): Promise<void> {
    const prepared = await this.preparedOf(saved);
    const { resumeCall } = await fetched(import('./resume.ts'));
    const resumed = resumeCall(prepared, saved.mode, saved.record);
    if ('why' in resumed) throw new EngineError(resumed.why);
    const { session } = resumed;
    const step = (review: StepReview) =>
      this.tell({ kind: 'step', review: stepReviewView(session, review), of: session.done.length });
    const sifting = reviewAll(session, step, this.lived);
    this.tell({ kind: 'reviewed', together: togetherView(session, sifting) });
  }

  private async advise(saved: SavedCall): Promise<void> {
    const prepared = await this.preparedOf(saved);
    const { checkProgress } = await fetched(import('./resume.ts'));
    const checked = checkProgress(prepared, saved.record);
    if ('why' in checked) throw new EngineError(checked.why);
    const { progress } = checked;
    if (!this.coach?.follows(progress)) this.coach = new Coach(prepared, saved.mode, this.lived);
    const difference = this.coach.hear(progress);
    if (difference) throw new EngineError(difference);
    this.tell({ kind: 'advice', advice: this.coach.advice() });
  }

  private async preparedOf({ callId, brought }: SavedCall): Promise<Prepared> {
    const { last } = this;
    if (last?.callId === callId && last.brought === brought) return last.call;
    const call = await callBy(callId, brought);
    if (!call) throw new EngineError({ id: 'trouble.call-unknown' });
    this.last = { callId, brought, call };
    return call;
  }

  private readonly lived = (done: number, of: number): void => {
    if (done % TOLD_EVERY === 0) this.tell({ kind: 'lived', done, of });
  };
}
