import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { ActionView, FormField } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';
import { useLater } from '../use-later.ts';
import { ActionCost } from './action-button.tsx';
import { meterKind } from './meter/kinds.ts';

type Answers = Readonly<Record<string, string | readonly string[]>>;

/** The questions of an action that needs answers, in the card where the action stood. */
export function ActionForm({ view, onDone }: { view: ActionView; onDone: () => void }) {
  const desk = useDesk();
  const [answers, setAnswers] = useState<Answers>(view.action.fill ?? {});
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  const fields = view.form ?? [];
  const missing = fields.filter((field) => field.kind === 'one' && answers[field.id] === undefined);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<Message>();
  const meter = meterKind(view.action.id);
  const drawn = useLater(meter !== undefined, () => import('./meter/work.tsx'), 'meter');
  const back = () => {
    onDone();
    // The button that opened the form is there again after the next paint.
    requestAnimationFrame(() => document.querySelector<HTMLElement>(`[data-action="${view.action.id}"]`)?.focus());
  };
  const send = (event: Event) => {
    event.preventDefault();
    setAsked(true);
    if (missing.length > 0 || !view.available) return;
    const whole = Object.fromEntries(fields.map((field) => [field.id, answers[field.id] ?? []]));
    void desk.session.dispatch({ id: view.action.id, fill: whole }).then(() => {
      // A meter stays in the hand for the next reading.
      if (meter === undefined) back();
      else setRefused(desk.session.news.value?.refused ? desk.session.news.value.messages[0] : undefined);
    });
  };
  const lists = fields.map((field) => (
    <Field
      key={field.id}
      field={field}
      value={answers[field.id]}
      wanting={asked && missing.includes(field)}
      onChange={(value) => setAnswers({ ...answers, [field.id]: value })}
    />
  ));
  const buttons = (
    <div class="buttons">
      <button type="submit" class="primary" aria-disabled={desk.session.busy.value !== null}>
        {desk.t(meter === undefined ? 'form.do' : 'meter.read')} <ActionCost action={view} />
      </button>
      <button type="button" class="secondary" onClick={back}>
        {desk.t('form.back')}
      </button>
    </div>
  );
  return (
    <form class="action-form" onSubmit={send} noValidate>
      <h3 ref={heading} tabIndex={-1}>
        <Said message={view.label} />
      </h3>
      {meter !== undefined && drawn ? (
        <>
          <drawn.MeterWork
            view={view}
            kind={meter}
            answers={answers}
            wanting={asked && missing.length > 0}
            refused={refused}
            onChange={(field, option) => setAnswers({ ...answers, [field]: option })}
          >
            {buttons}
          </drawn.MeterWork>
          <details class="meter-lists">
            <summary>{desk.t('meter.lists')}</summary>
            {lists}
          </details>
        </>
      ) : (
        <>
          {drawn === null && lists}
          {buttons}
        </>
      )}
    </form>
  );
}

interface FieldProps {
  readonly field: FormField;
  readonly value: string | readonly string[] | undefined;
  readonly wanting: boolean;
  readonly onChange: (value: string | readonly string[]) => void;
}

function Field({ field, value, wanting, onChange }: FieldProps) {
  const desk = useDesk();
  const many = field.kind === 'many';
  const chosen: readonly string[] = typeof value === 'string' ? [value] : (value ?? []);
  const full = field.most !== undefined && chosen.length >= field.most;
  const errorId = `error-${field.id}`;
  const flip = (id: string) => {
    if (!many) onChange(id);
    else onChange(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id]);
  };
  return (
    <fieldset class="field" aria-describedby={wanting ? errorId : undefined}>
      <legend>
        <Said message={field.label} />
        {many && (
          <span class="small">
            {' '}
            {field.most === undefined ? desk.t('form.many') : desk.t('form.most', { n: field.most })}
          </span>
        )}
      </legend>
      {wanting && (
        <p class="error" id={errorId}>
          {desk.t('form.choose')}
        </p>
      )}
      <div class="options">
        {field.options.map((option) => (
          <label key={option.id} class="option">
            <input
              type={many ? 'checkbox' : 'radio'}
              disabled={full && !chosen.includes(option.id)}
              name={field.id}
              value={option.id}
              checked={chosen.includes(option.id)}
              onChange={() => flip(option.id)}
            />
            <span>
              <Said message={option.label} />
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
