/**
 * The panel as a network of resistances, from its kind and the state of its control: which conductors join which
 * screws, what hangs on them, and what the utility gives. `probes.ts` reads it as a meter does.
 *
 * A thing that is fed works otherwise than one that a meter's small current goes through: a motor turns, a lamp
 * glows, an electronic timer has not woken up. So each piece has a resistance while fed and one while dead.
 */
import { BREAKERS, type BreakerName, type ControlState, type FloatName, type PanelKind } from '../control/index.ts';
import { holds, type RegionStates } from '../control/logic.ts';
import { type LampCircuit, lampsOf } from '../control/wiring.ts';
import type { Branch } from './nodal.ts';

/** Names of the pieces that a clamp or a test asks for. */
export type PieceName = BreakerName | 'controlFuse' | 'compressorLead' | 'pumpLead' | 'pumpReturn' | 'pump' | 'coil';

/** A conductor or a load between two nodes: `ohm` while fed, `dead_ohm` to a meter. */
export interface Piece extends Branch {
  readonly dead_ohm: number;
  readonly name?: PieceName;
}

export interface Circuit {
  readonly pieces: readonly Piece[];
  /** Line to neutral as the utility gives it, V; undefined while it gives nothing. */
  readonly supply_V: number | undefined;
}

/** Supply at the panel: ordinary, and while it sags, V (conventions; 120 V nominal). */
export const MAINS_V = { on: 118, low: 98, off: 0 } as const;

/** Main winding of the pump's motor, ohm (convention). */
export const WINDING_ohm = 1.6;

/** A hand's breadth of copper under its screws; a power contact, a small one (common practice, no source). */
const COPPER_ohm = 0.005;
const POLE_ohm = 0.01;
const CONTACT_ohm = 0.1;
/** A float's contact with its cable there and back (common practice, no source). */
const FLOAT_ohm = 0.6;
/** Water in a splice or across two screws: still under the 100 ohm that count as closed (convention). */
const WET_ohm = 40;
/** Bare copper to ground: enough for any breaker to open at once (convention). */
const SHORT_ohm = 1;
/** 8 m of 12 AWG copper, 5.2 mohm/m (NEC chapter 9, table 8, from memory). */
const LEAD_ohm = 0.04;
/** Neutral to ground where the service enters the house (common practice, no source). */
const BOND_ohm = 0.05;
/** The rest of the house across the supply (convention). */
const HOUSE_ohm = 10;

/** Loads while fed and to a meter, ohm. All common practice, no source: a compressor of some 95 W, a relay's coil of 9 VA, a 7 W lamp that is cold at a tenth, electronics that do not wake at a meter's volt. */
const COMPRESSOR = [147, 25] as const;
const COIL = [1500, 400] as const;
const LAMP = [2000, 200] as const;
const BUZZER = [6000, 100_000] as const;
const ELECTRONICS = [7000, 200_000] as const;
const INPUT = [60_000, 200_000] as const;
const ULTRAVIOLET = [350, 100_000] as const;

/** What lies between the line and the pump's motor and back, ohm. */
const PUMP_PATH_ohm = 2 * POLE_ohm + COPPER_ohm + 2 * LEAD_ohm;

/** The circuit in a control state, with the current that the pump takes there, A (0 while it takes none). */
export function circuitOf(kind: PanelKind, state: ControlState, pump_A: number): Circuit {
  const { regions } = state;
  const supply_V = regions.supply === 'off' ? undefined : regions.supply === 'low' ? MAINS_V.low : MAINS_V.on;
  return {
    supply_V,
    pieces: [
      ...supply(regions),
      ...alarm(kind, regions),
      ...compressor(kind, state),
      ...pump(state, supply_V ?? MAINS_V.on, pump_A),
      ...control(kind, regions),
    ],
  };
}

function joined(from: string, to: string, ohm: number, name?: PieceName): Piece {
  return { from, to, ohm, dead_ohm: ohm, ...(name ? { name } : {}) };
}

function copper(from: string, to: string): Piece {
  return joined(from, to, COPPER_ohm);
}

/** A contact: a piece while it is closed, nothing while it is open. */
function contact(closed: boolean, from: string, to: string, ohm = CONTACT_ohm, name?: PieceName): Piece[] {
  return closed ? [joined(from, to, ohm, name)] : [];
}

function load([ohm, dead_ohm]: readonly [number, number], from: string, to = 'neutral'): Piece {
  return { from, to, ohm, dead_ohm };
}

function supply(regions: RegionStates): Piece[] {
  return [
    joined('neutral', 'ground', BOND_ohm),
    joined('line', 'neutral', HOUSE_ohm),
    ...BREAKERS.flatMap((breaker) => [
      ...contact(regions[breaker] === 'on', 'line', `${breaker}.load`, POLE_ohm, breaker),
      ...contact(regions[`${breaker}Wire`] === 'shorted', `${breaker}.load`, 'ground', SHORT_ohm),
    ]),
  ];
}

function alarm(kind: PanelKind, regions: RegionStates): Piece[] {
  const live = 'alarmBreaker.load';
  const held = regions.test === 'held';
  const lamps = lampsOf(kind);
  const calls = lamps.some((lamp) => isCalled(lamp, regions));
  const closed = regions.airContact === 'closed' || regions.airContact === 'stuckClosed';
  return [
    // The delays and the dialler are always on.
    load(ELECTRONICS, live),
    copper(live, 'highWaterFloat.feed'),
    ...floatContact('highWaterFloat', kind, regions),
    ...contact(regions.alarmTerminals === 'bridged', 'highWaterFloat.feed', 'highWaterFloat.back', WET_ohm),
    load(INPUT, 'highWaterFloat.back'),
    copper(live, 'airSwitch.feed'),
    ...contact(closed, 'airSwitch.feed', 'airSwitch.back'),
    load(INPUT, 'airSwitch.back'),
    ...lamps.flatMap((circuit) => lampCircuit(circuit, held, regions)),
    ...contact(held || (calls && regions.silence === 'off'), live, 'buzzer'),
    ...(regions.horn === 'sound' ? [load(BUZZER, 'buzzer')] : []),
  ];
}

function lampCircuit(circuit: LampCircuit, held: boolean, regions: RegionStates): Piece[] {
  const { lamp } = circuit;
  return [
    ...contact(held || isCalled(circuit, regions), 'alarmBreaker.load', lamp),
    ...(regions[`${lamp}Bulb`] === 'sound' ? [load(LAMP, lamp)] : []),
  ];
}

/** A lamp's own contact is drawn in by what it stands for, or by its latch. */
function isCalled({ condition, latch }: LampCircuit, regions: RegionStates): boolean {
  return holds(condition, regions) || regions[latch] === 'sealed';
}

/** The contact of the float whose cable is on these two screws: its own, or a neighbour's where leads were swapped. */
function floatContact(screws: FloatName, kind: PanelKind, regions: RegionStates): Piece[] {
  const float = cableOn(screws, kind, regions);
  const up = ['up', 'lifted', 'heldUp'].includes(regions[float] ?? '');
  const wire = regions[`${float}Wire`];
  const [feed, back] = [`${screws}.feed`, `${screws}.back`];
  if (wire === 'bridged') return [joined(feed, back, WET_ohm)];
  return contact(up && wire === 'sound', feed, back, FLOAT_ohm);
}

function cableOn(screws: FloatName, { floats }: PanelKind, { leads }: RegionStates): FloatName {
  const lower = floats.findIndex((float) => leads === `${float}Swapped`);
  const at = floats.indexOf(screws);
  const cable = lower < 0 ? screws : at === lower ? floats[at + 1] : at === lower + 1 ? floats[at - 1] : screws;
  return cable ?? screws;
}

function compressor(kind: PanelKind, { regions, outputs }: ControlState): Piece[] {
  const cord = regions.compressorCord;
  const set = !kind.gfci || regions.gfci === 'set';
  const plugged = cord === 'plugged' || cord === 'chafed';
  const whole = regions.compressor === 'sound' && regions.compressorCutout !== 'open';
  const [hot, back] = ['outlet.hot', 'outlet.neutral'];
  return [
    // A ground-fault outlet opens both wires.
    ...contact(set, 'compressorBreaker.load', hot, POLE_ohm, 'compressorLead'),
    ...contact(set, back, 'neutral', POLE_ohm),
    ...(plugged && whole ? [load(COMPRESSOR, hot, back)] : []),
    ...contact(cord === 'chafed', hot, 'ground', SHORT_ohm),
    ...(regions.ultraviolet === 'sound' ? [load(ULTRAVIOLET, hot, back)] : []),
    // The ultraviolet lamp's contact is on the alarm's circuit, and closed while the lamp is out.
    ...(kind.ultraviolet
      ? [
          copper('alarmBreaker.load', 'uvContact.feed'),
          ...contact(!outputs.ultravioletLit, 'uvContact.feed', 'uvContact.back'),
          load(INPUT, 'uvContact.back'),
        ]
      : []),
  ];
}

/** The relay's contact, the two leads, the splices, and the motor behind its protector. */
function pump({ regions, outputs }: ControlState, supply_V: number, pump_A: number): Piece[] {
  const whole = regions.winding === 'sound' && regions.protector !== 'open' && regions.protector !== 'failed';
  const running_ohm = pump_A > 0 ? supply_V / pump_A - PUMP_PATH_ohm : WINDING_ohm;
  const motor: Piece = { from: 'splice.1', to: 'splice.2', ohm: running_ohm, dead_ohm: WINDING_ohm, name: 'pump' };
  return [
    ...contact(outputs.contact, 'pumpBreaker.load', 'motor.1', POLE_ohm),
    // A lead that is loose is loose in its screw at the panel.
    ...contact(regions.motorLead !== 'open', 'motor.1', 'splice.1', LEAD_ohm, 'pumpLead'),
    ...contact(regions.motorLead === 'shorted', 'splice.1', 'ground', SHORT_ohm),
    ...(whole ? [motor] : []),
    joined('motor.2', 'splice.2', LEAD_ohm, 'pumpReturn'),
    copper('motor.2', 'neutral'),
  ];
}

/** What draws the relay in: floats, timer and selector in their order, from the control tap to the coil. */
function control(kind: PanelKind, regions: RegionStates): Piece[] {
  const { floats, dosing } = kind;
  const redundant = floats.includes('redundantOffFloat');
  const hand = redundant ? 'redundantOffFloat.back' : 'controlTap';
  const demand = regions.doseDemand === 'on';
  return [
    joined('pumpBreaker.load', 'controlTap', CONTACT_ohm, 'controlFuse'),
    ...floats.filter((float) => float !== 'highWaterFloat').flatMap((float) => floatContact(float, kind, regions)),
    ...(redundant ? [copper('controlTap', 'redundantOffFloat.feed')] : []),
    ...(dosing === 'demand'
      ? [copper('controlTap', 'startStopFloat.feed'), copper('startStopFloat.back', 'selector.auto')]
      : [
          load(ELECTRONICS, 'controlTap'),
          copper(hand, 'stopFloat.feed'),
          ...contact(demand, 'stopFloat.back', 'selector.auto'),
          copper('controlTap', 'doseFloat.feed'),
          load(INPUT, 'doseFloat.back'),
          // By night the override float starts the pump itself; a timer of small doses only hurries on it.
          ...(dosing === 'night'
            ? [copper('stopFloat.back', 'overrideFloat.feed'), copper('overrideFloat.back', 'selector.auto')]
            : [copper('controlTap', 'overrideFloat.feed'), load(INPUT, 'overrideFloat.back')]),
        ]),
    ...contact(regions.selector === 'hand', hand, 'coil'),
    ...contact(regions.selector === 'auto', 'selector.auto', 'coil'),
    { ...load(COIL, 'coil'), name: 'coil' },
  ];
}
