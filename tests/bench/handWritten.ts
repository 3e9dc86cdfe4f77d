// biome-ignore-all lint/suspicious/noAssignInExpressions: one line for each event reads best as one assignment.
/**
 * The control of U1 as somebody would write it by hand for speed: plain fields, one handler per event found by its
 * number, relay logic as boolean expressions run to rest. The benchmark's measure of what generality costs; it checks
 * first that both do the same.
 */
import { type BreakerName, type ControlEventName, EVENTS, type FloatName } from '../../src/control/index.ts';

type Lever = 'on' | 'off' | 'tripped';
type FloatAt = 'down' | 'up' | 'lifted' | 'heldUp' | 'heldDown';
type Timed = 'idle' | 'timing' | 'made';
type Thermal = 'closed' | 'heating' | 'open';

class Breaker {
  lever: Lever = 'on';
  shorted = false;
}

class Float {
  at: FloatAt = 'down';
  get made(): boolean {
    return this.at === 'up' || this.at === 'lifted' || this.at === 'heldUp';
  }
}

export class HandWritten {
  supply = true;
  readonly alarm = new Breaker();
  readonly comp = new Breaker();
  readonly pump = new Breaker();
  readonly stop = new Float();
  readonly dose = new Float();
  readonly override = new Float();
  readonly high = new Float();
  air: 'open' | 'closed' | 'stuckOpen' | 'stuckClosed' = 'open';
  lowAir: Timed = 'idle';
  highWater: Timed = 'idle';
  latched = false;
  silenced = false;
  test = false;
  bulb = true;
  horn = true;
  line = true;
  dialler: 'idle' | 'timing' | 'waiting' = 'idle';
  selector: 'auto' | 'hand' | 'off' = 'auto';
  relay: 'sound' | 'open' | 'welded' = 'sound';
  clock: 'keeping' | 'reserve' | 'lost' = 'keeping';
  demand = false;
  winding = true;
  rotor = true;
  compressor = true;
  cord = true;
  hot = false;
  protector: Thermal = 'closed';
  cutout: Thermal = 'closed';

  lamp = false;
  buzzer = false;
  contact = false;
  pumpRuns = false;
  pumpStalls = false;
  compressorRuns = true;
  /** Commands given, so that the work of giving them is not left out. */
  commands = 0;

  private alarmLive = true;
  private controlLive = true;
  private alarmed = false;
  private readonly handlers: readonly (() => void)[];

  constructor() {
    const handlers = this.written();
    this.handlers = EVENTS.map((event) => handlers[event]);
  }

  /** An event by its number in EVENTS. */
  send(event: number): void {
    const handler = this.handlers[event];
    if (handler === undefined) return;
    handler();
    this.read();
    while (this.settle()) this.read();
  }

  private ask(): void {
    this.commands += 1;
  }

  /** What the wires carry. */
  private read(): void {
    this.alarmLive = this.supply && this.alarm.lever === 'on';
    this.controlLive = this.supply && this.pump.lever === 'on';
    const condition = this.lowAir === 'made' || this.highWater === 'made';
    this.alarmed = this.alarmLive && (condition || this.latched);
    this.lamp = this.alarmLive && this.bulb && (this.test || this.alarmed);
    this.buzzer = this.alarmLive && this.horn && (this.test || (this.alarmed && !this.silenced));
    const auto = this.selector === 'auto' && this.stop.made && (this.override.made || this.demand);
    const coil = this.controlLive && (this.selector === 'hand' || auto);
    this.contact = (coil && this.relay !== 'open') || this.relay === 'welded';
    const fed = this.controlLive && this.contact && this.protector !== 'open' && this.winding;
    this.pumpRuns = fed && this.rotor;
    this.pumpStalls = fed && !this.rotor;
    const plugged = this.supply && this.comp.lever === 'on' && this.cord;
    this.compressorRuns = plugged && this.compressor && this.cutout !== 'open';
  }

  /** One round of what moves by itself; true while anything did. */
  private settle(): boolean {
    let moved = false;
    if (this.supply) {
      for (const b of [this.alarm, this.comp, this.pump]) {
        if (b.shorted && b.lever === 'on') {
          b.lever = 'tripped';
          moved = true;
        }
      }
    }
    const condition = this.lowAir === 'made' || this.highWater === 'made';
    if (this.alarmLive && condition && !this.latched) moved = this.latched = true;
    else if (!this.alarmLive && this.latched) {
      this.latched = false;
      moved = true;
    }
    const closed = this.air === 'closed' || this.air === 'stuckClosed';
    const low = this.timed(this.lowAir, this.alarmLive && closed);
    const high = this.timed(this.highWater, this.alarmLive && this.high.made);
    if (low !== this.lowAir || high !== this.highWater) moved = true;
    this.lowAir = low;
    this.highWater = high;
    if (this.silenced && !this.alarmLive) {
      this.silenced = false;
      moved = true;
    }
    if (this.alarmed !== (this.dialler !== 'idle')) {
      this.ask();
      this.dialler = this.alarmed ? 'timing' : 'idle';
      moved = true;
    }
    if (this.clock !== 'lost' && this.controlLive !== (this.clock === 'keeping')) {
      this.ask();
      this.clock = this.controlLive ? 'keeping' : 'reserve';
      moved = true;
    }
    if (this.demand && !(this.controlLive && this.stop.made)) {
      this.ask();
      this.demand = false;
      moved = true;
    }
    const protector = this.heated(this.protector, this.pumpStalls);
    const cutout = this.heated(this.cutout, this.compressorRuns && this.hot);
    if (protector !== this.protector || cutout !== this.cutout) moved = true;
    this.protector = protector;
    this.cutout = cutout;
    return moved;
  }

  private timed(state: Timed, cause: boolean): Timed {
    if (cause === (state !== 'idle')) return state;
    if (state !== 'made') this.ask();
    return cause ? 'timing' : 'idle';
  }

  private heated(state: Thermal, cause: boolean): Thermal {
    if (state === 'open' || cause === (state === 'heating')) return state;
    this.ask();
    return cause ? 'heating' : 'closed';
  }

  private due(state: Timed): Timed {
    if (state !== 'timing') return state;
    this.ask();
    return 'made';
  }

  private dialled(from: 'timing' | 'waiting'): void {
    if (this.dialler !== from) return;
    this.dialler = 'waiting';
    this.commands += this.line ? 3 : 2;
  }

  private float(name: FloatName, f: Float) {
    const from = (...states: FloatAt[]) => states.includes(f.at);
    return {
      [`${name}.rises`]: () => void (f.at === 'down' && (f.at = 'up')),
      [`${name}.falls`]: () => void (f.at === 'up' && (f.at = 'down')),
      [`${name}.heldUp`]: () => void (from('down', 'up', 'lifted') && (f.at = 'heldUp')),
      [`${name}.heldDown`]: () => void (from('down', 'up', 'lifted') && (f.at = 'heldDown')),
      [`${name}.freed`]: () => void (from('heldUp', 'heldDown') && (f.at = 'down')),
      [`${name}.lifted`]: () => void (from('down', 'up') && (f.at = 'lifted')),
      [`${name}.released`]: () => void (f.at === 'lifted' && (f.at = 'down')),
    };
  }

  private breaker(name: BreakerName, b: Breaker) {
    return {
      [`${name}.on`]: () => void (b.lever === 'off' && (b.lever = this.supply && b.shorted ? 'tripped' : 'on')),
      [`${name}.off`]: () => void (b.lever = 'off'),
      [`${name}.trips`]: () => void (b.lever === 'on' && (b.lever = 'tripped')),
      [`${name}.shorts`]: () => void (b.shorted = true),
      [`${name}.shortCleared`]: () => void (b.shorted = false),
    };
  }

  private written(): Readonly<Record<ControlEventName, () => void>> {
    return {
      ...this.float('stopFloat', this.stop),
      ...this.float('doseFloat', this.dose),
      ...this.float('overrideFloat', this.override),
      ...this.float('highWaterFloat', this.high),
      ...this.breaker('alarmBreaker', this.alarm),
      ...this.breaker('compressorBreaker', this.comp),
      ...this.breaker('pumpBreaker', this.pump),
      'supply.fails': () => void (this.supply = false),
      'supply.returns': () => void (this.supply = true),
      'air.falls': () => void (this.air === 'open' && (this.air = 'closed')),
      'air.rises': () => void (this.air === 'closed' && (this.air = 'open')),
      'airContact.sticksOpen': () => void (this.air = 'stuckOpen'),
      'airContact.sticksClosed': () => void (this.air = 'stuckClosed'),
      'airContact.freed': () => void (this.air.startsWith('stuck') && (this.air = 'open')),
      'lowAir.due': () => {
        if (this.lowAir === 'timing') this.silenced = false;
        this.lowAir = this.due(this.lowAir);
      },
      'highWater.due': () => {
        if (this.highWater === 'timing') this.silenced = false;
        this.highWater = this.due(this.highWater);
      },
      'latch.surge': () => void (this.alarmLive && (this.latched = true)),
      'silence.pressed': () => void (this.alarmed && (this.silenced = true)),
      'test.pressed': () => void (this.test = true),
      'test.released': () => void (this.test = false),
      'bulb.dies': () => void (this.bulb = false),
      'bulb.renewed': () => void (this.bulb = true),
      'horn.dies': () => void (this.horn = false),
      'horn.renewed': () => void (this.horn = true),
      'dialler.due': () => this.dialled('timing'),
      'dialler.again': () => this.dialled('waiting'),
      'phoneLine.dies': () => void (this.line = false),
      'phoneLine.mended': () => void (this.line = true),
      'selector.hand': () => void (this.selector = 'hand'),
      'selector.off': () => void (this.selector = 'off'),
      'selector.auto': () => void (this.selector = 'auto'),
      'relay.opens': () => void (this.relay = 'open'),
      'relay.welds': () => void (this.relay = 'welded'),
      'relay.renewed': () => void (this.relay = 'sound'),
      'timer.start': () => {
        const may = this.controlLive && this.clock === 'keeping' && this.dose.made && this.stop.made;
        if (this.demand || !may) return;
        this.demand = true;
        this.ask();
      },
      'timer.reserveEnds': () => {
        if (this.clock !== 'reserve') return;
        this.clock = 'lost';
        this.ask();
      },
      'timer.set': () => void (this.clock === 'lost' && this.controlLive && (this.clock = 'keeping')),
      'dose.ends': () => {
        if (this.demand) this.ask();
        this.demand = false;
      },
      'winding.opens': () => void (this.winding = false),
      'winding.renewed': () => void (this.winding = true),
      'rotor.seizes': () => void (this.rotor = false),
      'rotor.freed': () => void (this.rotor = true),
      'protector.hot': () => void (this.protector === 'heating' && (this.protector = this.switched('open'))),
      'protector.cool': () => void (this.protector === 'open' && (this.protector = this.switched('closed'))),
      'compressor.stops': () => void (this.compressor = false),
      'compressor.mended': () => void (this.compressor = true),
      'compressorCord.pulled': () => void (this.cord = false),
      'compressorCord.plugged': () => void (this.cord = true),
      'housing.heats': () => void (this.hot = true),
      'housing.cools': () => void (this.hot = false),
      'cutout.hot': () => void (this.cutout === 'heating' && (this.cutout = this.switched('open'))),
      'cutout.cool': () => void (this.cutout === 'open' && (this.cutout = this.switched('closed'))),
    } as Readonly<Record<ControlEventName, () => void>>;
  }

  /** A thermal switch turning: one delay ends, and opening starts another. */
  private switched(to: Thermal): Thermal {
    this.commands += to === 'open' ? 2 : 1;
    return to;
  }
}
