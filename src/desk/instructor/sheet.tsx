import { useEffect, useRef, useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { type Link, linkHere } from './link.ts';
import { OpenDesk } from './open-desk.tsx';

/** The instructor's desk in the trainee's own window, at its side: the call goes on beside it. */
export function InstructorSheet({ onClose }: { readonly onClose: () => void }) {
  const desk = useDesk();
  const dialog = useRef<HTMLDialogElement>(null);
  const [link, setLink] = useState<Link | null>(null);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.show();
    const here = linkHere(desk);
    setLink(here);
    return () => {
      here.close();
      if (before instanceof HTMLElement) before.focus();
    };
  }, [desk]);
  return (
    <dialog
      ref={dialog}
      class="instructor-sheet"
      aria-labelledby="instructor-sheet"
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <div class="sheet-head">
        <h2 id="instructor-sheet">{desk.t('title.instructor')}</h2>
        <button type="button" class="round" onClick={onClose}>
          <Icon name="cross" />
          <span class="vh">{desk.t('instructor.close')}</span>
        </button>
      </div>
      {link !== null && <OpenDesk link={link} handsFirst />}
    </dialog>
  );
}
