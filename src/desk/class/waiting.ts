/**
 * Records that wait for their review, call by call: setting a call up takes longer than many of its records, so a worker
 * stays with its call, then takes one that nobody has set up, and in the end helps where most are left.
 */

/** What of a record is asked here. */
export interface OfCall {
  readonly callHash: string;
}

export class Waiting<Job extends OfCall> {
  private readonly left = new Map<string, Job[]>();
  private readonly begun = new Set<string>();

  constructor(jobs: readonly Job[]) {
    for (const job of jobs) this.left.set(job.callHash, [...(this.left.get(job.callHash) ?? []), job]);
  }

  /** The next for a worker whose last one was that. */
  next(last?: Job): Job | undefined {
    const call = last && this.left.has(last.callHash) ? last.callHash : (this.fresh() ?? this.longest());
    const jobs = call === undefined ? undefined : this.left.get(call);
    if (call === undefined || jobs === undefined) return undefined;
    this.begun.add(call);
    const job = jobs.shift();
    if (jobs.length === 0) this.left.delete(call);
    return job;
  }

  private fresh(): string | undefined {
    return [...this.left.keys()].find((call) => !this.begun.has(call));
  }

  private longest(): string | undefined {
    return [...this.left].sort(([, a], [, b]) => b.length - a.length)[0]?.[0];
  }
}
