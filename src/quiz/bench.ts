/** A panel on the bench: its control led through events, water and time, without a plant behind it. */
import {
  type ControlEventName,
  type ControlState,
  DELAYS,
  type DelayId,
  eventNumber,
  type FloatName,
} from '../control/index.ts';
import { PanelState } from '../unit/panel.ts';
import { floatHeights_m, floatsOf, type UnitSpec } from '../unit/spec.ts';

export class Bench {
  private readonly spec: UnitSpec;
  private readonly panel: PanelState;
  private now_s = 0;

  constructor(spec: UnitSpec) {
    this.spec = spec;
    this.panel = new PanelState(spec.panel, []);
  }

  get state(): ControlState {
    return this.panel.control;
  }

  send(...events: readonly ControlEventName[]): this {
    for (const event of events) this.panel.deliver(event, this.now_s);
    return this;
  }

  /** What the state would be after some events; the panel stays as it is. */
  after(...events: readonly ControlEventName[]): ControlState {
    const { table } = this.panel;
    return events.reduce((state, event) => table.step(state, eventNumber(event)).to, this.state);
  }

  /** Water rises over the floats, lowest first, up to a height over the floor. */
  rise(level_m: number): this {
    const passed = (float: FloatName) => level_m >= floatHeights_m(this.spec.panel, float).makes_m;
    return this.send(...this.byHeight().flatMap((float) => (passed(float) ? [`${float}.rises` as const] : [])));
  }

  /** Water falls to a height, and what it leaves hangs again, highest first. */
  fall(level_m: number): this {
    const left = (float: FloatName) => level_m <= floatHeights_m(this.spec.panel, float).breaks_m;
    const down = this.byHeight().reverse();
    return this.send(...down.flatMap((float) => (left(float) ? [`${float}.falls` as const] : [])));
  }

  /** Lets seconds pass: what falls due in them is delivered at its instant. */
  wait(seconds: number): this {
    const end_s = this.now_s + seconds;
    for (;;) {
      const [first] = [...this.panel.due].sort(([, a], [, b]) => a - b);
      if (first === undefined || first[1] > end_s) break;
      this.fallDue(...first);
    }
    this.now_s = end_s;
    return this;
  }

  private fallDue(delay: DelayId, at_s: number): void {
    this.now_s = at_s;
    this.panel.due.delete(delay);
    this.panel.deliver(DELAYS[delay], at_s);
  }

  private byHeight(): FloatName[] {
    return [...floatsOf(this.spec.panel)];
  }
}
