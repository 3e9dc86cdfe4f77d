import type { ReadonlySignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import type { Message } from '../../service/message.ts';
import '../css/course.css';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';

/** What there is to say of the course platform, and what can be done about it. */
export interface Note {
  readonly tone: 'plain' | 'good' | 'off';
  readonly message: Message;
  readonly again?: () => void;
  readonly back?: () => void;
}

/** One line over every screen, and in what stands before it; nothing while all is as it should be. */
export function noteView(note: ReadonlySignal<Note | null>): ComponentType {
  return function CourseNote() {
    const { t } = useDesk();
    const { value } = note;
    if (value === null) return null;
    const { tone, message, again, back } = value;
    return (
      <aside class={`course-note ${tone}`} aria-label={t('course.note')}>
        <p role="status">
          {tone === 'good' && <Icon name="check" />} <Said message={message} />
        </p>
        {again && (
          <button type="button" class="secondary" onClick={again}>
            {t('course.again')}
          </button>
        )}
        {back && (
          <button type="button" class="secondary" onClick={back}>
            {t('course.back')}
          </button>
        )}
      </aside>
    );
  };
}
