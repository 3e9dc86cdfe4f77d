import { useEffect, useState } from 'preact/hooks';
import { useDesk } from '../../desk.ts';

type Work = typeof import('./work.tsx').MeterWork;

/** The drawn panel with its meter, fetched when one is first wanted; null until it is there, and where it never comes. */
export function useMeterWork(wanted: boolean): Work | null {
  const desk = useDesk();
  const [work, setWork] = useState<{ readonly Work: Work } | null>(null);
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    import('./work.tsx').then(
      ({ MeterWork }) => !gone && setWork({ Work: MeterWork }),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
    return () => {
      gone = true;
    };
  }, [desk, wanted]);
  return work?.Work ?? null;
}
