import { useEffect, useRef, useState } from 'preact/hooks';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { XrayPicture } from '../picture/xray-picture.tsx';
import type { OpenCall, Truth } from '../protocol.ts';
import { WhyList } from '../why-list.tsx';
import type { Link } from './link.ts';
import { Strips } from './strips.tsx';

const MINUTE_ms = 60_000;

interface Props {
  readonly call: OpenCall;
  readonly link: Link;
  /** The instant looked at; null is now. */
  readonly at_ms: number | null;
  readonly onSeek: (at_ms: number | null) => void;
}

/** The works with everything open, now or at an instant of the call so far, and their curves. The call goes on meanwhile. */
export function Works({ call, link, at_ms, onSeek }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const past = usePast(link, call.callId, at_ms);
  const { scene, whys } = at_ms === null ? call : (past ?? call);
  const at = at_ms ?? call.now_ms;
  const clock = formatClock((at - call.startOfDay_ms) / 1000);
  return (
    <section class="card works" aria-labelledby="works">
      <header>
        <h2 id="works">{t('instructor.works')}</h2>
        <p class={at_ms === null ? 'works-at' : 'works-at past'}>
          {at_ms === null ? t('instructor.works.now', { clock }) : t('instructor.works.past', { clock })}
        </p>
        <button
          type="button"
          class="secondary small-button"
          data-hand="to-now"
          aria-disabled={at_ms === null}
          onClick={() => onSeek(null)}
        >
          <Icon name="next" /> {t('instructor.works.toNow')}
        </button>
      </header>
      {desk.openPicture !== undefined && (
        <section class="works-picture" aria-label={t('instructor.works.picture')}>
          <XrayPicture scene={scene} />
        </section>
      )}
      <input
        class="scrubber"
        type="range"
        min={call.now_ms - MINUTE_ms * Math.floor((call.now_ms - call.from_ms) / MINUTE_ms)}
        max={call.now_ms}
        step={MINUTE_ms}
        value={at}
        aria-label={t('instructor.works.handle')}
        aria-valuetext={clock}
        onInput={(event) => onSeek(Number(event.currentTarget.value))}
      />
      <Strips call={call} at_ms={at} onSeek={onSeek} />
      <WhyList whys={whys} />
    </section>
  );
}

/** The truth at a past instant. One question at a time; of those asked meanwhile only the last one counts. */
function usePast(link: Link, callId: string, at_ms: number | null): Truth | null {
  const [truth, setTruth] = useState<Truth | null>(null);
  const wanted = useRef(at_ms);
  const asking = useRef(false);
  wanted.current = at_ms;
  useEffect(() => {
    if (asking.current || at_ms === null) return;
    asking.current = true;
    void ask().finally(() => {
      asking.current = false;
    });
    async function ask() {
      let asked: number | null;
      do {
        asked = wanted.current;
        if (asked === null) return;
        const answer = await link.ask({ kind: 'scene', callId, at_ms: asked });
        if (answer.kind === 'scene') setTruth(answer);
      } while (asked !== wanted.current);
    }
  }, [link, callId, at_ms]);
  return truth;
}
