/** The panel of a running unit: the control's state, the delays it asked for, its clock, and the log of what happened. */
import {
  type Command,
  type ControlEventName,
  type ControlState,
  type ControlTable,
  controlTable,
  type DelayId,
  eventNumber,
} from '../control/index.ts';
import { clockDrift, clockShift, type FaultState } from './fault.ts';
import { type Happening, SHOWN } from './happening.ts';
import { type Registers, registersAtRest } from './registers.ts';
import { isOfDosing, kindOf, type PanelSpec } from './spec.ts';
import { nextStart, startAt } from './timer.ts';

export class PanelState {
  readonly table: ControlTable;
  readonly due = new Map<DelayId, number>();
  readonly registers: Registers = registersAtRest();
  readonly log: Happening[] = [];
  control: ControlState;
  private readonly spec: PanelSpec;
  private readonly faults: readonly FaultState[];

  constructor(spec: PanelSpec, faults: readonly FaultState[]) {
    this.spec = spec;
    this.faults = faults;
    this.table = controlTable(kindOf(spec));
    const first = this.table.initial();
    this.control = first.to;
    this.obey(first.commands, 0);
  }

  /** Takes an event at an instant: new state, delays, log. */
  deliver(name: ControlEventName, t: number): void {
    const edge = this.table.step(this.control, eventNumber(name));
    const before = this.control.outputs;
    const after = edge.to.outputs;
    if (edge.to !== this.control || edge.commands.length > 0) this.note(name, t);
    if (!before.contact && after.contact) this.registers.pumpCycles += 1;
    if (before.pumpRuns && !after.pumpRuns) this.registers.pumpStopped_s = t;
    this.control = edge.to;
    for (const id of SHOWN) {
      if (before[id] !== after[id]) this.note(`${id}.${after[id] ? 'on' : 'off'}`, t);
    }
    this.obey(edge.commands, t);
  }

  note(what: Happening['what'], t: number): void {
    this.log.push({ t, what });
  }

  /** Seconds the panel clock is ahead of true time. A clock that stands falls behind. */
  clockAhead(t: number): number {
    const { clock_s, clockStopped_s } = this.registers;
    return clock_s + clockShift(this.faults, t) - (clockStopped_s < 0 ? 0 : t - clockStopped_s);
  }

  /** Sets the clock so that it shows true time plus `ahead_s`. */
  setClock(ahead_s: number, t: number): void {
    this.deliver('timer.set', t);
    const { registers } = this;
    registers.clock_s = ahead_s - clockShift(this.faults, t);
    if (registers.clockStopped_s >= 0) registers.clockStopped_s = t;
  }

  /**
   * Next start of the night timer after an instant, by the panel's own clock. A clock that drifts (a growing fault)
   * goes evenly until the next instant of a fault; one that stands or runs backwards comes to no start.
   */
  nextTimerStart(t: number): number {
    const { dosing } = this.spec;
    if (dosing.kind !== 'night' || this.registers.clockStopped_s >= 0) return Number.POSITIVE_INFINITY;
    const ahead = this.clockAhead(t);
    const rate = 1 + clockDrift(this.faults, t);
    if (rate <= 0) return Number.POSITIVE_INFINITY;
    const start = nextStart(dosing.starts_h, t + ahead);
    return rate === 1 ? start - ahead : t + (start - t - ahead) / rate;
  }

  /** Starts a dose where the clock stands at a start; true when it does. Minutes are counted per night. */
  timerStart(t: number): boolean {
    const { dosing } = this.spec;
    if (dosing.kind !== 'night' || this.registers.clockStopped_s >= 0) return false;
    const hour = startAt(dosing.starts_h, t + this.clockAhead(t));
    if (hour === undefined) return false;
    if (hour === dosing.starts_h[0]) this.registers.dosed_s = 0;
    if (this.registers.dosed_s < dosing.nightLimit_min * 60) this.deliver('timer.start', t);
    return true;
  }

  private obey(commands: readonly Command[], t: number): void {
    const { registers, due } = this;
    for (const command of commands) {
      switch (command.kind) {
        case 'dial':
          registers.dialled += 1;
          this.note('dialled', t);
          break;
        case 'stopClock':
          registers.clockStopped_s = t;
          break;
        case 'startClock':
          registers.clock_s -= t - registers.clockStopped_s;
          registers.clockStopped_s = -1;
          break;
        case 'arm':
          if (due.has(command.delay)) throw new Error(`delay ${command.delay} armed while it runs`);
          if (command.delay === 'dose') registers.doseSince_s = t;
          due.set(command.delay, t + this.delay_s(command.delay));
          break;
        case 'disarm':
          if (command.delay === 'dose' && registers.doseSince_s >= 0) {
            registers.dosed_s += t - registers.doseSince_s;
            registers.doseSince_s = -1;
          }
          due.delete(command.delay);
      }
    }
  }

  private delay_s(delay: DelayId): number {
    const { dosing, delays_s } = this.spec;
    if (delay === 'dose' && dosing.kind === 'night') {
      const left_s = dosing.nightLimit_min * 60 - this.registers.dosed_s;
      // Only a hand turns the dial to one more start when the night's minutes are spent: that dose runs its time.
      return left_s > 0 ? Math.min(dosing.run_min * 60, left_s) : dosing.run_min * 60;
    }
    if (dosing.kind === 'timed') {
      if (delay === 'dose') return dosing.run_min * 60;
      if (delay === 'restFirst') return (dosing.every_min / 2 - dosing.run_min) * 60;
      if (delay === 'restSecond') return dosing.every_min * 30;
    }
    const given = isOfDosing(delay) ? undefined : delays_s[delay];
    if (given === undefined) throw new Error(`the panel gives no length for the delay ${delay}`);
    return given;
  }
}
