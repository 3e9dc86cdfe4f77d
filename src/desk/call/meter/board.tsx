import { useRef, useState } from 'preact/hooks';
import type { FormField } from '../../../calls/view.ts';
import { useDesk } from '../../desk.ts';
import '../../css/meter-board.css';
import { ProbeMark } from './face.tsx';
import { Glyph, Sign } from './glyphs.tsx';
import type { MeterKind } from './kinds.ts';
import { type Block, type CircuitPlan, type Mark, type Piece, planOf, type Rung, targetsOf } from './plan.ts';
import { stepTo } from './walk.ts';

interface Props {
  /** Terminals that this panel has. */
  readonly terminals: ReadonlySet<string>;
  readonly fields: readonly FormField[];
  readonly kind: MeterKind;
  readonly answers: Readonly<Record<string, string | readonly string[]>>;
  readonly onPut: (option: string) => void;
  readonly onPoint: (name: string) => void;
}

/** One target on the board: its name, what is on it, and what comes of pressing it. */
interface Target {
  readonly name: string;
  readonly on: readonly FormField[];
  readonly reached: boolean;
  readonly onPress: () => void;
  readonly onPoint: () => void;
}

type TargetOf = (piece: Exclude<Piece, { kind: 'glyph' }>) => Target | undefined;

/** The open panel as a wiring diagram whose terminals, or wires for a clamp, are buttons. One Tab, then arrow keys. */
export function Board({ terminals, fields, kind, answers, onPut, onPoint }: Props) {
  const desk = useDesk();
  const box = useRef<HTMLFieldSetElement>(null);
  const wanted = kind === 'amps' ? 'clamp' : 'terminal';
  const names = new Map((fields[0]?.options ?? []).map(({ id, label }) => [id, desk.speak.value(label)]));
  const plan = planOf((id) => terminals.has(id), wanted);
  const [reached, setReached] = useState(targetsOf(plan, wanted)[0] ?? '');

  const targetOf: TargetOf = (piece) => {
    const name = names.get(piece.id);
    if (piece.kind !== wanted || name === undefined) return undefined;
    return {
      name,
      on: fields.filter((field) => answers[field.id] === piece.id),
      reached: piece.id === reached,
      onPress: () => {
        setReached(piece.id);
        onPut(piece.id);
      },
      onPoint: () => onPoint(name),
    };
  };
  const walk = (event: KeyboardEvent) => {
    const buttons = [...(box.current?.querySelectorAll<HTMLElement>('[data-terminal]') ?? [])];
    const from = buttons.indexOf(document.activeElement as HTMLElement);
    const next = buttons[stepTo(event.key, from, buttons.map(middle)) ?? -1];
    if (next === undefined) return;
    event.preventDefault();
    setReached(next.dataset.terminal ?? '');
    next.focus();
  };
  return (
    <fieldset ref={box} class="board" onKeyDown={walk} onPointerLeave={() => onPoint('')}>
      <legend class="vh">{desk.t(kind === 'amps' ? 'meter.board.clamp' : 'meter.board')}</legend>
      {plan.map((circuit) => (
        <Circuit key={circuit.id} circuit={circuit} targetOf={targetOf} />
      ))}
    </fieldset>
  );
}

function middle(button: HTMLElement): { x: number; y: number } {
  const { left, top, width, height } = button.getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}

function Circuit({ circuit, targetOf }: { circuit: CircuitPlan; targetOf: TargetOf }) {
  const desk = useDesk();
  return (
    <div class={`circuit ${circuit.id}`}>
      <div class="head">
        {circuit.head.map((piece) => (
          <OnWire key={keyOf(piece)} piece={piece} targetOf={targetOf} />
        ))}
        <span class="title">{desk.t(circuit.title)}</span>
        {circuit.rungs.length > 0 && (
          <span class="rail" aria-hidden="true">
            N
          </span>
        )}
      </div>
      {circuit.rungs.length > 0 && (
        <div class="rungs">
          {circuit.rungs.map((rung) => (
            <RungRow key={rung.blocks.map(blockKey).join()} rung={rung} targetOf={targetOf} />
          ))}
        </div>
      )}
    </div>
  );
}

function RungRow({ rung, targetOf }: { rung: Rung; targetOf: TargetOf }) {
  const desk = useDesk();
  return (
    <div class={`rung ends-${rung.ends}`}>
      {rung.blocks.map((block) => (
        <div key={blockKey(block)} class="block">
          <div class="pieces">
            {block.pieces.map((piece) => (
              <OnWire key={keyOf(piece)} piece={piece} targetOf={targetOf} />
            ))}
          </div>
          {block.name && <span class="name">{desk.t(block.name)}</span>}
        </div>
      ))}
    </div>
  );
}

function OnWire({ piece, targetOf }: { piece: Piece; targetOf: TargetOf }) {
  if (piece.kind === 'glyph') return <Glyph name={piece.name} />;
  const target = targetOf(piece);
  const mark = piece.kind === 'terminal' ? piece.mark : undefined;
  if (target === undefined) return <span class="terminal still" />;
  return <TargetButton id={piece.id} shape={piece.kind} mark={mark} target={target} />;
}

interface TargetProps {
  readonly id: string;
  readonly shape: 'terminal' | 'clamp';
  readonly mark: Mark | undefined;
  readonly target: Target;
}

function TargetButton({ id, shape, mark, target }: TargetProps) {
  const desk = useDesk();
  const { name, on, reached, onPress, onPoint } = target;
  const probes = on.map((field) => desk.speak.value(field.label));
  return (
    <button
      type="button"
      class={shape}
      data-terminal={id}
      tabIndex={reached ? 0 : -1}
      aria-pressed={on.length > 0}
      onClick={onPress}
      onFocus={onPoint}
      onPointerEnter={onPoint}
    >
      <span class="vh">{[name, ...probes].join(', ')}</span>
      <span aria-hidden="true" class="stamp">
        <Stamp shape={shape} mark={mark} />
      </span>
      {on.map((field) => (
        <ProbeMark key={field.id} probe={field.id} />
      ))}
    </button>
  );
}

function Stamp({ shape, mark }: Pick<TargetProps, 'shape' | 'mark'>) {
  if (shape === 'clamp') return <Sign name="clamp" />;
  if (mark === 'ground') return <Sign name="ground" />;
  return mark ?? <span class="slot" />;
}

function keyOf(piece: Piece): string {
  return piece.kind === 'glyph' ? piece.name : piece.id;
}

function blockKey({ pieces }: Block): string {
  return pieces.map(keyOf).join('-');
}
