import { useEffect, useState } from 'preact/hooks';
import type { DebriefView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';

const LONGEST_LINE = 200;

/** Three questions to oneself. The last answer is kept for the family of the fault, and shown before calls that begin alike. */
export function Prompts({ debrief }: { debrief: DebriefView }) {
  const desk = useDesk();
  const { t } = desk;
  const kept =
    desk.lines.value.find((one) => one.family === debrief.family) ??
    desk.lines.value.find((one) => one.family === undefined && one.callId === debrief.callId);
  const [toldMost, setToldMost] = useState(kept?.toldMost ?? '');
  const [costMost, setCostMost] = useState(kept?.costMost ?? '');
  const [nextTime, setNextTime] = useState(kept?.nextTime ?? '');
  const [saved, setSaved] = useState(false);
  useEffect(() => setSaved(false), [toldMost, costMost, nextTime]);
  const steps = stepsOf(debrief).map((one) => ({ id: one.id, text: desk.speak.value(one) }));
  const keep = async (event: Event) => {
    event.preventDefault();
    const { callId, family } = debrief;
    const line = { version: 1, callId, family, savedAt: desk.wallClock(), toldMost, costMost } as const;
    await desk.store.putLine({ ...line, nextTime: nextTime.trim() });
    await desk.refreshShelves();
    setSaved(true);
  };
  return (
    <section class="card prompts" aria-labelledby="prompts-title">
      <h2 id="prompts-title">{t('prompts.title')}</h2>
      <form onSubmit={(event) => void keep(event)}>
        <StepChoice label={t('prompts.toldMost')} number={1} value={toldMost} steps={steps} onChange={setToldMost} />
        <StepChoice label={t('prompts.costMost')} number={2} value={costMost} steps={steps} onChange={setCostMost} />
        <label class="prompt">
          <span class="prompt-label">
            <span class="number">3</span> {t('prompts.nextTime')}
          </span>
          <textarea
            rows={2}
            maxLength={LONGEST_LINE}
            value={nextTime}
            onInput={(event) => setNextTime(event.currentTarget.value)}
          />
          <span class="small">{t('prompts.shown')}</span>
        </label>
        <button type="submit" class="primary">
          {t('prompts.keep')}
        </button>
        <p role="status" class="small good">
          {saved ? t('prompts.kept') : ''}
        </p>
      </form>
    </section>
  );
}

interface StepChoiceProps {
  readonly label: string;
  readonly number: number;
  readonly value: string;
  readonly steps: readonly { readonly id: string; readonly text: string }[];
  readonly onChange: (id: string) => void;
}

function StepChoice({ label, number, value, steps, onChange }: StepChoiceProps) {
  const { t } = useDesk();
  return (
    <label class="prompt">
      <span class="prompt-label">
        <span class="number">{number}</span> {label}
      </span>
      <select value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        <option value="">{t('prompts.choose')}</option>
        {steps.map((step) => (
          <option key={step.id} value={step.id}>
            {step.text}
          </option>
        ))}
      </select>
    </label>
  );
}

/** The different steps that could tell something, in the order they were taken. */
function stepsOf(debrief: DebriefView) {
  const seen = new Set<string>();
  return debrief.done
    .filter((block) => block.kind !== 'wait' && block.kind !== 'drive')
    .map((block) => block.label)
    .filter((label) => !seen.has(label.id) && seen.add(label.id));
}
