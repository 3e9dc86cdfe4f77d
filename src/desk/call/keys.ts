import { useEffect } from 'preact/hooks';
import type { Session } from '../session.ts';

/** Space stops and starts the clock, but only where no control has the focus that would want it. */
export function useCallKeys(session: Session): void {
  useEffect(() => {
    const heard = (event: KeyboardEvent) => {
      if (event.key !== ' ' || event.ctrlKey || event.altKey || event.metaKey) return;
      const at = document.activeElement;
      if (at !== null && at !== document.body && !at.matches('h1, main')) return;
      event.preventDefault();
      session.setRate(session.rate.value === 0 ? 1 : 0);
    };
    addEventListener('keydown', heard);
    return () => removeEventListener('keydown', heard);
  }, [session]);
}
