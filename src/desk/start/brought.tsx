import { useEffect, useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';

type Parts = typeof import('../brought/cards.tsx');

/** Calls that came by link or file; fetched only where there are some. */
export function Brought() {
  const desk = useDesk();
  const any = desk.brought.value.length > 0;
  const [parts, setParts] = useState<Parts | null>(null);
  useEffect(() => {
    if (!any) return;
    Promise.all([import('../brought/cards.tsx'), desk.readyFor('share')]).then(
      ([loaded]) => setParts(loaded),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
  }, [desk, any]);
  return any && parts !== null ? <parts.BroughtCalls /> : null;
}
