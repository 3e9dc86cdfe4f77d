import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { ActionView, CallView } from '../../../calls/view.ts';
import type { Message } from '../../../service/message.ts';
import { useDesk } from '../../desk.ts';
import { Said } from '../../screen.tsx';
import '../../css/meter.css';
import { Board } from './board.tsx';
import { Face } from './face.tsx';
import { type MeterKind, meterKind } from './kinds.ts';

export interface WorkProps {
  readonly view: ActionView;
  readonly kind: MeterKind;
  readonly answers: Readonly<Record<string, string | readonly string[]>>;
  /** Read was pressed with a probe still missing. */
  readonly wanting: boolean;
  /** Why the last reading could not be taken. */
  readonly refused: Message | undefined;
  readonly onChange: (field: string, option: string) => void;
  /** The buttons that read it and go back. */
  readonly children: ComponentChildren;
}

/** A meter in the hand before the open panel: probes go on terminals, or a clamp round a wire, by pointer or by key. */
export function MeterWork({ view, kind, answers, wanting, refused, onChange, children }: WorkProps) {
  const desk = useDesk();
  const fields = view.form ?? [];
  const [moving, setMoving] = useState(() => (fields.find((f) => answers[f.id] === undefined) ?? fields[0])?.id ?? '');
  const [pointedAt, setPointedAt] = useState('');
  const put = (option: string) => {
    onChange(moving, option);
    // Red, black, red: as hands do it.
    setMoving(fields[(fields.findIndex((f) => f.id === moving) + 1) % fields.length]?.id ?? moving);
  };
  return (
    <div class="meter-work">
      <div class="meter-room">
        <div class="meter-side">
          <Face view={view} kind={kind} answers={answers} moving={moving} pointedAt={pointedAt} onMove={setMoving} />
          {wanting && (
            <p class="error" role="alert">
              {desk.t(kind === 'amps' ? 'meter.choose.clamp' : 'meter.choose')}
            </p>
          )}
          {!wanting && refused !== undefined && (
            <p class="error">
              <Said message={refused} />
            </p>
          )}
          {children}
        </div>
        <Board
          terminals={terminalsOn(desk.session.view.value)}
          fields={fields}
          kind={kind}
          answers={answers}
          onPut={put}
          onPoint={setPointedAt}
        />
      </div>
    </div>
  );
}

/** The terminals of the panel at hand: those that a voltmeter may be put on. */
function terminalsOn(view: CallView | null): ReadonlySet<string> {
  const actions = view?.parts.flatMap((part) => part.actions) ?? [];
  const form = actions.find((one) => meterKind(one.action.id) === 'volts')?.form ?? [];
  return new Set(form.flatMap((field) => field.options.map((option) => option.id)));
}
