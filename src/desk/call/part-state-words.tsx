import type { CallView, PartView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { partState } from './part-state.ts';
import { clockAt } from './time.ts';

interface Props {
  readonly view: CallView;
  readonly part: PartView['id'];
}

/** Pencil and ink, in words: "not seen yet", "known as of 09:40", "in sight now". */
export function PartStateWords({ view, part }: Props) {
  const { t } = useDesk();
  const state = partState(view, part);
  if (state.kind !== 'ink') return <>{t(`part.state.${state.kind}`)}</>;
  const clock_s = clockAt(view, state.seen_s);
  return <>{t('part.state.ink', { clock: { measure: 'clock_s', value: ((clock_s % 86_400) + 86_400) % 86_400 } })}</>;
}
