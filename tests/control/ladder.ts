/**
 * Walks what really may happen to a panel, breadth first over its interned edges: water makes the floats from below
 * and leaves them from above unless a fault frees one, air comes and goes, hands do all they can (one float in a hand
 * at a time), delays run out, and at most so many faults are there at once.
 */
import {
  type ControlEventName,
  type ControlState,
  type ControlTable,
  DELAYS,
  eventNumber,
  type FloatName,
} from '../../src/control/index.ts';
import { faultsOf, type PlacedFault } from '../../src/faults/index.ts';
import type { UnitSpec } from '../../src/unit/index.ts';
import { handEvents } from '../unit/histories.ts';
import { moveBreaches, stateBreaches } from './invariants.ts';

/** Where a panel is, where water and air have its switches, and which faults are there. */
export interface Place {
  readonly state: ControlState;
  /** Floats that the water has made, one bit each, lowest first. */
  readonly made: number;
  readonly airLow: boolean;
  /** Numbers of the faults that are there, in order. */
  readonly faults: readonly number[];
}

/** One thing that happens: its name, what the panel is told, and what is so afterwards. */
interface Step {
  readonly name: string;
  readonly events: readonly ControlEventName[];
  readonly made?: number;
  readonly airLow?: boolean;
  readonly faults?: readonly number[];
}

export interface Taken {
  readonly name: string;
  readonly to: Place;
  readonly breaches: readonly string[];
}

const DUES = [...new Set(Object.values(DELAYS))];

export class Ladder {
  readonly table: ControlTable;
  readonly faults: readonly PlacedFault[];
  private readonly floats: readonly FloatName[];
  private readonly hands: readonly ControlEventName[];
  private readonly numbers = new Map<ControlState, number>();

  constructor(table: ControlTable, spec: UnitSpec) {
    this.table = table;
    this.floats = table.panel.kind.floats;
    this.hands = [...handEvents(spec), 'timer.set'];
    // What hands do anyway is no fault here, and one that only the plant feels shows in the water and the air.
    this.faults = faultsOf(spec).filter(
      ({ effect: { control, floats } }) => floats || control?.starts.some((e) => !this.hands.includes(e)),
    );
  }

  start(): Place {
    return { state: this.table.initial().to, made: 0, airLow: false, faults: [] };
  }

  key({ state, made, airLow, faults }: Place): string {
    let number = this.numbers.get(state);
    if (number === undefined) {
      number = this.numbers.size;
      this.numbers.set(state, number);
    }
    return `${number} ${made} ${airLow ? 1 : 0} ${faults.join(',')}`;
  }

  /** Panel states met so far. */
  get met(): number {
    return this.numbers.size;
  }

  /** Everything that may happen next, with at most so many faults at once, and where it leads. */
  next(place: Place, most: number): Taken[] {
    return this.steps(place, most).flatMap((step) => this.take(place, step) ?? []);
  }

  /** Does a step; undefined when the panel has no answer to it and nothing else changes. */
  take(place: Place, step: Step): Taken | undefined {
    const breaches: string[] = [];
    let { state } = place;
    let answered = step.made !== undefined || step.airLow !== undefined || step.faults !== undefined;
    for (const event of step.events) {
      if (!this.answers(state, event)) continue;
      answered = true;
      const { to, commands } = this.table.step(state, eventNumber(event));
      breaches.push(...moveBreaches(this.table.panel.kind, { from: state, event, to, commands }));
      if (!this.numbers.has(to)) breaches.push(...stateBreaches(this.table.panel.kind, to));
      state = to;
    }
    if (!answered) return undefined;
    const { made = place.made, airLow = place.airLow, faults = place.faults } = step;
    const left = faults.filter((n) => !this.isOver(n, state));
    return { name: step.name, to: { state, made, airLow, faults: left }, breaches };
  }

  private answers({ regions }: ControlState, event: ControlEventName): boolean {
    return Object.entries(this.table.panel.parts).some(
      ([part, { states }]) => states[regions[part] as string]?.on?.[event] !== undefined,
    );
  }

  /** A one-off that left nothing broken is over when its parts are as they should be. */
  private isOver(n: number, { regions }: ControlState): boolean {
    const cleared = this.fault(n).clearedWhen;
    return cleared?.every(({ region, state }) => (regions[region] ?? state) === state) ?? false;
  }

  private fault(n: number): PlacedFault {
    return this.faults[n] as PlacedFault;
  }

  private steps(place: Place, most: number): Step[] {
    return [
      ...this.water(place),
      place.airLow
        ? { name: 'air returns', events: ['air.rises'], airLow: false }
        : { name: 'air falls', events: ['air.falls'], airLow: true },
      ...this.byHand(place),
      ...DUES.map((due): Step => ({ name: due, events: [due] })),
      ...place.faults.flatMap((n) => this.mend(place, n)),
      ...(place.faults.length < most ? this.faults.flatMap((_, n) => this.begin(place, n)) : []),
    ];
  }

  /** Whether a fault lets a float rise and fall out of its order. */
  private isFree(i: number, faults: readonly number[]): boolean {
    const float = this.floats[i] as FloatName;
    return faults.some((n) => {
      const { floats, tethers } = this.fault(n).effect;
      return floats?.[float] !== undefined || tethers?.[float] !== undefined;
    });
  }

  private water({ made, faults }: Place): Step[] {
    const bound = this.floats.flatMap((_, i) => (this.isFree(i, faults) ? [] : [i]));
    return this.floats.flatMap((float, i): Step[] => {
      const free = this.isFree(i, faults);
      const up = (made & (1 << i)) !== 0;
      if (up && (free || bound.every((k) => k <= i || (made & (1 << k)) === 0))) {
        return [{ name: `${float} falls`, events: [`${float}.falls`], made: made & ~(1 << i) }];
      }
      if (!up && (free || bound.every((k) => k >= i || (made & (1 << k)) !== 0))) {
        return [{ name: `${float} rises`, events: [`${float}.rises`], made: made | (1 << i) }];
      }
      return [];
    });
  }

  private byHand(place: Place): Step[] {
    const lifted = this.floats.find((f) => place.state.regions[f] === 'lifted');
    const free = this.hands.filter((event) => !lifted || !event.endsWith('.lifted'));
    const steps = free.map((event): Step => ({ name: event, events: [event] }));
    if (lifted)
      steps.push({
        name: `${lifted}.released`,
        events: [`${lifted}.released`, ...this.follow(place.made, place.airLow)],
      });
    return steps;
  }

  /** What a freed part is told: where water and air are. Those that follow them already answer nothing. */
  private follow(made: number, airLow: boolean): ControlEventName[] {
    const floats = this.floats.map((f, i): ControlEventName => `${f}.${(made & (1 << i)) === 0 ? 'falls' : 'rises'}`);
    return [...floats, airLow ? 'air.falls' : 'air.rises'];
  }

  private begin({ faults }: Place, n: number): Step[] {
    if (faults.includes(n)) return [];
    const { key, effect } = this.fault(n);
    return [
      { name: `begins: ${key}`, events: effect.control?.starts ?? [], faults: [...faults, n].sort((a, b) => a - b) },
    ];
  }

  private mend({ made, airLow, faults }: Place, n: number): Step[] {
    const { key, effect, clearedWhen } = this.fault(n);
    if (clearedWhen) return [];
    const left = faults.filter((k) => k !== n);
    const settled = this.settled(made, left);
    const events = [...(effect.control?.ends ?? []), ...this.follow(settled, airLow)];
    return [{ name: `mended: ${key}`, events, made: settled, faults: left }];
  }

  /** Brings floats that were out of order back to where their neighbours say the water is. */
  private settled(made: number, faults: readonly number[]): number {
    let highest = -1;
    this.floats.forEach((_, i) => {
      if (!this.isFree(i, faults) && (made & (1 << i)) !== 0) highest = i;
    });
    let settled = made;
    for (let i = 0; i < highest; i++) if (!this.isFree(i, faults)) settled |= 1 << i;
    return settled;
  }

  /** Mends all, sets all right by hand, lets the water go and hot parts cool, and resets what was latched. */
  healed(place: Place): Place {
    let at = place;
    const go = (step: Step) => {
      at = this.take(at, step)?.to ?? at;
    };
    for (const n of place.faults) {
      for (const step of this.mend(at, n)) go(step);
    }
    const hands: ControlEventName[] = [
      'test.released',
      ...this.floats.map((f): ControlEventName => `${f}.released`),
      'alarmBreaker.off',
      'compressorBreaker.off',
      'pumpBreaker.off',
      'compressorCord.plugged',
      'supply.returns',
      'alarmBreaker.on',
      'compressorBreaker.on',
      'pumpBreaker.on',
      'gfci.reset',
      'selector.auto',
      'timer.set',
    ];
    const dry = this.floats.map((f): ControlEventName => `${f}.falls`).reverse();
    go({ name: 'set right', events: hands });
    go({
      name: 'dry and cool',
      events: [...dry, 'air.rises', 'cutout.cool', 'protector.cool'],
      made: 0,
      airLow: false,
    });
    go({ name: 'reset', events: ['alarmBreaker.off', 'alarmBreaker.on'] });
    return at;
  }

  /** Parts that are not as at the start. */
  unhealthy({ state }: Place): string[] {
    const sound = this.start().state.regions;
    return Object.entries(state.regions).flatMap(([part, is]) =>
      part === 'doseDemand' || sound[part] === is ? [] : [`${part} is ${is}`],
    );
  }
}
