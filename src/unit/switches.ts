/** The watched thresholds of a running unit: on which side each is, and where in a step the first one turns. */
import { interpolate, type Step } from '../plant/index.ts';
import { type FaultState, floatShift, switchShift_kPa } from './fault.ts';
import type { UnitSpec } from './spec.ts';
import { locate, type Watch, watchedLevel, watchesOf } from './watch.ts';

/** Line pressure at the air switch, kPa, at an instant and state; and what it is at least, which is quicker to know. */
export interface Pressure {
  airPressure(t: number, y: Float64Array): number;
  airPressureAtLeast(t: number, y: Float64Array): number;
}

export class Switches {
  readonly watches: readonly Watch[];
  /** Whether each watched quantity is on its upper side. */
  readonly above: boolean[];
  /** Whether any was crossed in the last step that was looked at. */
  crossed = false;
  private readonly spec: UnitSpec;
  private readonly faults: readonly FaultState[];
  private readonly pressure: Pressure;
  private readonly scratch: Float64Array;

  constructor(spec: UnitSpec, faults: readonly FaultState[], pressure: Pressure, stateSize: number) {
    this.spec = spec;
    this.faults = faults;
    this.pressure = pressure;
    this.watches = watchesOf(spec);
    this.above = this.watches.map((w) => w.id === 'air');
    this.scratch = new Float64Array(stateSize);
  }

  /** Ends a step at the first threshold crossed in it, if any; true when the step was shortened. */
  cut(step: Step): boolean {
    let first = step.t1;
    this.crossed = false;
    for (let i = 0; i < this.watches.length; i++) {
      if (!this.passed(i, step.t1, step.y1)) continue;
      this.crossed = true;
      const at = locate(step, (t) => this.passed(i, t, interpolate(step, t, this.scratch)));
      if (at < first) first = at;
    }
    if (first === step.t1) return false;
    interpolate(step, first, this.scratch);
    step.y1.set(this.scratch);
    step.t1 = first;
    return true;
  }

  /** Turns the first switch whose threshold a state has passed; undefined when none has. */
  turn(t: number, y: Float64Array): { readonly watch: Watch; readonly above: boolean } | undefined {
    for (let i = 0; i < this.watches.length; i++) {
      if (!this.passed(i, t, y)) continue;
      const above = !this.above[i];
      this.above[i] = above;
      return { watch: this.watches[i] as Watch, above };
    }
    return undefined;
  }

  private passed(i: number, t: number, y: Float64Array): boolean {
    const watch = this.watches[i] as Watch;
    let value: number;
    let shift = 0;
    if (watch.quantity === 'air') {
      shift = switchShift_kPa(this.faults, t);
      if (this.above[i] && this.pressure.airPressureAtLeast(t, y) > watch.lower + shift) return false;
      value = this.pressure.airPressure(t, y);
    } else {
      value = watchedLevel(this.spec, watch.quantity, y);
      if (watch.float) shift = floatShift(this.faults, watch.float, t);
    }
    return this.above[i] ? value <= watch.lower + shift : value >= watch.upper + shift;
  }
}
