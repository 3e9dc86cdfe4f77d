/**
 * How the panel's terminals are laid out for a meter: one circuit under the other, each a live rail on the left, its
 * neutral on the right and the rungs between them in the order the current takes. What a panel has not is left out.
 */
import type { ConductorId, TerminalId } from '../../../unit/index.ts';
import type { Key } from '../../../words/words.ts';
import type { GlyphName } from './glyphs.tsx';

export type Piece =
  | { readonly kind: 'terminal'; readonly id: TerminalId; readonly mark?: string }
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
  readonly id: 'supply' | 'alarm' | 'compressor' | 'pump' | 'control';
  readonly title: Key;
  /** What feeds the live rail: the terminal on top of it, and what lies before that. */
  readonly head: readonly Piece[];
  readonly rungs: readonly Rung[];
}

const terminal = (id: TerminalId, mark?: string): Piece => ({ kind: 'terminal', id, ...(mark ? { mark } : {}) });
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
  head: [terminal('line', 'L'), clamp('supply'), terminal('neutral', 'N'), terminal('ground', '⏚')],
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
      block(undefined, clamp('pump'), clamp('pumpCord')),
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
const timed = (id: Contact, name: Key) =>
  toNeutral(contact(id, name, 'float'), block('yard.panel.timer', glyph('timer')));

/** The rungs of the pump's control by how the panel doses: a night timer, one float, or a timer of small doses. */
function control(has: (id: TerminalId) => boolean): CircuitPlan {
  const rungs = has('startStopFloat.feed')
    ? [toTerminal(contact('startStopFloat', 'yard.float.start-stop', 'float'), AUTO), SELECTOR]
    : has('redundantOffFloat.feed')
      ? [
          toTerminal(contact('redundantOffFloat', 'yard.float.redundant-off', 'float')),
          toTerminal(STOP, block('yard.panel.timer', glyph('timerContact')), AUTO),
          SELECTOR,
          timed('doseFloat', 'yard.float.dose'),
          timed('overrideFloat', 'yard.float.override'),
        ]
      : [
          toTerminal(STOP, contact('overrideFloat', 'meter.override', 'floatOrTimer'), AUTO),
          SELECTOR,
          timed('doseFloat', 'yard.float.dose'),
        ];
  return {
    id: 'control',
    title: 'meter.control',
    head: [terminal('controlTap'), clamp('control'), glyph('fuse')],
    rungs,
  };
}

/** The panel that has these terminals. */
export function planOf(has: (id: TerminalId) => boolean): readonly CircuitPlan[] {
  return [SUPPLY, ALARM, COMPRESSOR, PUMP, control(has)].map((circuit) => ({
    ...circuit,
    rungs: circuit.rungs.filter(({ blocks }) =>
      blocks.every((b) => b.pieces.every((p) => p.kind !== 'terminal' || has(p.id))),
    ),
  }));
}

/** Everything on a plan that a probe or a clamp goes on. */
export function targetsOf(plan: readonly CircuitPlan[], kind: 'terminal' | 'clamp'): readonly string[] {
  return plan
    .flatMap(({ head, rungs }) => [...head, ...rungs.flatMap((r) => r.blocks.flatMap((b) => b.pieces))])
    .flatMap((piece) => (piece.kind === kind ? [piece.id] : []));
}
