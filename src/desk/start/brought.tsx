import { useDesk } from '../desk.ts';
import { useLater } from '../use-later.ts';

/** Calls that came by link or file; fetched only where there are some. */
export function Brought() {
  const any = useDesk().brought.value.length > 0;
  const parts = useLater(any, () => import('../brought/cards.tsx'), 'share');
  return parts ? <parts.BroughtCalls /> : null;
}
