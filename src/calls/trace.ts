/**
 * The truth of a call, step by step: the same actions at the same instants on a fresh session, with the plant read and
 * a snapshot kept at every step, so that a debrief can draw curves and open the works at any instant.
 */
import { readout, restore, type Snapshot, snapshot, type Unit, type UnitFault, type UnitSetup } from '../unit/index.ts';
import { DrainsWatch } from './harm.ts';
import { CallSession } from './session.ts';
import { unitSetup } from './setup.ts';
import { wayOf } from './teaching.ts';
import type { Series } from './view.ts';

/** How long before the report a trace begins. */
const LEAD_s = 20 * 60;

interface Sample {
  readonly snapshot: Snapshot;
  /** Those of the call, and those that a trainer had dropped in by then. */
  readonly faults: readonly UnitFault[];
  readonly airPressure_kPa: number;
  readonly oxygen_mgL: number;
  readonly pumpTank_m: number;
}

export class Trace {
  readonly from_ms: number;
  readonly drains: DrainsWatch;
  private readonly samples: Sample[] = [];
  private readonly setup: UnitSetup;

  constructor(session: CallSession) {
    const { prepared, mode, log } = session;
    const from_s = prepared.report_s - LEAD_s;
    this.from_ms = from_s * 1000;
    this.setup = unitSetup(prepared);
    this.drains = new DrainsWatch(prepared.report_s);
    const again = new CallSession(prepared, mode, (unit) => {
      if (unit.t >= from_s) this.samples.push(sampleOf(unit));
      this.drains.look(unit);
    });
    for (const logged of wayOf(log)) {
      again.advance(logged.at_ms);
      again.act({ id: logged.do, ...(logged.fill ? { fill: logged.fill } : {}) });
    }
  }

  /** At most so many points of a curve, in milliseconds and its own unit. */
  points(id: Series['id'], most: number): (readonly [number, number])[] {
    const every = Math.max(1, Math.floor(this.samples.length / most));
    return this.samples
      .filter((_, i) => i % every === 0 || i === this.samples.length - 1)
      .map((s) => [Math.round(s.snapshot.t * 1000), s[id]] as const);
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
  const now = readout(unit, unit.t);
  return {
    snapshot: snapshot(unit),
    faults: unit.faults.map(({ fault }) => fault),
    airPressure_kPa: now.airPressure_kPa,
    oxygen_mgL: now.oxygen_mgL,
    pumpTank_m: now.pumpTank_m,
  };
}
