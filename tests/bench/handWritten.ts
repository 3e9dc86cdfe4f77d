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
type Protector = Thermal | 'warming' | 'failed';

class Breaker {
  lever: Lever = 'on';
  shorted = false;
}

class Float {
  at: FloatAt = 'down';
  wire: 'sound' | 'open' | 'bridged' = 'sound';
  get closes(): boolean {
    return this.wire === 'bridged' || (this.wire === 'sound' && this.at !== 'down' && this.at !== 'heldDown');
  }
}

export class HandWritten {
  supply: 'on' | 'low' | 'off' = 'on';
  readonly alarm = new Breaker();
  readonly comp = new Breaker();
  readonly pump = new Breaker();
  readonly stop = new Float();
  readonly dose = new Float();
  readonly override = new Float();
  readonly high = new Float();
  /** The lower one of two floats whose leads are swapped. */
  swapped: Float | undefined;
  terminalsWet = false;
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
  clock: 'keeping' | 'reserve' | 'lost' | 'dead' = 'keeping';
  demand = false;
  motorLead: 'sound' | 'open' | 'shorted' = 'sound';
  winding = true;
  rotor = true;
  compressor = true;
  plugged = true;
  chafed = false;
  hot = false;
  protector: Protector = 'closed';
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
  private outletLive = true;
  private stopMade = false;
  private doseMade = false;
  private highMade = false;
  private readonly handlers: readonly ((() => void) | undefined)[];

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
    const fed = this.supply !== 'off';
    this.alarmLive = fed && this.alarm.lever === 'on';
    this.controlLive = fed && this.pump.lever === 'on';
    const condition = this.lowAir === 'made' || this.highWater === 'made';
    this.alarmed = this.alarmLive && (condition || this.latched);
    this.lamp = this.alarmLive && this.bulb && (this.test || this.alarmed);
    this.buzzer = this.alarmLive && this.horn && (this.test || (this.alarmed && !this.silenced));
    this.stopMade = this.made(this.stop, undefined, this.dose);
    this.doseMade = this.made(this.dose, this.stop, this.override);
    this.highMade = this.terminalsWet || this.made(this.high, this.override, undefined);
    const auto =
      this.selector === 'auto' && this.stopMade && (this.made(this.override, this.dose, this.high) || this.demand);
    const coil = this.controlLive && (this.selector === 'hand' || auto);
    this.contact = (coil && this.relay !== 'open') || this.relay === 'welded';
    const closed = this.protector !== 'open' && this.protector !== 'failed';
    const driven = this.controlLive && this.contact && this.motorLead === 'sound' && closed && this.winding;
    this.pumpRuns = driven && this.rotor;
    this.pumpStalls = driven && !this.rotor;
    this.outletLive = fed && this.comp.lever === 'on';
    this.compressorRuns = this.outletLive && this.plugged && !this.chafed && this.compressor && this.cutout !== 'open';
  }

  /** One round of what moves by itself; true while anything did. */
  private settle(): boolean {
    let moved = false;
    const loadShorted = (b: Breaker) =>
      b === this.comp
        ? this.outletLive && this.plugged && this.chafed
        : b === this.pump && this.controlLive && this.contact && this.motorLead === 'shorted';
    if (this.supply !== 'off') {
      for (const b of [this.alarm, this.comp, this.pump]) {
        if (b.lever === 'on' && (b.shorted || loadShorted(b))) {
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
    const high = this.timed(this.highWater, this.alarmLive && this.highMade);
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
    if (this.clock !== 'lost' && this.clock !== 'dead' && this.controlLive !== (this.clock === 'keeping')) {
      this.ask();
      this.clock = this.controlLive ? 'keeping' : 'reserve';
      moved = true;
    }
    if (this.demand && !(this.controlLive && this.clock === 'keeping' && this.stopMade)) {
      this.ask();
      this.demand = false;
      moved = true;
    }
    const protector = this.protects();
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

  private protects(): Protector {
    const labours = this.pumpRuns && this.supply === 'low';
    switch (this.protector) {
      case 'closed':
        if (!this.pumpStalls && !labours) return 'closed';
        this.ask();
        return this.pumpStalls ? 'heating' : 'warming';
      case 'warming':
        if (labours) return 'warming';
        this.ask();
        return 'closed';
      case 'failed':
        return 'failed';
      default:
        return this.heated(this.protector, this.pumpStalls);
    }
  }

  /** A contact at the panel: its float's own, or that of the neighbour whose leads are on its terminals. */
  private made(float: Float, below: Float | undefined, above: Float | undefined): boolean {
    if (this.swapped === float && above) return above.closes;
    if (this.swapped === below && below) return below.closes;
    return float.closes;
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
      [`${name}.wireOpens`]: () => void (f.wire === 'sound' && (f.wire = 'open')),
      [`${name}.wireBridged`]: () => void (f.wire === 'sound' && (f.wire = 'bridged')),
      [`${name}.wireMended`]: () => void (f.wire = 'sound'),
      ...(name === 'highWaterFloat' ? {} : { [`${name}.leadsSwapped`]: () => void (this.swapped ??= f) }),
    };
  }

  private breaker(name: BreakerName, b: Breaker) {
    return {
      [`${name}.on`]: () =>
        void (b.lever === 'off' && (b.lever = this.supply !== 'off' && b.shorted ? 'tripped' : 'on')),
      [`${name}.off`]: () => void (b.lever = 'off'),
      [`${name}.trips`]: () => void (b.lever === 'on' && (b.lever = 'tripped')),
      [`${name}.shorts`]: () => void (b.shorted = true),
      [`${name}.shortCleared`]: () => void (b.shorted = false),
    };
  }

  private written(): Readonly<Partial<Record<ControlEventName, () => void>>> {
    return {
      ...this.float('stopFloat', this.stop),
      ...this.float('doseFloat', this.dose),
      ...this.float('overrideFloat', this.override),
      ...this.float('highWaterFloat', this.high),
      ...this.breaker('alarmBreaker', this.alarm),
      ...this.breaker('compressorBreaker', this.comp),
      ...this.breaker('pumpBreaker', this.pump),
      'supply.fails': () => void (this.supply = 'off'),
      'supply.sags': () => void (this.supply === 'on' && (this.supply = 'low')),
      'supply.returns': () => void (this.supply = 'on'),
      'leads.righted': () => void (this.swapped = undefined),
      'alarmTerminals.wetted': () => void (this.terminalsWet = true),
      'alarmTerminals.dried': () => void (this.terminalsWet = false),
      'air.falls': () => void (this.air === 'open' && (this.air = 'closed')),
      'air.rises': () => void (this.air === 'closed' && (this.air = 'open')),
      'airContact.sticksOpen': () => void (this.air.startsWith('stuck') || (this.air = 'stuckOpen')),
      'airContact.sticksClosed': () => void (this.air.startsWith('stuck') || (this.air = 'stuckClosed')),
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
      'lamp.dies': () => void (this.bulb = false),
      'lamp.renewed': () => void (this.bulb = true),
      'horn.dies': () => void (this.horn = false),
      'horn.renewed': () => void (this.horn = true),
      'dialler.due': () => this.dialled('timing'),
      'dialler.again': () => this.dialled('waiting'),
      'phoneLine.dies': () => void (this.line = false),
      'phoneLine.mended': () => void (this.line = true),
      'selector.hand': () => void (this.selector = 'hand'),
      'selector.off': () => void (this.selector = 'off'),
      'selector.auto': () => void (this.selector = 'auto'),
      'relay.opens': () => void (this.relay === 'sound' && (this.relay = 'open')),
      'relay.welds': () => void (this.relay === 'sound' && (this.relay = 'welded')),
      'relay.renewed': () => void (this.relay = 'sound'),
      'timer.start': () => {
        const may = this.controlLive && this.clock === 'keeping' && this.doseMade && this.stopMade;
        if (this.demand || !may) return;
        this.demand = true;
        this.ask();
      },
      'timer.reserveEnds': () => {
        if (this.clock === 'reserve') this.stand('lost');
      },
      'timer.loses': () => void ((this.clock === 'keeping' || this.clock === 'reserve') && this.stand('lost')),
      'timer.dies': () => void (this.clock !== 'dead' && this.stand('dead')),
      'timer.renewed': () => void (this.clock === 'dead' && this.go()),
      'timer.set': () => void (this.clock === 'lost' && this.controlLive && this.go()),
      'dose.ends': () => {
        if (this.demand) this.ask();
        this.demand = false;
      },
      'winding.opens': () => void (this.winding = false),
      'winding.renewed': () => void (this.winding = true),
      'rotor.seizes': () => void (this.rotor = false),
      'rotor.freed': () => void (this.rotor = true),
      'motorLead.opens': () => void (this.motorLead === 'sound' && (this.motorLead = 'open')),
      'motorLead.shorts': () => void (this.motorLead === 'sound' && (this.motorLead = 'shorted')),
      'motorLead.mended': () => void (this.motorLead = 'sound'),
      'protector.hot': () => {
        if (this.protector === 'heating' || this.protector === 'warming') this.protector = this.switched('open');
      },
      'protector.fails': () => {
        if (this.protector !== 'closed' && this.protector !== 'failed') this.ask();
        this.protector = 'failed';
      },
      'protector.renewed': () => void (this.protector === 'failed' && (this.protector = 'closed')),
      'protector.cool': () => void (this.protector === 'open' && (this.protector = this.switched('closed'))),
      'compressor.stops': () => void (this.compressor = false),
      'compressor.mended': () => void (this.compressor = true),
      'compressorCord.pulled': () => void (this.plugged = false),
      'compressorCord.plugged': () => void (this.plugged = true),
      'compressorCord.chafes': () => void (this.chafed = true),
      'compressorCord.renewed': () => void (this.chafed = false),
      'housing.heats': () => void (this.hot = true),
      'housing.cools': () => void (this.hot = false),
      'cutout.hot': () => void (this.cutout === 'heating' && (this.cutout = this.switched('open'))),
      'cutout.cool': () => void (this.cutout === 'open' && (this.cutout = this.switched('closed'))),
    };
  }

  /** The clock stands still: out of its reserve, or for good. */
  private stand(clock: 'lost' | 'dead'): void {
    this.commands += this.clock === 'keeping' ? 1 : 2;
    this.clock = clock;
  }

  private go(): void {
    this.ask();
    this.clock = 'keeping';
  }

  /** A thermal switch turning: one delay ends, and opening starts another. */
  private switched(to: Thermal): Thermal {
    this.commands += to === 'open' ? 2 : 1;
    return to;
  }
}
