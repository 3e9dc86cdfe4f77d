import { useEffect, useState } from 'preact/hooks';
import type { Extra } from '../words/words.ts';
import { useDesk } from './desk.ts';

/**
 * A part of a screen that comes as a file of its own, with its own words, once it is first wanted: undefined until it is
 * there, null where it is not wanted or never comes.
 */
export function useLater<Part>(wanted: boolean, part: () => Promise<Part>, words?: Extra): Part | null | undefined {
  const desk = useDesk();
  const [loaded, setLoaded] = useState<{ readonly part: Part | null }>();
  useEffect(() => {
    if (!wanted) return;
    Promise.all([part(), words && desk.readyFor(words)]).then(
      ([one]) => setLoaded({ part: one }),
      () => {
        desk.fail({ id: 'trouble.notLoaded' });
        setLoaded({ part: null });
      },
    );
  }, [desk, wanted]);
  return wanted ? loaded?.part : null;
}
