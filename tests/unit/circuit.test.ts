import { describe, expect, it } from 'vitest';
import {
  BREAKERS,
  type ControlEventName,
  type ControlState,
  eventNumber,
  type FloatName,
} from '../../src/control/index.ts';
import { draw } from '../../src/plant/index.ts';
import { circuitOf, WINDING_ohm } from '../../src/unit/circuit.ts';
import { currentIn, potentials } from '../../src/unit/nodal.ts';
import { ampsIn, isLive, ohmsBetween, solve, voltsBetween } from '../../src/unit/probes.ts';
import { circuitOfTerminal, contactsOf, type TerminalId, terminalsOf } from '../../src/unit/terminals.ts';
import { KINDS, type PanelName, tableOf } from '../control/panels.ts';

/** A voltage divider and a bridge in balance: what any textbook gives. */
describe('the solver', () => {
  it('divides a voltage as its resistances stand', () => {
    const volts = potentials(
      [
        { from: 'top', to: 'tap', ohm: 3000 },
        { from: 'tap', to: 'foot', ohm: 1000 },
      ],
      new Map([
        ['top', 120],
        ['foot', 0],
      ]),
    );
    expect(volts.get('tap')).toBeCloseTo(30, 12);
  });

  it('finds no current across a bridge in balance, and the ohms of two ways side by side', () => {
    const arms = [
      { from: 'a', to: 'b', ohm: 10 },
      { from: 'a', to: 'c', ohm: 20 },
      { from: 'b', to: 'd', ohm: 30 },
      { from: 'c', to: 'd', ohm: 60 },
    ];
    const across = { from: 'b', to: 'c', ohm: 5 };
    const volts = potentials([...arms, across], new Map([['d', 0]]), new Map([['a', 1]]));
    expect(currentIn(across, volts)).toBeCloseTo(0, 12);
    expect(volts.get('a')).toBeCloseTo((40 * 80) / 120, 12);
  });
});

const NAMES = Object.keys(KINDS) as PanelName[];
const STEPS = 900;
/** Currents of the units' pumps while they run and while the rotor stands, A. */
const RUNS_A = 9.8;
const STALLS_A = 5.5 * RUNS_A;

/** Now and then back to a fed panel with a whole pump, so that most of the walk has something to measure. */
const BACK: readonly ControlEventName[] = [
  ...(['supply.returns', 'motorLead.mended', 'winding.renewed', 'protector.renewed', 'selector.hand'] as const),
  ...BREAKERS.flatMap((b) => [`${b}.shortCleared`, `${b}.off`, `${b}.on`] as const),
];

/** Control states of a panel met by any events in any order, each once. */
function met(name: PanelName): ControlState[] {
  const table = tableOf(name);
  const events = [...table.panel.events];
  const seen = new Set([table.initial().to]);
  let state = table.initial().to;
  for (let i = 0; i < STEPS; i++) {
    const event = events[Math.floor(draw(7, `walk/${name}`, i) * events.length)] as ControlEventName;
    state = table.step(state, eventNumber(event)).to;
    seen.add(state);
    if (i % 5 > 0) continue;
    for (const back of BACK) {
      state = table.step(state, eventNumber(back)).to;
      seen.add(state);
    }
  }
  return [...seen];
}

function pump_A({ outputs }: ControlState): number {
  return outputs.pumpStalls ? STALLS_A : outputs.pumpRuns ? RUNS_A : 0;
}

function fedCircuit(name: PanelName, state: ControlState) {
  return circuitOf(KINDS[name], state, pump_A(state));
}

/** The same state with every lever pushed off, as it is when all is locked out. */
function lockedOut(name: PanelName, state: ControlState): ControlState {
  const table = tableOf(name);
  return BREAKERS.reduce((at, breaker) => table.step(at, eventNumber(`${breaker}.off`)).to, state);
}

/** Whether the pump's live side has a way to neutral that is no part of what is measured. */
function hasOtherWay({ outputs, regions }: ControlState): boolean {
  return outputs.contact || regions.pumpBreakerWire === 'shorted' || regions.motorLead === 'shorted';
}

describe.each(NAMES)('the circuit of %s, in any state of its control', (name) => {
  const kind = KINDS[name];
  const states = met(name);
  const terminals = terminalsOf(kind);

  it('was walked over many states, fed and dead', () => {
    expect(states.length).toBeGreaterThan(300);
    for (const output of ['coil', 'contact', 'motorFed', 'compressorRuns', 'lamp', 'buzzer'] as const) {
      const on = states.filter((s) => s.outputs[output]).length;
      expect([output, on > 5, on < states.length - 5]).toEqual([output, true, true]);
    }
  });

  it('keeps the law of currents at every node (1e-9 A), and shorts no supply', () => {
    for (const state of states) {
      const { branches, volts } = solve(fedCircuit(name, state));
      const sums = new Map<string, number>();
      for (const branch of branches) {
        const amps = currentIn(branch, volts);
        sums.set(branch.from, (sums.get(branch.from) ?? 0) - amps);
        sums.set(branch.to, (sums.get(branch.to) ?? 0) + amps);
      }
      const [line, neutral] = [sums.get('line') ?? 0, sums.get('neutral') ?? 0];
      // What the utility sends out at the line comes back to it at the neutral.
      expect(Math.abs(line + neutral)).toBeLessThan(1e-9);
      sums.delete('neutral');
      if (state.regions.supply !== 'off') sums.delete('line');
      expect(Math.max(...[...sums.values()].map(Math.abs))).toBeLessThan(1e-9);
      expect(ampsIn(fedCircuit(name, state), 'supply')).toBeLessThan(60);
    }
  });

  it('has full volts exactly where the control says so, elsewhere a few that stray (under 5 V)', () => {
    const { floats, ultraviolet } = kind;
    for (const state of states) {
      const { outputs: o, regions: r } = state;
      const circuit = fedCircuit(name, state);
      const fed = (red: TerminalId, black: TerminalId = 'neutral'): boolean => {
        const volts = voltsBetween(circuit, red, black);
        const full = volts > 0.9 * (circuit.supply_V ?? Number.POSITIVE_INFINITY);
        expect(full || volts < 5, `${red} to ${black}: ${volts} V`).toBe(true);
        return full;
      };
      const found = {
        alarm: fed('alarmBreaker.load'),
        compressor: fed('compressorBreaker.load', 'ground'),
        control: fed('controlTap'),
        outlet: fed('outlet.hot', 'outlet.neutral'),
        coil: fed('coil'),
        pump: fed('motor.1', 'motor.2'),
        splice: fed('splice.1', 'splice.2'),
        highWater: fed('highWaterFloat.back'),
        air: fed('airSwitch.back'),
        light: ultraviolet && fed('uvContact.back'),
        lamps: (kind.lamps === 'one' ? (['lamp'] as const) : (['airLamp', 'waterLamp'] as const)).map(
          (lamp) => [lamp, fed(lamp) && r[`${lamp}Bulb`] === 'sound'] as const,
        ),
        buzzer: fed('buzzer') && r.horn === 'sound',
        dose: floats.includes('doseFloat') && fed('doseFloat.back'),
      };
      expect(found, state.key).toEqual({
        alarm: o.alarmLive,
        compressor: o.compressorLive,
        control: o.controlLive,
        outlet: o.outletLive,
        coil: o.coil,
        pump: o.controlLive && o.contact,
        splice: o.controlLive && o.contact && r.motorLead !== 'open',
        highWater: o.alarmLive && o.highWaterMade,
        air: o.alarmLive && o.airClosed,
        light: ultraviolet && o.alarmLive && !o.ultravioletLit,
        lamps: found.lamps.map(([lamp]) => [lamp, o[lamp === 'lamp' ? 'lamp' : lamp]]),
        buzzer: o.buzzer,
        dose: o.controlLive && o.doseMade,
      });
    }
  });

  it('sends the pump its own current exactly while the control says it is fed (1 %), the compressor too', () => {
    for (const state of states) {
      const { outputs: o } = state;
      const circuit = fedCircuit(name, state);
      const wanted = pump_A(state);
      expect(Math.abs(ampsIn(circuit, 'pump') - wanted), state.key).toBeLessThanOrEqual(0.01 * wanted + 1e-5);
      expect(ampsIn(circuit, 'pump') > 1).toBe(o.motorFed);
      expect(ampsIn(circuit, 'pumpCord')).toBeLessThan(1e-5);
      if (!kind.ultraviolet) expect(ampsIn(circuit, 'compressor') > 0.5).toBe(o.compressorRuns);
    }
  });

  /** Closed a few ohms (under 100), open over 10 kohm (common practice, from memory). */
  it('reads a contact closed under 100 ohm and open over 10 kohm once all is locked out', () => {
    const made = {
      redundantOffFloat: 'redundantOffMade',
      stopFloat: 'stopMade',
      startStopFloat: 'startStopMade',
      doseFloat: 'doseMade',
      overrideFloat: 'overrideMade',
      highWaterFloat: 'highWaterMade',
    } as const satisfies Record<FloatName, string>;
    for (const state of states) {
      const dead = lockedOut(name, state);
      const circuit = circuitOf(kind, dead, 0);
      for (const contact of contactsOf(kind)) {
        const ohms = ohmsBetween(circuit, `${contact}.feed`, `${contact}.back`);
        const closed =
          contact === 'airSwitch'
            ? dead.outputs.airClosed
            : contact === 'uvContact'
              ? !dead.outputs.ultravioletLit
              : dead.outputs[made[contact]];
        if (closed) expect(ohms, `${contact} ${dead.key}`).toBeLessThan(100);
        // By way of a short or of a welded relay and the motor the coil can be seen beside an open float.
        else expect(ohms, `${contact} ${dead.key}`).toBeGreaterThan(hasOtherWay(dead) ? 100 : 10_000);
      }
    }
  });

  it('finds the winding whole at the splices exactly when winding and protector are, and its leads at the panel', () => {
    for (const state of states) {
      const dead = lockedOut(name, state);
      if (hasOtherWay(dead)) continue;
      const circuit = circuitOf(kind, dead, 0);
      const { winding, protector, motorLead } = dead.regions;
      const whole = winding === 'sound' && protector !== 'open' && protector !== 'failed';
      const ohms = ohmsBetween(circuit, 'splice.1', 'splice.2');
      const atPanel = ohmsBetween(circuit, 'motor.1', 'motor.2');
      if (whole) expect(ohms).toBeCloseTo(WINDING_ohm, 2);
      else expect(ohms).toBeGreaterThan(20_000);
      if (whole && motorLead === 'sound') expect(Math.abs(atPanel - WINDING_ohm)).toBeLessThan(0.1);
      else expect(atPanel).toBeGreaterThan(20_000);
    }
  });

  it('is dead behind a locked breaker, whatever else is live', () => {
    const behind = terminals.filter((t) => circuitOfTerminal(t) !== undefined);
    for (const state of states.filter((_, i) => i % 5 === 0)) {
      const dead = circuitOf(kind, lockedOut(name, state), 0);
      expect(behind.filter((t) => isLive(dead, t))).toEqual([]);
      expect(isLive(dead, 'line')).toBe(state.regions.supply !== 'off');
    }
  });

  it('reads the same with the probes changed over, and nothing between a screw and itself', () => {
    for (const state of states.slice(0, 20)) {
      const circuit = fedCircuit(name, state);
      for (const [i, red] of terminals.entries()) {
        const black = terminals[(i * 7 + 3) % terminals.length] as TerminalId;
        expect(voltsBetween(circuit, red, black)).toBeCloseTo(voltsBetween(circuit, black, red), 6);
        expect(voltsBetween(circuit, red, red)).toBe(0);
      }
    }
  });
});
