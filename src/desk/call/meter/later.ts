import { useEffect, useState } from 'preact/hooks';
import { useDesk } from '../../desk.ts';

type Work = typeof import('./work.tsx').MeterWork;

/** The drawn panel with its meter, fetched when one is first wanted: undefined until it is there, null where it never comes. */
export function useMeterWork(wanted: boolean): Work | null | undefined {
  const desk = useDesk();
  const [work, setWork] = useState<{ readonly Work: Work | null }>();
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    import('./work.tsx').then(
      ({ MeterWork }) => !gone && setWork({ Work: MeterWork }),
      () => {
        desk.fail({ id: 'trouble.notLoaded' });
        setWork({ Work: null });
      },
    );
    return () => {
      gone = true;
    };
  }, [desk, wanted]);
  return wanted ? work?.Work : null;
}
