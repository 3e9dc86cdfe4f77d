import { Later } from '../later.tsx';

export interface ElsewhereProps {
  /** Open in another tab, or taken over by one. */
  readonly how: 'open' | 'taken';
  readonly onTake: () => void;
}

/** What stands in place of a call or of the round that another tab has. */
export function OpenElsewhere(props: ElsewhereProps) {
  return (
    <Later part={() => import('./elsewhere.tsx')} words="kept" waiting="call.opening">
      {({ Elsewhere }) => <Elsewhere {...props} />}
    </Later>
  );
}
