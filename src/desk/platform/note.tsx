import type { ReadonlySignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import type { Message } from '../../service/message.ts';
import { course as en } from '../../words/en/course.ts';
import { course as es } from '../../words/es/course.ts';
import '../css/course.css';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { speakWith } from '../own-words.ts';

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
    const said = speakWith(useDesk(), { en, es });
    const { value } = note;
    if (value === null) return null;
    const { tone, message, again, back } = value;
    return (
      <aside class={`course-note ${tone}`} aria-label={said({ id: 'course.note' })}>
        <p role="status">
          {tone === 'good' && <Icon name="check" />} {said(message)}
        </p>
        {again && (
          <button type="button" class="secondary" onClick={again}>
            {said({ id: 'course.again' })}
          </button>
        )}
        {back && (
          <button type="button" class="secondary" onClick={back}>
            {said({ id: 'course.back' })}
          </button>
        )}
      </aside>
    );
  };
}
