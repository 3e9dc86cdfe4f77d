/** The screws a meter's probe can be put on, and the conductors a clamp goes round, at a panel and on what it feeds. */
import { BREAKERS, type BreakerName, type FloatName, type LampName, type PanelKind } from '../control/index.ts';
import { lampsOf } from '../control/wiring.ts';

/** Contacts that come to two screws of their own: the one they are fed at, and the one they pass it on to. */
export type ContactId = FloatName | 'airSwitch' | 'uvContact';

export type TerminalId =
  | 'line'
  | 'neutral'
  | 'ground'
  | `${BreakerName}.load`
  | `${ContactId}.feed`
  | `${ContactId}.back`
  | LampName
  | 'buzzer'
  | 'outlet.hot'
  | 'outlet.neutral'
  /** The pump's two leads where they leave the panel, and at their splices in the pump tank's riser. */
  | 'motor.1'
  | 'motor.2'
  | 'splice.1'
  | 'splice.2'
  /** Behind the fuse through which the pump's circuit feeds its own control. */
  | 'controlTap'
  /** Where what asks for the pump comes to the selector, and the relay's coil behind it; its other end is on neutral. */
  | 'selector.auto'
  | 'coil';

export const CONDUCTORS = ['supply', 'alarm', 'compressor', 'pump', 'pumpCord', 'control'] as const;
export type ConductorId = (typeof CONDUCTORS)[number];

/** Contacts of a panel that come to screws of their own. */
export function contactsOf(kind: PanelKind): readonly ContactId[] {
  return ['airSwitch', ...(kind.ultraviolet ? (['uvContact'] as const) : []), ...kind.floats];
}

/** Every screw of a panel: supply, breakers, contacts, what signals, outlet, pump, control. */
export function terminalsOf(kind: PanelKind): readonly TerminalId[] {
  return [
    'line',
    'neutral',
    'ground',
    ...BREAKERS.map((breaker) => `${breaker}.load` as const),
    ...contactsOf(kind).flatMap((contact) => [`${contact}.feed`, `${contact}.back`] as const),
    ...lampsOf(kind).map(({ lamp }) => lamp),
    'buzzer',
    'outlet.hot',
    'outlet.neutral',
    'controlTap',
    'selector.auto',
    'coil',
    'motor.1',
    'motor.2',
    'splice.1',
    'splice.2',
  ];
}

/** Screws of the alarm's circuit and of the compressor's; what is left hangs on the pump's, but for these three. */
const OF_ALARM: ReadonlySet<string> = new Set(
  ['airSwitch', 'uvContact', 'highWaterFloat']
    .flatMap((contact) => [`${contact}.feed`, `${contact}.back`])
    .concat('alarmBreaker.load', 'lamp', 'airLamp', 'waterLamp', 'buzzer'),
);
const OF_COMPRESSOR: ReadonlySet<string> = new Set(['compressorBreaker.load', 'outlet.hot', 'outlet.neutral']);
const OF_NONE: ReadonlySet<string> = new Set(['line', 'neutral', 'ground']);

/** The breaker that a screw is fed by; undefined for the supply's own three, which no breaker of the panel cuts off. */
export function circuitOfTerminal(id: TerminalId): BreakerName | undefined {
  if (OF_NONE.has(id)) return undefined;
  if (OF_ALARM.has(id)) return 'alarmBreaker';
  return OF_COMPRESSOR.has(id) ? 'compressorBreaker' : 'pumpBreaker';
}
