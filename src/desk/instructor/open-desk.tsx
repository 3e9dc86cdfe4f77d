import '../css/instructor.css';
import { useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import type { OpenCall } from '../protocol.ts';
import { Said } from '../screen.tsx';
import { Believe } from './believe.tsx';
import { ClockHand } from './clock-hand.tsx';
import { Deeds, LastDeed } from './deeds.tsx';
import { DropIn } from './drop-in.tsx';
import { FaultsThere } from './faults-there.tsx';
import { type Hands, useHands } from './hands.ts';
import type { Told } from './line.ts';
import type { Link } from './link.ts';
import { Moments } from './moments.tsx';
import { Readings } from './readings.tsx';
import { StartFrom } from './start-from.tsx';
import { Works } from './works.tsx';

interface Props {
  readonly link: Link;
  /** Where there is little room, the hands come first. */
  readonly handsFirst?: boolean;
}

/** One window in a trainer's hand: its call with everything open, the hands on it, and what can be begun there. */
export function OpenDesk({ link, handsFirst = false }: Props) {
  const { t } = useDesk();
  const hands = useHands(link);
  const [kept, setKept] = useState(0);
  const told = link.told.value;
  const call = told?.call ?? null;
  const [looked, setLooked] = useState<number | null>(null);
  // Of another call, or after going back before what was looked at, it is now again.
  const at_ms = call !== null && looked !== null && looked >= call.from_ms && looked < call.now_ms ? looked : null;
  const works =
    call === null ? (
      <p class="card no-call">{t(told === null ? 'instructor.waiting' : 'instructor.noCall')}</p>
    ) : (
      <div class="seen">
        <LastDeed call={call} />
        <Works key={call.callId} call={call} link={link} at_ms={at_ms} onSeek={setLooked} />
      </div>
    );
  return (
    <div class="open-desk">
      {!handsFirst && works}
      <div class="hands" aria-busy={hands.busy}>
        <div role="alert">
          {hands.refused !== null && (
            <p class="refused">
              <Said message={hands.refused} />
            </p>
          )}
        </div>
        {told !== null && call !== null && (
          <OnCall
            key={call.callId}
            told={told}
            call={call}
            hands={hands}
            link={link}
            onKept={() => setKept(kept + 1)}
          />
        )}
        <StartFrom call={call} hands={hands} kept={kept} />
      </div>
      {handsFirst && works}
      {call !== null && (
        <div class="seen-cards" key={`cards of ${call.callId}`}>
          <Deeds call={call} />
          <Believe call={call} link={link} />
          <Readings call={call} at_ms={at_ms} />
        </div>
      )}
    </div>
  );
}

interface OnCallProps {
  readonly told: Told;
  readonly call: OpenCall;
  readonly link: Link;
  readonly hands: Hands;
  readonly onKept: () => void;
}

/** What can be done to the call. */
function OnCall({ told, call, hands, link, onKept }: OnCallProps) {
  const { t } = useDesk();
  if (call.ended) return <p class="card">{t('instructor.ended')}</p>;
  if (call.inRound) return <p class="card">{t('why.not-in-round')}</p>;
  return (
    <>
      <ClockHand call={call} told={told} hands={hands} />
      <Moments call={call} hands={hands} onKept={onKept} />
      <FaultsThere call={call} hands={hands} />
      <DropIn call={call} link={link} hands={hands} />
    </>
  );
}
