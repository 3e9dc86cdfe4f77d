/**
 * The wiring of a panel, as expressions over the states of its parts. Each line is one promise of the panel; the
 * machine's guards and the outputs both come from here. A panel variant is data (`PanelKind`): it picks its floats,
 * its lamps, how it doses and what else it has, and the same lines wire it.
 */
import type { FloatName, LampName } from './events.ts';
import { all, any, is, type Logic, never, none } from './logic.ts';

/** What distinguishes one panel of ours from another. */
export interface PanelKind {
  /** Its floats, lowest first. */
  readonly floats: readonly FloatName[];
  /** `latching`: a seal-in relay keeps the alarm until its circuit loses power. `following`: the alarm clears by itself. */
  readonly alarm: 'latching' | 'following';
  /** One lamp for everything, or one for air (and the ultraviolet lamp) and one for water. */
  readonly lamps: 'one' | 'air-and-water';
  /** A night timer with an override float; one start/stop float; or a timer of many small doses all day. */
  readonly dosing: 'night' | 'demand' | 'timed';
  /** A night timer's clock: one that lost the time blinks and does not dose until it is set, or it stood and goes on late. */
  readonly clock: 'digital' | 'mechanical';
  /** The compressor's outlet trips on a leak to ground. */
  readonly gfci: boolean;
  /** An ultraviolet lamp, fed from the compressor's outlet, with a contact that tells when it is out. */
  readonly ultraviolet: boolean;
}

export type OutputId =
  | 'alarmLive'
  | 'controlLive'
  | 'compressorLive'
  | 'redundantOffMade'
  | 'stopMade'
  | 'startStopMade'
  | 'doseMade'
  | 'overrideMade'
  | 'highWaterMade'
  | 'airClosed'
  | 'outletLive'
  | 'ultravioletLit'
  | 'condition'
  | 'alarm'
  | 'lamp'
  | 'airLamp'
  | 'waterLamp'
  | 'buzzer'
  | 'coil'
  | 'contact'
  | 'motorFed'
  | 'pumpRuns'
  | 'pumpStalls'
  | 'compressorRuns';

export type Outputs = Readonly<Record<OutputId, boolean>>;
export type Wiring = Readonly<Record<OutputId, Logic>>;

/** One lamp with what lights it: its latch on a latching panel, and the delayed conditions it stands for. */
export interface LampCircuit {
  readonly lamp: LampName;
  readonly latch: 'latch' | 'airLatch' | 'waterLatch';
  readonly condition: Logic;
}

/** The utility's supply feeds the panel, ordinary or low. */
export const supplyFed = any(is('supply', 'on'), is('supply', 'low'));

/** The three circuits that leave the panel. */
const alarmLive = all(supplyFed, is('alarmBreaker', 'on'));
const controlLive = all(supplyFed, is('pumpBreaker', 'on'));
const compressorLive = all(supplyFed, is('compressorBreaker', 'on'));

/** A float's own switch, seen at the ends of its cable: made when water or a hand has it up, or caught there. */
function closes(float: FloatName): Logic {
  const up = any(is(float, 'up'), is(float, 'lifted'), is(float, 'heldUp'));
  return any(is(`${float}Wire`, 'bridged'), all(is(`${float}Wire`, 'sound'), up));
}

/** A contact as the panel sees it: the float's own, unless its leads were swapped with a neighbour's. */
function made(float: FloatName, kind: PanelKind): Logic {
  const i = kind.floats.indexOf(float);
  if (i < 0) return never;
  const below = kind.floats[i - 1];
  const above = kind.floats[i + 1];
  const takenUp = above ? is('leads', `${float}Swapped`) : never;
  const takenDown = below ? is('leads', `${below}Swapped`) : never;
  return any(
    all(none(any(takenUp, takenDown)), closes(float)),
    ...(above ? [all(takenUp, closes(above))] : []),
    ...(below ? [all(takenDown, closes(below))] : []),
  );
}

/** The lamps of a panel. */
export function lampsOf(kind: PanelKind): readonly LampCircuit[] {
  const lampOut = kind.ultraviolet ? [is('lampOut', 'made')] : [];
  const air = any(is('lowAir', 'made'), ...lampOut);
  const water = is('highWater', 'made');
  return kind.lamps === 'one'
    ? [{ lamp: 'lamp', latch: 'latch', condition: any(air, water) }]
    : [
        { lamp: 'airLamp', latch: 'airLatch', condition: air },
        { lamp: 'waterLamp', latch: 'waterLatch', condition: water },
      ];
}

/** What the automatic position of the selector lets start the pump. */
function demand(kind: PanelKind): Logic {
  const stopMade = made('stopFloat', kind);
  switch (kind.dosing) {
    case 'demand':
      return made('startStopFloat', kind);
    case 'night':
      return all(stopMade, any(made('overrideFloat', kind), is('doseDemand', 'on')));
    case 'timed':
      return all(stopMade, is('doseDemand', 'on'));
  }
}

export function wire(kind: PanelKind): Wiring {
  const highWaterMade = any(made('highWaterFloat', kind), is('alarmTerminals', 'bridged'));
  const airClosed = any(is('airContact', 'closed'), is('airContact', 'stuckClosed'));

  const lamps = lampsOf(kind);
  const calls = (circuit: LampCircuit) =>
    any(circuit.condition, ...(kind.alarm === 'latching' ? [is(circuit.latch, 'sealed')] : []));
  const condition = any(...lamps.map((l) => l.condition));
  const alarm = all(alarmLive, any(...lamps.map(calls)));
  const testHeld = is('test', 'held');
  const lit = (name: LampName): Logic => {
    const circuit = lamps.find((l) => l.lamp === name);
    return circuit ? all(alarmLive, is(`${name}Bulb`, 'sound'), any(testHeld, calls(circuit))) : never;
  };
  const airLamp = lit('airLamp');
  const waterLamp = lit('waterLamp');
  const lamp = any(lit('lamp'), airLamp, waterLamp);
  const buzzer = all(alarmLive, is('horn', 'sound'), any(testHeld, all(alarm, is('silence', 'off'))));

  /** Hand passes every float but the redundant-off, which stays in series. */
  const redundantOffMade = made('redundantOffFloat', kind);
  const inSeries = kind.floats.includes('redundantOffFloat') ? [redundantOffMade] : [];
  const coil = all(controlLive, ...inSeries, any(is('selector', 'hand'), all(is('selector', 'auto'), demand(kind))));
  const contact = any(all(coil, none(is('relay', 'open'))), is('relay', 'welded'));
  /** Voltage at the motor, its own protector closed and its leads whole. */
  const motorFed = all(
    controlLive,
    contact,
    is('motorLead', 'sound'),
    none(any(is('protector', 'open'), is('protector', 'failed'))),
    is('winding', 'sound'),
  );

  const outletLive = kind.gfci ? all(compressorLive, is('gfci', 'set')) : compressorLive;
  const compressorRuns = all(
    outletLive,
    is('compressorCord', 'plugged'),
    is('compressor', 'sound'),
    none(is('compressorCutout', 'open')),
  );

  return {
    alarmLive,
    controlLive,
    compressorLive,
    redundantOffMade,
    stopMade: made('stopFloat', kind),
    startStopMade: made('startStopFloat', kind),
    doseMade: made('doseFloat', kind),
    overrideMade: made('overrideFloat', kind),
    highWaterMade,
    airClosed,
    outletLive,
    ultravioletLit: kind.ultraviolet ? all(outletLive, is('ultraviolet', 'sound')) : never,
    condition,
    alarm,
    lamp,
    airLamp,
    waterLamp,
    buzzer,
    coil,
    contact,
    motorFed,
    pumpRuns: all(motorFed, is('rotor', 'free')),
    pumpStalls: all(motorFed, is('rotor', 'seized')),
    compressorRuns,
  };
}
