/**
 * The whole unit under the events of the control: water really fills and drains, air really leaks, delays really run
 * out, hands work what hands can work. It takes the same event names as a bare control, so that a path made for one
 * can be walked on the other.
 */
import { type ControlEventName, DELAYS, type DelayId, FLOATS, type FloatName } from '../../src/control/index.ts';
import { type DrawSource, VOLUME } from '../../src/plant/index.ts';
import { Unit, type UnitFault, type UnitSpec } from '../../src/unit/index.ts';

const HOUR = 3600;
const DAY = 86_400;
/** Flow that fills a tank, and one that a running pump does not keep up with, m3/s. */
const TRICKLE = 1.5e-4;
const FLOOD = 2e-3;
/** Longest wait for water, s: a trickle fills the tank in less. */
const PATIENCE = 12 * HOUR;

/** An open line: what air falls by. */
const OPEN_LINE = 'open-line';

/** A tap that is opened and closed while time goes on. */
class Tap implements DrawSource {
  readonly demand_gm3 = 500;
  flow_m3s = 0;
  flowAt(): number {
    return this.flow_m3s;
  }
  nextEdge(): number {
    return Number.POSITIVE_INFINITY;
  }
}

export class Living {
  readonly unit: Unit;
  private readonly tap = new Tap();

  constructor(spec: UnitSpec, faults: readonly UnitFault[] = []) {
    const line: UnitFault = {
      id: OPEN_LINE,
      effect: { plant: { lineHole_m: 0.02 } },
      onset_s: Number.POSITIVE_INFINITY,
      severity: 1,
      ramp_s: 0,
      present: 'always',
    };
    this.unit = new Unit({ spec, source: this.tap, faults: [...faults, line], seed: 1, temperature_C: 20 });
    // Pumped out below every float, as the specifications begin.
    this.unit.y[VOLUME.pump] = 0.1 * spec.plant.pump.area_m2;
    this.unit.follow();
    // Past the night, whose doses nobody asked for.
    if (spec.panel.dosing.kind === 'night') this.wait(6 * HOUR);
  }

  get state() {
    return this.unit.control;
  }

  get dialled(): number {
    return this.unit.registers.dialled;
  }

  send(...events: readonly ControlEventName[]): this {
    for (const event of events) this.one(event);
    return this;
  }

  /** Lets time pass, with the panel's clock kept away from the night: no dose that nobody asked for. */
  wait(seconds: number): void {
    const { unit } = this;
    const until = unit.t + seconds;
    while (unit.t < until) {
      this.keepDay();
      unit.cutAt(Math.min(until, unit.t + 12 * HOUR));
    }
  }

  private one(event: ControlEventName): void {
    const { unit } = this;
    const [part, what] = event.split('.') as [string, string];
    const float = FLOATS.find((f) => f === part);
    const delays = (Object.keys(DELAYS) as DelayId[]).filter((d) => DELAYS[d] === event);
    if (float && what === 'rises') this.fillTo(float);
    else if (float && what === 'falls') this.drainTo(float);
    else if (event === 'air.falls' || event === 'air.rises') this.air(event === 'air.falls');
    else if (delays.length > 0) this.runOut(delays);
    else {
      unit.send(event);
      if (['released', 'freed'].includes(what)) unit.follow();
    }
  }

  private stands(float: FloatName): boolean {
    const { watches, above } = this.unit.switches;
    return above[watches.findIndex((w) => w.id === float)] === true;
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

  /** The pump takes the water down where it runs; else a truck does, with nothing else moving. */
  private drainTo(float: FloatName): void {
    const { unit } = this;
    const floor = unit.spec.plant.pump.floor_m;
    const start = unit.t;
    while (this.stands(float)) {
      if (unit.t - start > PATIENCE) throw new Error(`water does not leave the ${float}`);
      if (unit.control.outputs.pumpRuns) this.step();
      else {
        const volume = unit.y[VOLUME.pump] as number;
        unit.y[VOLUME.pump] = Math.max(0, volume - 0.005 * unit.spec.plant.pump.area_m2);
        if (unit.y[VOLUME.pump] === 0) throw new Error(`no water above ${floor} m, and the ${float} stands`);
        unit.follow();
      }
    }
  }

  private air(leaks: boolean): void {
    const { unit } = this;
    const line = unit.faults.find((f) => f.fault.id === OPEN_LINE);
    const switches = line?.switches as number[];
    const open = switches.filter((at) => at <= unit.t).length % 2 === 1;
    if (open !== leaks) switches.splice(0, switches.length, ...(leaks ? [unit.t] : []), Number.POSITIVE_INFINITY);
    unit.follow();
  }

  /** Waits until one of the delays of an event has run out; none running, nothing happens. */
  private runOut(delays: readonly DelayId[]): void {
    const { unit } = this;
    const due = Math.min(...delays.map((d) => unit.due.get(d) ?? Number.POSITIVE_INFINITY));
    if (due === Number.POSITIVE_INFINITY) return;
    while (unit.t < due) {
      this.keepDay();
      unit.cutAt(Math.min(due, unit.t + 12 * HOUR));
    }
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
