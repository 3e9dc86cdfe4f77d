/**
 * How the panel's terminals are laid out for a meter: one circuit under the other, each a live rail on the left, its
 * neutral on the right and the rungs between them in the order the current takes. What a panel has not is left out.
 */
import type { ConductorId, TerminalId } from '../../../unit/index.ts';
import type { Key } from '../../../words/words.ts';
import type { GlyphName } from './glyphs.tsx';

/** What is stamped beside a terminal. */
export type Mark = 'L' | 'N' | 'T1' | 'T2' | 'ground';

export type Piece =
  | { readonly kind: 'terminal'; readonly id: TerminalId; readonly mark?: Mark }
  | { readonly kind: 'glyph'; readonly name: GlyphName }
  | { readonly kind: 'clamp'; readonly id: ConductorId };

/** Pieces side by side on the wire, with a name under them. */
export interface Block {
  readonly name?: Key;
  readonly pieces: readonly Piece[];
}

export interface Rung {
  readonly blocks: readonly Block[];
  /** Whether it goes on to neutral, or ends at its last terminal. */
  readonly ends: 'neutral' | 'terminal';
}

export interface CircuitPlan {
  readonly id: 'supply' | 'alarm' | 'compressor' | 'pump' | 'control' | 'behind';
  readonly title: Key;
  /** What feeds the live rail: the terminal on top of it, and what lies before that. */
  readonly head: readonly Piece[];
  readonly rungs: readonly Rung[];
}

const terminal = (id: TerminalId, mark?: Mark): Piece => ({ kind: 'terminal', id, ...(mark ? { mark } : {}) });
const glyph = (name: GlyphName): Piece => ({ kind: 'glyph', name });
const clamp = (id: ConductorId): Piece => ({ kind: 'clamp', id });
const block = (name: Key | undefined, ...pieces: readonly Piece[]): Block => ({ ...(name ? { name } : {}), pieces });
const toNeutral = (...blocks: readonly Block[]): Rung => ({ blocks, ends: 'neutral' });
const toTerminal = (...blocks: readonly Block[]): Rung => ({ blocks, ends: 'terminal' });

type Contact = TerminalId extends infer T ? (T extends `${infer C}.feed` ? C : never) : never;

/** A contact between its two terminals. */
function contact(id: Contact, name: Key, drawn: GlyphName): Block {
  return block(name, terminal(`${id}.feed`), glyph(drawn), terminal(`${id}.back`));
}

const SUPPLY: CircuitPlan = {
  id: 'supply',
  title: 'meter.supply',
  head: [terminal('line', 'L'), clamp('supply'), terminal('neutral', 'N'), terminal('ground', 'ground')],
  rungs: [],
};

const ALARM: CircuitPlan = {
  id: 'alarm',
  title: 'yard.panel.alarm',
  head: [terminal('alarmBreaker.load'), clamp('alarm'), glyph('breaker')],
  rungs: [
    toNeutral(contact('airSwitch', 'yard.panel.airSwitch', 'pressure'), block(undefined, glyph('delay'))),
    toNeutral(contact('uvContact', 'meter.uv', 'contact'), block(undefined, glyph('delay'))),
    toNeutral(contact('highWaterFloat', 'yard.float.high-water', 'float'), block(undefined, glyph('delay'))),
    toNeutral(block(undefined, glyph('contact')), block('part.lamp', terminal('lamp'), glyph('lamp'))),
    toNeutral(block(undefined, glyph('contact')), block('part.airLamp', terminal('airLamp'), glyph('lamp'))),
    toNeutral(block(undefined, glyph('contact')), block('part.waterLamp', terminal('waterLamp'), glyph('lamp'))),
    toNeutral(block(undefined, glyph('contact')), block('yard.panel.buzzer', terminal('buzzer'), glyph('buzzer'))),
  ],
};

const COMPRESSOR: CircuitPlan = {
  id: 'compressor',
  title: 'yard.panel.compressor',
  head: [terminal('compressorBreaker.load'), clamp('compressor'), glyph('breaker')],
  rungs: [toNeutral(block('meter.outlet', terminal('outlet.hot'), glyph('outlet'), terminal('outlet.neutral')))],
};

const PUMP: CircuitPlan = {
  id: 'pump',
  title: 'yard.panel.pump',
  head: [terminal('pumpBreaker.load'), glyph('breaker')],
  rungs: [
    toNeutral(
      block('meter.relay', glyph('relay')),
      block(undefined, terminal('motor.1', 'T1')),
      block('meter.lead', clamp('pump')),
      block('meter.cord', clamp('pumpCord')),
      block('meter.splices', terminal('splice.1'), glyph('motor'), terminal('splice.2')),
      block(undefined, terminal('motor.2', 'T2')),
    ),
  ],
};

const SELECTOR = toNeutral(
  block('meter.selector', glyph('selector')),
  block('meter.coil', terminal('coil'), glyph('coil')),
);
const STOP = contact('stopFloat', 'yard.float.stop', 'float');
const AUTO = block('yard.panel.auto', terminal('selector.auto'));
const TAP = [terminal('controlTap'), clamp('control'), glyph('fuse')];
const timed = (id: Contact, name: Key) =>
  toNeutral(contact(id, name, 'float'), block('yard.panel.timer', glyph('timer')));

function fromTap(...rungs: readonly Rung[]): CircuitPlan {
  return { id: 'control', title: 'meter.control', head: TAP, rungs };
}

/** One float starts and stops the pump. */
const BY_FLOAT = [fromTap(toTerminal(contact('startStopFloat', 'yard.float.start-stop', 'float'), AUTO), SELECTOR)];

/** A night timer, or the override float beside it, behind the stop float. */
const BY_NIGHT = [
  fromTap(
    toTerminal(STOP, contact('overrideFloat', 'meter.override', 'floatOrTimer'), AUTO),
    SELECTOR,
    timed('doseFloat', 'yard.float.dose'),
  ),
];

/** A timer of small doses that two floats inform; what draws the relay in hangs behind the redundant-off float. */
const BY_TIMER = [
  fromTap(timed('doseFloat', 'yard.float.dose'), timed('overrideFloat', 'yard.float.override')),
  {
    id: 'behind',
    title: 'yard.float.redundant-off',
    head: [terminal('redundantOffFloat.back'), glyph('float'), terminal('redundantOffFloat.feed')],
    rungs: [toTerminal(STOP, block('yard.panel.timer', glyph('timerContact')), AUTO), SELECTOR],
  },
] as const satisfies readonly CircuitPlan[];

function control(has: (id: TerminalId) => boolean): readonly CircuitPlan[] {
  if (has('startStopFloat.feed')) return BY_FLOAT;
  return has('redundantOffFloat.feed') ? BY_TIMER : BY_NIGHT;
}

/** What a probe goes on, or a clamp. */
export type Target = 'terminal' | 'clamp';

/** The panel that has these terminals, as a meter with probes or with a clamp needs it. */
export function planOf(has: (id: TerminalId) => boolean, target: Target): readonly CircuitPlan[] {
  const hasIt = (piece: Piece) => piece.kind !== 'terminal' || has(piece.id);
  const shown = (pieces: readonly Piece[]) => pieces.filter(({ kind }) => kind !== 'clamp' || target === 'clamp');
  return [SUPPLY, ALARM, COMPRESSOR, PUMP, ...control(has)].map((circuit) => ({
    ...circuit,
    head: shown(circuit.head),
    rungs: circuit.rungs
      .filter(({ blocks }) => blocks.every(({ pieces }) => pieces.every(hasIt)))
      .map(({ blocks, ends }) => ({
        ends,
        blocks: blocks.map((b) => ({ ...b, pieces: shown(b.pieces) })).filter(({ pieces }) => pieces.length > 0),
      })),
  }));
}

/** Everything on a plan that a probe or a clamp goes on, in its order. */
export function targetsOf(plan: readonly CircuitPlan[], target: Target): readonly string[] {
  return plan
    .flatMap(({ head, rungs }) => [...head, ...rungs.flatMap((rung) => rung.blocks.flatMap(({ pieces }) => pieces))])
    .flatMap((piece) => (piece.kind === target ? [piece.id] : []));
}
