import '../css/trainer-band.css';
import { useEffect, useState } from 'preact/hooks';
import { TEACH } from '../../calls/teach-ids.ts';
import type { CallView } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { clockAt } from '../call/time.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { useLater } from '../use-later.ts';
import { answerAsk } from './trainee.ts';

/** So long a trainer's window is given to come back, ms: one that loads anew, or that this page has not heard yet. */
const PATIENCE_ms = 2000;

interface Props {
  readonly view: CallView;
  /** Whether the instructor's desk is open in this window. */
  readonly open: boolean;
  readonly onClose: () => void;
}

/** What a trainee sees of a trainer's hand: that the clock stands, or that a moment was gone back to. Nothing else. */
export function TrainerHere({ view, open, onClose }: Props) {
  const { t } = useDesk();
  const sheet = useLater(open, () => import('./sheet.tsx'), 'instructor');
  const { frozen, backTo_ms } = view;
  const text = [
    ...(frozen ? [t('instructor.band.frozen')] : []),
    ...(backTo_ms === undefined ? [] : [t('instructor.band.back', { clock: timeOf(view, backTo_ms) })]),
  ].join(' ');
  // A status is read out when it changes, not when it comes: it is there before its words.
  const [said, setSaid] = useState('');
  useEffect(() => setSaid(text), [text]);
  return (
    <>
      <div class="trainer-band">
        {text !== '' && <Icon name={frozen ? 'pause' : 'again'} />}
        <p role="status">{said}</p>
        {frozen && !open && <GoOnAlone view={view} />}
      </div>
      {sheet && <sheet.InstructorSheet onClose={onClose} />}
    </>
  );
}

function timeOf(view: CallView, at_ms: number): string {
  return formatClock(clockAt(view, at_ms / 1000));
}

/** Where no trainer's window is there any more, a stopped clock would stand for ever. */
function GoOnAlone({ view: { callId } }: { view: CallView }) {
  const desk = useDesk();
  const [waited, setWaited] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setWaited(true), PATIENCE_ms);
    return () => clearTimeout(timer);
  }, []);
  if (!waited || desk.trainers.value > 0) return null;
  return (
    <button
      type="button"
      class="secondary"
      onClick={() => void answerAsk(desk, { kind: 'teach', callId, action: { id: TEACH.go, fill: {} } })}
    >
      <Icon name="play" /> {desk.t('instructor.band.goOn')}
    </button>
  );
}
