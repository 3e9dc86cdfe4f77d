import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Message } from '../service/message.ts';
import { useDesk } from './desk.ts';
import { Icon } from './icons.tsx';

/** The heading of a screen: takes the focus when one comes to it, so that a screen reader starts there. */
export function ScreenTitle({ children, hidden = false }: { children: ComponentChildren; hidden?: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    scrollTo(0, 0);
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1} class={hidden ? 'vh' : 'screen-title'}>
      {children}
    </h1>
  );
}

/** A message of the core, in the reader's language and units. */
export function Said({ message }: { message: Message }) {
  return <>{useDesk().speak.value(message)}</>;
}

/** What the page says of the course platform that launched it, where one did. */
export function CourseNote() {
  const Note = useDesk().courseNote.value;
  return Note && <Note />;
}

/** What does not work and what that means, one line each, until it is waved away. */
export function Troubles() {
  const desk = useDesk();
  if (desk.troubles.value.length === 0) return null;
  return (
    <div class="troubles" role="alert">
      {desk.troubles.value.map((one) => (
        <p key={one.id}>
          <span>{desk.speak.value(one)}</span>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              desk.troubles.value = desk.troubles.value.filter((other) => other !== one);
            }}
          >
            <Icon name="cross" />
            <span class="vh">{desk.t('trouble.dismiss')}</span>
          </button>
        </p>
      ))}
    </div>
  );
}
