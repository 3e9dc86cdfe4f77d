import { useEffect, useState } from 'preact/hooks';
import type { Desk } from '../../desk.ts';

type Parts = typeof import('./coach.tsx');

/** The coach's card and dialogs with their words, fetched for a coached call only; null until they are there. */
export function useCoachParts(desk: Desk, wanted: boolean): Parts | null {
  const [parts, setParts] = useState<Parts | null>(null);
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    Promise.all([import('./coach.tsx'), desk.readyFor('debrief')]).then(
      ([loaded]) => !gone && setParts(loaded),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
    return () => {
      gone = true;
    };
  }, [desk, wanted]);
  return wanted ? parts : null;
}
