import { useLayoutEffect, useRef } from 'preact/hooks';
import type { CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { CautionSign, Icon } from '../icons.tsx';
import { CourseNote, Said } from '../screen.tsx';

/** The end of a call: closed by the record, or stopped by a breach of life safety. Either way on to the debrief. */
export function EndDialog({ view }: { view: CallView }) {
  const desk = useDesk();
  const dialog = useRef<HTMLDialogElement>(null);
  const key = desk.session.finishedKey.value;
  const { ended } = view;
  // A coached call goes on after a breach, which was explained when it came.
  const goneOn = view.breach !== undefined && view.mode === 'coached';
  const breach = goneOn ? undefined : view.breach;
  // Opens with the last line of the notebook, not a frame later: nothing can be pressed in between.
  useLayoutEffect(() => {
    if (ended && dialog.current?.open === false) dialog.current.showModal();
  }, [ended]);
  const onward = () => {
    if (key !== null) desk.go(Number.isNaN(key) ? { screen: 'start' } : { screen: 'debrief', key });
  };
  return (
    <dialog
      ref={dialog}
      class={breach === undefined ? 'end' : 'end breach'}
      aria-labelledby="end-title"
      onCancel={(event) => {
        event.preventDefault();
        onward();
      }}
    >
      <h2 id="end-title">
        {breach === undefined ? <Icon name="check" /> : <CautionSign />}
        {desk.t(breach === undefined ? 'end.closed' : 'end.breach')}
      </h2>
      {breach === undefined ? (
        <>
          {goneOn && <p>{desk.t('end.goneOn')}</p>}
          <p>{desk.t('end.closed.text')}</p>
        </>
      ) : (
        <>
          <p role="alert">
            <Said message={breach} />
          </p>
          <p>{desk.t('end.breach.text')}</p>
        </>
      )}
      {ended && <CourseNote />}
      <button type="button" class="primary" aria-disabled={key === null} onClick={onward}>
        {desk.t('end.debrief')} <Icon name="arrow" />
      </button>
    </dialog>
  );
}
