/**
 * What must hold of a running unit after every step and at every event of its panel: the panel's own invariants, its
 * times, the floats and the air switch against the water and the air, the books of the works. It looks and never
 * touches.
 */
import type { ControlEventName, FloatName } from '../../src/control/index.ts';
import { eventNumber, type PanelKind } from '../../src/control/index.ts';
import { balance } from '../../src/plant/balance.ts';
import { pumpLevel, VOLUME } from '../../src/plant/index.ts';
import { isPresent } from '../../src/unit/fault.ts';
import { floatHeights_m, floatsOf, kindOf, type Unit } from '../../src/unit/index.ts';
import {
  alarmed,
  type ConditionName,
  causeStands,
  isSound,
  lampRules,
  live,
  moveBreaches,
  stateBreaches,
} from '../control/invariants.ts';
import { floatMakes_m } from './units.ts';

/** Seconds by which a lamp may be late after its delay. */
const GRACE_s = 10;
/** Closure error that water, COD, nitrogen and chlorine must keep below, relative. */
const CLOSURE = 1e-9;
/** Instants closer than this are one. */
const SAME_s = 1e-6;
const ENOUGH = 20;
/** Steps at one instant after which the engine is stuck there. */
const PATIENCE = 1000;

export class Invariants {
  /** What was broken, with the second at which it was. */
  readonly breaches: string[] = [];
  /** Control events seen, and the worst closure error. */
  events = 0;
  worst = 0;
  private readonly unit: Unit;
  private readonly kind: PanelKind;
  private readonly start: Float64Array;
  private readonly inlet_m: number;
  /** Since when the cause of a condition has stood with its circuit alive. */
  private readonly standing = new Map<ConditionName, number>();
  private alarmLiveSince: number | undefined;
  /** When the dialler must call next; undefined without an alarm. */
  private nextCall: number | undefined;
  /** A float was let go and does not yet know where the water is: `follow` tells it at the same instant. */
  private justReleased = false;
  private last_s: number;
  private still = 0;
  private read = 0;

  constructor(unit: Unit) {
    this.unit = unit;
    this.kind = kindOf(unit.spec.panel);
    this.start = Float64Array.from(unit.y);
    this.inlet_m = unit.spec.plant.pump.inlet_m - unit.spec.plant.pump.floor_m;
    this.last_s = unit.t;
    this.note(unit.t);
    this.attach();
    this.afterStep();
  }

  /** Looks at every event that reaches the panel, and at every step of the unit. */
  private attach(): void {
    const { unit } = this;
    const { panel } = unit;
    const deliver = panel.deliver.bind(panel);
    panel.deliver = (event, t) => {
      const from = panel.control;
      const calls = unit.registers.dialled;
      const { to, commands } = panel.table.step(from, eventNumber(event));
      deliver(event, t);
      this.events += 1;
      this.justReleased = event.endsWith('.released');
      this.must(panel.control === to, t, 'the panel goes where its table says');
      for (const says of moveBreaches(this.kind, { from, event, to, commands })) this.tell(t, `${event}: ${says}`);
      for (const says of stateBreaches(this.kind, to)) this.tell(t, `${event}: ${says}`);
      this.dialling(event, t, from.regions.phoneLine === 'good', unit.registers.dialled - calls);
      this.note(t);
    };
    unit.observer = () => this.afterStep();
  }

  private tell(t: number, says: string): void {
    if (this.breaches.length < ENOUGH) this.breaches.push(`${t} s: ${says}`);
  }

  private must(holds: boolean, t: number, says: string): void {
    if (!holds) this.tell(t, says);
  }

  /** Keeps a stop-watch on every cause, on the alarm and on its power. */
  private note(t: number): void {
    const parts = this.unit.control.regions;
    for (const condition of lampRules(this.kind).flatMap((rule) => rule.conditions)) {
      if (!causeStands(this.kind, parts, condition)) this.standing.delete(condition);
      else if (!this.standing.has(condition)) this.standing.set(condition, t);
    }
    if (!live(parts, 'alarmBreaker')) this.alarmLiveSince = undefined;
    else this.alarmLiveSince ??= t;
    if (!alarmed(this.kind, parts)) this.nextCall = undefined;
    else this.nextCall ??= t + this.seconds('dial');
  }

  private dialling(event: ControlEventName, t: number, lineGood: boolean, calls: number): void {
    if (event !== 'dialler.due' && event !== 'dialler.again') {
      this.must(calls === 0, t, `${event}: nothing but the dialler dials`);
      return;
    }
    const due = this.nextCall !== undefined && Math.abs(t - this.nextCall) < SAME_s;
    if (!due) this.must(calls === 0, t, 'a call goes out only when it is due');
    if (due) {
      this.must(
        calls === (lineGood ? 1 : 0),
        t,
        'a call that is due goes out once on a good line, on a dead one never',
      );
      this.nextCall = t + this.seconds('dialAgain');
    }
  }

  private seconds(delay: 'dial' | 'dialAgain' | ConditionName): number {
    const given = this.unit.spec.panel.delays_s[delay];
    if (given === undefined) throw new Error(`no delay ${delay}`);
    return given;
  }

  private afterStep(): void {
    const { unit } = this;
    const { t } = unit;
    this.must(t >= this.last_s, t, 'time goes forward');
    this.still = t === this.last_s ? this.still + 1 : 0;
    if (this.still > PATIENCE) throw new Error(`time stands still at ${t} s`);
    this.last_s = t;
    for (const [delay, at] of unit.due) this.must(at > t, t, `the delay ${delay} is not overdue`);
    this.must(this.nextCall === undefined || this.nextCall > t - SAME_s, t, 'a call that was due went out');
    this.lamps(t);
    if (!this.justReleased) this.water(t);
    this.air(t);
    this.books(t);
    this.faults(t);
    for (; this.read < unit.log.length; this.read++) this.marked(unit.log[this.read]?.what ?? '', t);
  }

  /** A cause that has stood for its delay and 10 s is lit, and none counts before its delay. */
  private lamps(t: number): void {
    const { regions, outputs } = this.unit.control;
    for (const { lamp, conditions } of lampRules(this.kind)) {
      for (const condition of conditions) {
        const since = this.standing.get(condition);
        const delay_s = this.seconds(condition);
        if (since !== undefined && t >= since + delay_s + GRACE_s && regions[`${lamp}Bulb`] === 'sound') {
          this.must(outputs[lamp], t, `${condition} has stood since ${since} s and the ${lamp} is dark`);
        }
        const soon = since === undefined || t < since + delay_s - SAME_s;
        this.must(!(soon && regions[condition] === 'made'), t, `${condition} counts before its delay`);
      }
    }
  }

  /** A sound float is where the water has it; the pump keeps above a sound stop float. */
  private water(t: number): void {
    const { unit, kind } = this;
    const { regions, outputs } = unit.control;
    const level = this.level_m();
    const breaks_m = (float: FloatName) => {
      const { makes_m, breaks_m } = floatHeights_m(unit.spec.panel, float);
      return floatMakes_m(unit, float) - (makes_m - breaks_m);
    };
    for (const float of floatsOf(unit.spec.panel)) {
      if (regions[float] === 'up') this.must(level > breaks_m(float), t, `the ${float} is up in ${level} m of water`);
      if (regions[float] === 'down') {
        this.must(level < floatMakes_m(unit, float), t, `the ${float} is down in ${level} m of water`);
      }
    }
    const drive = unit.driveAt(t);
    this.must(drive.pumpRuns === outputs.pumpRuns, t, 'the works pump exactly while the panel has the pump run');
    this.must(
      drive.compressorRuns === outputs.compressorRuns,
      t,
      'the works have air exactly while the compressor runs',
    );
    if (!outputs.pumpRuns || regions.relay !== 'sound') return;
    for (const stop of ['stopFloat', 'startStopFloat', 'redundantOffFloat'] as const) {
      if (!kind.floats.includes(stop) || !isSound(kind, regions, stop) || regions[stop] === 'lifted') continue;
      if (regions.selector === 'hand' && stop !== 'redundantOffFloat') continue;
      this.must(level > breaks_m(stop), t, `the pump runs with the water below the ${stop}`);
    }
  }

  private air(t: number): void {
    const { unit } = this;
    const { falls_kPa, rises_kPa } = unit.spec.panel.airSwitch;
    const falls = unit.airSwitchFalls_kPa();
    const pressure = unit.airPressure(t, unit.y);
    const { airContact } = unit.control.regions;
    if (airContact === 'open') this.must(pressure > falls, t, `the air switch is open at ${pressure} kPa`);
    if (airContact === 'closed') {
      this.must(pressure < falls + rises_kPa - falls_kPa, t, `the air switch is closed at ${pressure} kPa`);
    }
  }

  private books(t: number): void {
    const { y } = this.unit;
    for (const value of y) this.must(Number.isFinite(value), t, 'every quantity is a number');
    for (const tank of Object.values(VOLUME))
      this.must((y[tank] as number) >= 0, t, `tank ${tank} holds less than nothing`);
    this.worst = Math.max(this.worst, ...Object.values(balance(this.start, y)));
    this.must(this.worst < CLOSURE, t, `the books do not close: ${this.worst}`);
  }

  /** A fault that is there would change nothing if it began once more. */
  private faults(t: number): void {
    const { table, control } = this.unit;
    for (const state of this.unit.faults) {
      const effect = state.fault.effect.control;
      if (!effect || effect.ends.length === 0 || !isPresent(state, t)) continue;
      for (const event of effect.starts) {
        const again = table.step(control, eventNumber(event)).to;
        this.must(again === control, t, `the fault ${state.fault.id} is there and ${event} does not hold`);
      }
    }
  }

  /** Rising water that a sound, powered alarm watches has it lit before it stands at the inlet. */
  private marked(what: string, t: number): void {
    if (what !== 'mark.inletReached') return;
    const { regions } = this.unit.control;
    const watched = this.alarmLiveSince !== undefined && t >= this.alarmLiveSince + this.seconds('highWater') + GRACE_s;
    const float =
      isSound(this.kind, regions, 'highWaterFloat') && floatMakes_m(this.unit, 'highWaterFloat') < this.inlet_m;
    const rule = lampRules(this.kind).find((r) => r.conditions.includes('highWater'));
    if (!watched || !float || !rule || regions[`${rule.lamp}Bulb`] !== 'sound') return;
    this.must(this.unit.control.outputs[rule.lamp], t, 'the water is at the inlet and the lamp is dark');
  }

  private level_m(): number {
    const { pump, riser } = this.unit.spec.plant;
    return pumpLevel(pump, riser, this.unit.y[VOLUME.pump] as number) - pump.floor_m;
  }
}
