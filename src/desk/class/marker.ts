/** Replays records of a class, each on the call it names, fetched when the first record names it. Runs in a worker. */
// Has the validator keep to the page's policy.
import '../resume.ts';
import { loadRecord } from '../../calls/loadRecord.ts';
import type { Prepared } from '../../calls/setup.ts';
import { isAnswers, loadAnswers } from '../../quiz/answers.ts';
import { type Handed, type Marked, marked } from '../../records/marked.ts';
import type { Message } from '../../service/message.ts';
import { callBy } from '../call-files.ts';
import { UNITS } from '../drills/units.ts';
import { EngineError } from '../engine.ts';
import { isShipped } from '../shipped-files.ts';
import type { MarkReply, MarkRequest } from './protocol.ts';

export class Marker {
  private readonly tell: (reply: MarkReply) => void;
  private brought: ReadonlyMap<string, string> = new Map();
  private readonly calls = new Map<string, Prepared | undefined>();

  constructor(tell: (reply: MarkReply) => void) {
    this.tell = tell;
  }

  async hear(request: MarkRequest): Promise<void> {
    if (request.kind === 'brought') this.brought = request.texts;
    else this.tell(await this.mark(request.handed));
  }

  private async mark(handed: Handed): Promise<MarkReply> {
    try {
      if (isAnswers(handed.text)) return sat(handed);
      const loaded = loadRecord(handed.text);
      const prepared = loaded.ok ? await this.callOf(loaded.value.call) : undefined;
      return marked(handed, () => prepared);
    } catch (error) {
      if (error instanceof EngineError) return unmarked(handed.who, error.told);
      console.error(error);
      return unmarked(handed.who, { id: 'class.stopped' });
    }
  }

  /** What could not be fetched is asked for again by the next record that names it. */
  private async callOf(id: string): Promise<Prepared | undefined> {
    if (!this.calls.has(id)) {
      this.calls.set(id, await callBy(id, isShipped(id) ? undefined : this.brought.get(id)));
    }
    return this.calls.get(id);
  }
}

function unmarked(who: string, why: Message): Marked {
  return { state: 'refused', who, otherEngine: false, why, problems: [] };
}

/** Answers of a mock exam, each worked out again. */
function sat({ who, text }: Handed): MarkReply {
  const answers = loadAnswers(text, (id) => UNITS.find((unit) => unit.id === id));
  return answers.ok
    ? { state: 'answers', who, answers: answers.value }
    : { state: 'refused', who, otherEngine: false, problems: answers.problems };
}
