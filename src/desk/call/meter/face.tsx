import type { ActionView, FormField } from '../../../calls/view.ts';
import type { Message } from '../../../service/message.ts';
import { formatClock } from '../../../words/measure.ts';
import { useDesk } from '../../desk.ts';
import { Said } from '../../screen.tsx';
import { clockAt } from '../time.ts';
import type { MeterKind } from './kinds.ts';

interface Props {
  readonly view: ActionView;
  readonly kind: MeterKind;
  readonly answers: Readonly<Record<string, string | readonly string[]>>;
  /** The probe that the next terminal gets. */
  readonly moving: string;
  /** Name of what the pointer or the focus is on. */
  readonly pointedAt: string;
  readonly onMove: (field: string) => void;
}

/** What is true of every reading of the kind. */
const HINT = {
  volts: 'meter.live',
  ohms: 'meter.dead-only',
  amps: 'meter.one-wire',
} as const satisfies Record<MeterKind, string>;
/** Where the dial's pointer stands, degrees. */
const DIAL = { volts: -50, ohms: 0, amps: 50 } as const satisfies Record<MeterKind, number>;

/** The meter itself: its display with the last reading, its dial, and where its probes are. */
export function Face({ view, kind, answers, moving, pointedAt, onMove }: Props) {
  const desk = useDesk();
  const fields = view.form ?? [];
  return (
    <section class="meter" aria-label={desk.t('meter.face')}>
      <div class="meter-top">
        <LastReading view={view} />
        <Dial kind={kind} />
      </div>
      <ul class="probes">
        {fields.map((field) => (
          <li key={field.id}>
            <ProbeButton
              field={field}
              chosen={answers[field.id]}
              moves={fields.length > 1 && field.id === moving}
              onMove={() => onMove(field.id)}
            />
          </li>
        ))}
      </ul>
      <p class="pointed-at" aria-hidden="true">
        {pointedAt || desk.t(HINT[kind])}
      </p>
    </section>
  );
}

/** Letters that the display holds in its large type. */
const LONG = 8;

/** What the meter showed last, and where that was. */
function LastReading({ view }: { view: ActionView }) {
  const desk = useDesk();
  const call = desk.session.view.value;
  const last = call?.notebook.findLast((entry) => entry.what.id === `note.${view.action.id}`);
  const { red, black, conductor, reading } = (last?.reading.values ?? {}) as Readonly<
    Record<string, Message | undefined>
  >;
  const digits = reading === undefined ? '– – –' : shownOn(reading, desk.speak.value);
  const where = [red ?? conductor, black].flatMap((one) => (one === undefined ? [] : desk.speak.value(one)));
  return (
    <div class="lcd">
      <p class={digits.length > LONG ? 'digits long' : 'digits'}>
        <span class="vh">{desk.t('meter.last')}: </span>
        {digits}
      </p>
      <p class="where">{call && last ? `${formatClock(clockAt(call, last.at_s))} · ${where.join(' – ')}` : '\u00a0'}</p>
    </div>
  );
}

/** A display has no room for sentences: over its range it shows OL, on a live part a warning. */
function shownOn(reading: Message, speak: (message: Message) => string): string {
  if (reading.id === 'reading.open-circuit') return 'OL';
  return reading.id === 'reading.meter-refuses' ? '⚠ V' : speak(reading);
}

interface ProbeProps {
  readonly field: FormField;
  readonly chosen: string | readonly string[] | undefined;
  readonly moves: boolean;
  readonly onMove: () => void;
}

/** One probe: where it is, and whether the next terminal gets it. */
function ProbeButton({ field, chosen, moves, onMove }: ProbeProps) {
  const desk = useDesk();
  const on = field.options.find((option) => option.id === chosen);
  return (
    <button type="button" class="probe" data-probe={field.id} aria-pressed={moves} onClick={onMove}>
      <ProbeMark probe={field.id} />
      <span>
        <span class="probe-name">
          <Said message={field.label} />
          {moves && <span class="small"> ({desk.t('meter.moves')})</span>}
        </span>
        <span class="probe-at">{on === undefined ? desk.t('meter.none') : <Said message={on.label} />}</span>
      </span>
    </button>
  );
}

/** A probe's letter in its own shape, round for red and square for black: never colour alone. */
export function ProbeMark({ probe }: { probe: string }) {
  const desk = useDesk();
  if (probe !== 'red' && probe !== 'black') return null;
  return (
    <span class={`probe-mark ${probe}`} aria-hidden="true">
      {desk.t(`meter.${probe}.mark`)}
    </span>
  );
}

function Dial({ kind }: { kind: MeterKind }) {
  return (
    <svg class="dial" viewBox="0 0 72 60" aria-hidden="true" focusable="false">
      <text x="10" y="26">
        V
      </text>
      <text x="36" y="12">
        Ω
      </text>
      <text x="62" y="26">
        A
      </text>
      <circle cx="36" cy="38" r="18" />
      <path d="M36 42V22" transform={`rotate(${DIAL[kind]} 36 38)`} />
    </svg>
  );
}
