/**
 * The whole unit under the events of the control: water really fills and drains, air really leaks, delays really run
 * out, hands work what hands can work. It takes the same event names as a bare control, so that a path made for one
 * can be walked on the other.
 */
import { type ControlEventName, DELAYS, type DelayId, FLOATS, type FloatName } from '../../src/control/index.ts';
import { composition, type DrawSource, steadyWeather, VOLUME } from '../../src/plant/index.ts';
import { type Snapshot, snapshot, Unit, type UnitFault, type UnitSpec } from '../../src/unit/index.ts';
import { watchedLevel } from '../../src/unit/watch.ts';

const HOUR = 3600;
const DAY = 86_400;
/** Flow that fills a tank, and one that a running pump does not keep up with, m3/s. */
const TRICKLE = 1.5e-4;
const FLOOD = 2e-3;
/** Longest wait for water, s: a trickle fills the tank in less. */
const PATIENCE = 12 * HOUR;
/** Longest wait for air to leave through an open line, s. */
const BREATH = 120;
/** What a truck moves at a time, as a change of the tank's level, m. */
const TRUCKFUL_m = 0.005;
/** More than any pump draws, m3/s. */
const DRAWS = 1e-3;

/** What the end of a delay is called. Two delays may share a name. */
export const ENDINGS: readonly ControlEventName[] = [...new Set(Object.values(DELAYS))];

/** An open line: what air falls by. */
const OPEN_LINE = 'open-line';

/** A tap that is opened and closed while time goes on. */
class Tap implements DrawSource {
  readonly influent = composition({});
  flow_m3s = 0;
  flowAt(): number {
    return this.flow_m3s;
  }
  nextEdge(): number {
    return Number.POSITIVE_INFINITY;
  }
}

/** A living unit at an instant, to come back to. */
export interface Kept {
  readonly unit: Snapshot;
  readonly leaks: boolean;
}

export class Living {
  readonly unit: Unit;
  /** What water, air and time did since it was last kept or come back to, in order, whether or not a switch followed. */
  readonly happened: ControlEventName[] = [];
  private readonly tap = new Tap();
  private above: readonly boolean[] = [];
  private told = 0;

  constructor(spec: UnitSpec) {
    const line: UnitFault = {
      id: OPEN_LINE,
      effect: { plant: { lineHole_m: 0.02 } },
      onset_s: Number.POSITIVE_INFINITY,
      severity: 1,
      ramp_s: 0,
      present: 'always',
    };
    this.unit = new Unit({ spec, source: this.tap, faults: [line], seed: 1, weather: steadyWeather(20) });
    // Pumped out below every float, as the specifications begin.
    this.unit.y[VOLUME.pump] = 0.1 * spec.plant.pump.area_m2;
    this.unit.follow();
    this.forget();
    this.unit.observer = () => this.note();
    // Past the night, whose doses nobody asked for.
    if (spec.panel.dosing.kind === 'night') this.hold(6 * HOUR);
  }

  get state() {
    return this.unit.control;
  }

  get dialled(): number {
    return this.unit.registers.dialled;
  }

  /** When the first of the running delays ends, s; endless when none runs. */
  get firstDue_s(): number {
    return Math.min(Number.POSITIVE_INFINITY, ...this.unit.due.values());
  }

  keep(): Kept {
    this.forget();
    return { unit: snapshot(this.unit), leaks: this.leaks };
  }

  back(kept: Kept): this {
    const { switches } = this.line;
    switches.splice(0, switches.length, ...(kept.leaks ? [kept.unit.t] : []), Number.POSITIVE_INFINITY);
    this.unit.resume(kept.unit);
    this.forget();
    return this;
  }

  private forget(): void {
    this.happened.length = 0;
    this.told = this.unit.log.length;
    this.above = [...this.unit.switches.above];
  }

  /** Delays that ended, then switches that turned: in this order the engine takes them at one instant. */
  private note(): void {
    const { log, switches } = this.unit;
    const ended = log.slice(this.told).flatMap(({ what }) => ENDINGS.filter((e) => e === what));
    const turned = switches.watches.flatMap((watch, i) => {
      const event = switches.above[i] ? watch.rises : watch.falls;
      return event && switches.above[i] !== this.above[i] ? [event] : [];
    });
    this.happened.push(...ended, ...turned);
    this.told = log.length;
    this.above = [...switches.above];
  }

  /** Does events one after the other. In a hurry water comes and goes by truck, in no time. */
  send(events: readonly ControlEventName[], hurry = false): this {
    for (const event of events) this.one(event, hurry);
    return this;
  }

  /** Lets time pass with the water held where it stands and the panel's clock kept away from the night. */
  hold(seconds: number): void {
    const { unit } = this;
    const until = unit.t + seconds;
    // The pump draws for a while, then is given back what it drew: no float turns in between.
    const spare_m = this.settleWater();
    const held = unit.y[VOLUME.pump] as number;
    const draws_s = (0.8 * spare_m * unit.spec.plant.pump.area_m2) / DRAWS;
    while (unit.t < until) {
      this.keepDay();
      const longest_s = unit.control.outputs.pumpRuns ? draws_s : 12 * HOUR;
      unit.cutAt(Math.min(until, unit.t + longest_s, this.firstDue_s));
      unit.y[VOLUME.pump] = held;
      unit.follow();
    }
  }

  private one(event: ControlEventName, hurry: boolean): void {
    const { unit } = this;
    const [part, what] = event.split('.') as [string, string];
    const float = FLOATS.find((f) => f === part);
    const delays = (Object.keys(DELAYS) as DelayId[]).filter((d) => DELAYS[d] === event);
    if (float && (what === 'rises' || what === 'falls')) {
      if (hurry) this.truck(float, what === 'rises');
      else if (what === 'rises') this.fillTo(float);
      else this.drainTo(float);
    } else if (event === 'air.falls' || event === 'air.rises') this.air(event === 'air.falls');
    else if (event === 'timer.start' && unit.spec.panel.dosing.kind === 'night') this.startHour();
    else if (delays.length > 0) this.runOut(delays);
    else {
      unit.send(event);
      if (['released', 'freed'].includes(what)) unit.follow();
    }
  }

  stands(id: string): boolean {
    const { watches, above } = this.unit.switches;
    return above[watches.findIndex((w) => w.id === id)] === true;
  }

  private fillTo(float: FloatName): void {
    const { unit, tap } = this;
    const start = unit.t;
    while (!this.stands(float)) {
      tap.flow_m3s = unit.t - start > PATIENCE || unit.control.outputs.pumpRuns ? FLOOD : TRICKLE;
      if (unit.t - start > 2 * PATIENCE) throw new Error(`water does not reach the ${float}`);
      unit.follow();
      this.step();
    }
    tap.flow_m3s = 0;
    unit.follow();
  }

  /** The pump takes the water down where it runs; else a truck does. */
  private drainTo(float: FloatName): void {
    const { unit } = this;
    const start = unit.t;
    while (this.stands(float)) {
      if (unit.t - start > PATIENCE) throw new Error(`water does not leave the ${float}`);
      if (unit.control.outputs.pumpRuns) this.step();
      else this.truck(float, false);
    }
  }

  /** A truck brings or takes water, a little at a time, until a float turns; no time goes by. */
  private truck(float: FloatName, brings: boolean): void {
    const { unit } = this;
    const truckful = (brings ? TRUCKFUL_m : -TRUCKFUL_m) * unit.spec.plant.pump.area_m2;
    while (this.stands(float) !== brings) {
      const volume = (unit.y[VOLUME.pump] as number) + truckful;
      if (volume < 0) throw new Error(`the ${float} stands in an empty tank`);
      unit.y[VOLUME.pump] = volume;
      unit.follow();
    }
  }

  /** Moves the water to the middle of the band in which no float turns; how far it may fall from there, m. */
  private settleWater(): number {
    const { unit } = this;
    const { area_m2 } = unit.spec.plant.pump;
    let low = 0;
    let high = Number.POSITIVE_INFINITY;
    unit.switches.watches.forEach((watch, i) => {
      if (watch.quantity !== 'pumpTank') return;
      if (unit.switches.above[i]) low = Math.max(low, watch.lower);
      else high = Math.min(high, watch.upper);
    });
    const now = watchedLevel(unit.spec, 'pumpTank', unit.y);
    const wanted = high === Number.POSITIVE_INFINITY ? now : (low + high) / 2;
    unit.y[VOLUME.pump] = (unit.y[VOLUME.pump] as number) + (wanted - now) * area_m2;
    unit.follow();
    return wanted - low;
  }

  private get line() {
    const line = this.unit.faults.find((f) => f.fault.id === OPEN_LINE);
    if (!line) throw new Error('no line');
    return line as typeof line & { switches: number[] };
  }

  private get leaks(): boolean {
    return this.line.switches.filter((at) => at <= this.unit.t).length % 2 === 1;
  }

  private air(falls: boolean): void {
    const { unit, line } = this;
    if (this.leaks !== falls) {
      line.switches.splice(0, line.switches.length, ...(falls ? [unit.t] : []), Number.POSITIVE_INFINITY);
    }
    unit.follow();
    const patience = Math.min(unit.t + BREATH, this.firstDue_s - 1e-3);
    while (this.stands('air') === falls && unit.t < patience) this.hold(Math.min(1, patience - unit.t));
  }

  /** Midnight by the panel's clock, a second from now. A clock that stands comes to no hour. */
  private startHour(): void {
    const { unit } = this;
    if (unit.registers.clockStopped_s < 0) unit.setClock(DAY - 1 - (unit.t % DAY));
    unit.cutAt(unit.t + 1);
    this.keepDay();
  }

  /** Holds the water until one of the delays of an event has run out; none running, nothing happens. */
  private runOut(delays: readonly DelayId[]): void {
    const due = Math.min(...delays.map((d) => this.unit.due.get(d) ?? Number.POSITIVE_INFINITY));
    if (due < Number.POSITIVE_INFINITY) this.hold(due - this.unit.t);
  }

  /** On to the next thing that happens, exactly. */
  private step(): void {
    const { unit } = this;
    this.keepDay();
    unit.advance(unit.t);
    unit.advance(unit.horizon());
  }

  private keepDay(): void {
    const { unit } = this;
    if (unit.spec.panel.dosing.kind !== 'night' || unit.registers.clockStopped_s >= 0) return;
    const ofDay = (unit.t + unit.clockAhead()) % DAY;
    if (ofDay < 5.5 * HOUR || ofDay > 11 * HOUR) unit.setClock(6 * HOUR - (unit.t % DAY));
  }
}
