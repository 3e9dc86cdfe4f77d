/**
 * The truth of a call, step by step: the same actions at the same instants on a fresh session, with the plant read and
 * a snapshot kept at every step, so that a debrief can draw curves and open the works at any instant. Of a call in progress
 * it follows what is done.
 */
import { readout, restore, type Snapshot, snapshot, type Unit, type UnitFault, type UnitSetup } from '../unit/index.ts';
import { doAgain } from './again.ts';
import { type CurveId, type CurveValues, curvesIn } from './curves.ts';
import { DrainsWatch } from './harm.ts';
import { CallSession, type Logged } from './session.ts';
import { unitSetup } from './setup.ts';
import { wayOf } from './teaching.ts';

/** How long before the report a trace begins. */
const LEAD_s = 20 * 60;

interface Sample {
  readonly snapshot: Snapshot;
  /** Those of the call, and those that a trainer had dropped in by then. */
  readonly faults: readonly UnitFault[];
  readonly read: CurveValues;
}

export class Trace {
  readonly from_ms: number;
  private readonly setup: UnitSetup;
  private readonly begin: () => CallSession;
  private samples: Sample[] = [];
  private watch: DrainsWatch;
  private report = new Float64Array();
  private again: CallSession;
  private way: readonly Logged[] = [];

  constructor(session: CallSession) {
    const { prepared, mode } = session;
    const from_s = prepared.report_s - LEAD_s;
    this.from_ms = from_s * 1000;
    this.setup = unitSetup(prepared);
    this.watch = new DrainsWatch(prepared.report_s);
    this.begin = () => {
      this.samples = [];
      this.way = [];
      this.watch = new DrainsWatch(prepared.report_s);
      const session = new CallSession(prepared, mode, (unit) => {
        if (unit.t >= from_s) this.samples.push(sampleOf(unit));
        this.watch.look(unit);
      });
      this.report = session.service.unit.y.slice();
      return session;
    };
    this.again = this.begin();
    this.follow(session);
  }

  get drains(): DrainsWatch {
    return this.watch;
  }

  /** State of the works when the phone rang. */
  get atReport(): Float64Array {
    return this.report;
  }

  /** Does what was done since; where a moment was gone back to, all that led there anew. */
  follow({ log, now_ms }: CallSession): void {
    const way = wayOf(log);
    if (now_ms < this.again.now_ms || this.way.some((one, i) => one !== way[i])) this.again = this.begin();
    doAgain(this.again, way.slice(this.way.length));
    this.way = way;
    this.again.advance(now_ms);
  }

  /** At most so many points of a curve, in milliseconds and its own unit. */
  points(id: CurveId, most: number): (readonly [number, number])[] {
    const every = Math.max(1, Math.floor(this.samples.length / most));
    return this.samples
      .filter((_, i) => i % every === 0 || i === this.samples.length - 1)
      .map(({ snapshot: { t }, read }) => [Math.round(t * 1000), read[id]] as const);
  }

  /** The property as it was at an instant of the call. */
  unitAt(at_ms: number): Unit {
    const at = at_ms / 1000;
    const sample = this.samples.findLast((s) => s.snapshot.t <= at) ?? this.samples[0];
    if (!sample) throw new Error('the trace is empty');
    const unit = restore({ ...this.setup, faults: sample.faults }, sample.snapshot);
    unit.advance(at);
    return unit;
  }
}

function sampleOf(unit: Unit): Sample {
  return {
    snapshot: snapshot(unit),
    faults: unit.faults.map(({ fault }) => fault),
    read: curvesIn(readout(unit, unit.t)),
  };
}
