import { useEffect, useRef } from 'preact/hooks';
import type { CallView, StageView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { linesFor } from '../next-time.ts';
import { Said } from '../screen.tsx';
import { useLater } from '../use-later.ts';

/** What stays in sight under the current stage, CSS pixels: the next one or two. */
const ROOM_BELOW = 56;

/** What was said when the phone rang, and how far the call has come. */
export function Sheet({ view }: { view: CallView }) {
  const desk = useDesk();
  const nextTime = linesFor(desk.lines.value, desk.calls.value, view.callId);
  const visit = useLater(view.rows !== undefined, () => import('../visit/checklist.tsx'), 'visit');
  const taken = view.rows?.reduce((sum, row) => sum + row.taken, 0);
  const card = useRef<HTMLElement>(null);
  const now = useRef<HTMLLIElement>(null);
  // Keeps the current stage, or the first open line of a checklist, in sight inside the card, without moving the page.
  useEffect(() => {
    const sheet = card.current;
    const row = sheet?.querySelector<HTMLElement>('.checklist li:not(.done)') ?? now.current;
    if (sheet === null || row === null) return;
    const below = row.offsetTop + row.offsetHeight + ROOM_BELOW - sheet.clientHeight;
    if (below > 0) sheet.scrollTop = below;
  }, [view.stage, taken, visit]);
  return (
    // The card scrolls by itself where it is short of room, so the keyboard must reach it.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region
    <section ref={card} class="card sheet" aria-labelledby="sheet-title" tabIndex={0}>
      <h2 id="sheet-title">{desk.t('tab.sheet')}</h2>
      {nextTime.map((line) => (
        <p key={line} class="next-time">
          <span class="label">{desk.t('call.nextTime')}</span> {line}
        </p>
      ))}
      {view.said.map((line) => (
        <blockquote key={line.en}>{desk.local(line)}</blockquote>
      ))}
      <ol class="stages">
        {view.stages.map((stage) => (
          <li key={stage.id} class={stage.state} ref={stage.state === 'now' ? now : null}>
            <StageMark state={stage.state} />
            <span>
              {desk.t(view.rows && stage.id === 'find' ? 'stage.find.visit' : `stage.${stage.id}`)}
              <span class="vh"> ({desk.t(`stage.state.${stage.state}`)})</span>
              {stage.note !== undefined && (
                <span class="stage-note">
                  <Said message={stage.note} />
                </span>
              )}
              {stage.id === 'find' && view.rows && visit && <visit.Checklist rows={view.rows} />}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function StageMark({ state }: { state: StageView['state'] }) {
  return (
    <span class="stage-mark" aria-hidden="true">
      {state === 'done' && <Icon name="check" />}
      {state === 'skipped' && <Icon name="cross" />}
    </span>
  );
}
