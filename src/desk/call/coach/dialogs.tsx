import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { CallView } from '../../../calls/view.ts';
import { useDesk } from '../../desk.ts';
import { CautionSign } from '../../icons.tsx';
import { Said } from '../../screen.tsx';

/** What stops a coached call for a moment: a word before an unsafe act, and what a breach was. */
export function CoachDialogs({ view }: { view: CallView }) {
  const desk = useDesk();
  const { session } = desk;
  const [seen, setSeen] = useState(view.breaches);
  const caution = session.caution.value;
  if (view.breach !== undefined && view.breaches > seen && !view.ended) {
    return (
      <Stop
        key={`breach${view.breaches}`}
        kind="breach"
        title={desk.t('end.breach')}
        onBack={() => setSeen(view.breaches)}
      >
        <p role="alert">
          <Said message={view.breach} />
        </p>
        <p>{desk.t('coach.breach.text')}</p>
        <div class="buttons">
          <button type="button" class="primary" onClick={() => setSeen(view.breaches)}>
            {desk.t('coach.goOn')}
          </button>
        </div>
      </Stop>
    );
  }
  if (caution === null) return null;
  const back = () => {
    session.caution.value = null;
  };
  const goOn = () => {
    back();
    void session.dispatch(caution.action, true);
  };
  return (
    <Stop kind="before" title={desk.t('coach.before')} onBack={back}>
      <p role="alert">
        <Said message={caution.message} />
      </p>
      <div class="buttons">
        <button type="button" class="primary" data-coach="back" onClick={back}>
          {desk.t('coach.back')}
        </button>
        <button type="button" class="secondary" data-coach="sure" onClick={goOn}>
          {desk.t('coach.sure')}
        </button>
      </div>
    </Stop>
  );
}

interface StopProps {
  readonly kind: 'before' | 'breach';
  readonly title: string;
  readonly onBack: () => void;
  readonly children: ComponentChildren;
}

/** A dialog that is open as long as it is there, and gives the focus back when it goes. */
function Stop({ kind, title, onBack, children }: StopProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const back = useRef<Element | null>(document.activeElement);
  useEffect(() => {
    dialog.current?.showModal();
    const from = back.current;
    return () => {
      if (from instanceof HTMLElement && from.isConnected) from.focus();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      class={kind}
      aria-labelledby="stop-title"
      onCancel={(event) => {
        event.preventDefault();
        onBack();
      }}
    >
      <h2 id="stop-title">
        <CautionSign />
        {title}
      </h2>
      {children}
    </dialog>
  );
}
