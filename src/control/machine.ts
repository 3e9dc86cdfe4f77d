/** The control of a panel: one parallel machine made of the small ones that its kind calls for. */
import { setup } from 'xstate';
import { BREAKERS, type BreakerName, type ControlEventName, type DelayId } from './events.ts';
import { all, any, is, type Logic, never, none } from './logic.ts';
import * as part from './parts.ts';
import { lampsOf, type PanelKind, supplyFed, type Wiring, wire } from './wiring.ts';

/** A panel: its kind, every region of its machine by name, its wiring, and the machine itself. */
export interface Panel {
  readonly kind: PanelKind;
  readonly parts: Readonly<Record<string, part.Part>>;
  readonly wiring: Wiring;
  /** Every event that some region answers. */
  readonly events: ReadonlySet<ControlEventName>;
  readonly machine: ReturnType<typeof machineOf>;
}

function breakers(kind: PanelKind, w: Wiring): Record<string, part.Part> {
  const loadShorted: Record<BreakerName, Logic> = {
    alarmBreaker: never,
    compressorBreaker: kind.gfci ? never : all(w.compressorLive, is('compressorCord', 'chafed')),
    pumpBreaker: all(w.controlLive, w.contact, is('motorLead', 'shorted')),
  };
  return Object.fromEntries(
    BREAKERS.flatMap((name) => [
      [`${name}Wire`, part.toggle('sound', 'shorted', `${name}.shorts`, `${name}.shortCleared`)],
      [name, part.breaker(name, all(supplyFed, is(`${name}Wire`, 'shorted')), loadShorted[name])],
    ]),
  );
}

function floats(kind: PanelKind): Record<string, part.Part> {
  return {
    ...Object.fromEntries(
      kind.floats.flatMap((f) => [
        [f, part.float(f)],
        [`${f}Wire`, part.floatWire(f)],
      ]),
    ),
    leads: part.leads(kind.floats),
  };
}

function alarm(kind: PanelKind, w: Wiring): Record<string, part.Part> {
  const lamps = lampsOf(kind);
  const lampOut = all(w.alarmLive, none(w.ultravioletLit));
  return {
    airContact: part.airContact(),
    alarmTerminals: part.toggle('dry', 'bridged', 'alarmTerminals.wetted', 'alarmTerminals.dried'),
    lowAir: part.delayed(all(w.alarmLive, w.airClosed), 'lowAir', 'lowAir.due'),
    highWater: part.delayed(all(w.alarmLive, w.highWaterMade), 'highWater', 'highWater.due'),
    ...(kind.ultraviolet ? { lampOut: part.delayed(lampOut, 'lampOut', 'lampOut.due') } : {}),
    ...Object.fromEntries(
      lamps.flatMap((l) => [
        [`${l.lamp}Bulb`, part.toggle('sound', 'dead', `${l.lamp}.dies`, `${l.lamp}.renewed`)],
        ...(kind.alarm === 'latching' ? [[l.latch, part.latch(all(w.alarmLive, l.condition), w.alarmLive)]] : []),
      ]),
    ),
    silence: part.silence(w.alarm, w.alarmLive, [
      'lowAir',
      'highWater',
      ...(kind.ultraviolet ? ['lampOut' as const] : []),
    ]),
    test: part.toggle('released', 'held', 'test.pressed', 'test.released'),
    horn: part.toggle('sound', 'dead', 'horn.dies', 'horn.renewed'),
    phoneLine: part.toggle('good', 'dead', 'phoneLine.dies', 'phoneLine.mended'),
    dialler: part.dialler(w.alarm, is('phoneLine', 'good')),
  };
}

function dosing(kind: PanelKind, w: Wiring): Record<string, part.Part> {
  const runs = all(w.controlLive, is('timerClock', 'keeping'));
  switch (kind.dosing) {
    case 'demand':
      return {};
    case 'night':
      return {
        timerClock: part.timerClock(w.controlLive, kind.clock),
        doseDemand: part.nightDoses(all(runs, w.stopMade, w.doseMade), all(runs, w.stopMade)),
      };
    case 'timed':
      return {
        timerClock: part.toggle('keeping', 'dead', 'timer.dies', 'timer.renewed'),
        doseDemand: part.timedDoses(
          runs,
          all(runs, w.stopMade, any(w.doseMade, w.overrideMade)),
          w.stopMade,
          w.overrideMade,
        ),
      };
  }
}

function compressor(kind: PanelKind, w: Wiring): Record<string, part.Part> {
  const leak = all(w.compressorLive, is('compressorCord', 'chafed'));
  return {
    ...(kind.gfci ? { gfci: part.gfci(leak) } : {}),
    compressor: part.toggle('sound', 'stopped', 'compressor.stops', 'compressor.mended'),
    compressorCord: part.cord(),
    housing: part.toggle('cool', 'hot', 'housing.heats', 'housing.cools'),
    compressorCutout: part.thermal(
      all(w.compressorRuns, is('housing', 'hot')),
      'cutoutHeat',
      'cutoutCool',
      'cutout.hot',
      'cutout.cool',
    ),
    ...(kind.ultraviolet
      ? { ultraviolet: part.toggle('sound', 'dead', 'ultraviolet.fails', 'ultraviolet.renewed') }
      : {}),
  };
}

function partsOf(kind: PanelKind, w: Wiring): Record<string, part.Part> {
  return {
    supply: part.supply(),
    ...breakers(kind, w),
    ...floats(kind),
    ...alarm(kind, w),
    selector: part.selector(),
    relay: part.relay(),
    ...dosing(kind, w),
    motorLead: part.motorLead(),
    winding: part.toggle('sound', 'open', 'winding.opens', 'winding.renewed'),
    rotor: part.toggle('free', 'seized', 'rotor.seizes', 'rotor.freed'),
    protector: part.protector(w.pumpStalls, all(w.pumpRuns, is('supply', 'low'))),
    ...compressor(kind, w),
  };
}

const control = setup({
  types: { context: {} as Record<string, never>, events: {} as { type: ControlEventName } },
  actions: {
    arm: (_, _params: { delay: DelayId }) => {},
    disarm: (_, _params: { delay: DelayId }) => {},
    dial: () => {},
    stopClock: () => {},
    startClock: () => {},
  },
});

/** The parts are built by name, so XState cannot follow their event names in types; `parts` is typed by itself. */
function machineOf(parts: Readonly<Record<string, part.Part>>) {
  return control.createMachine({
    id: 'control',
    type: 'parallel',
    context: {},
    states: parts as Parameters<typeof control.createMachine>[0]['states'] & object,
  });
}

/** The panel of a kind. Costly to build: `controlTable` keeps one of each. */
export function panelOf(kind: PanelKind): Panel {
  const wiring = wire(kind);
  return assembled(kind, partsOf(kind, wiring), wiring);
}

/** A panel put together from its parts and its wiring. */
export function assembled(kind: PanelKind, parts: Panel['parts'], wiring: Wiring): Panel {
  const answered = Object.values(parts).flatMap((p) => Object.values(p.states).flatMap((s) => Object.keys(s.on ?? {})));
  return { kind, parts, wiring, events: new Set(answered as ControlEventName[]), machine: machineOf(parts) };
}
