import type { ComponentChildren } from 'preact';
import { RUNGS, type Rung } from '../../calls/rungs.ts';
import { formatClock } from '../../words/measure.ts';
import type { Key } from '../../words/words.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { rungTaken } from '../next-call.ts';
import type { CallCard } from '../protocol.ts';
import { writeRoute } from '../routes.ts';
import type { Progress } from '../stored.ts';
import { SkyBand } from './sky-band.tsx';

interface Props {
  readonly card: CallCard;
  /** Its place on the list; none where the list is no course. */
  readonly number?: number;
  /** The rung to take it on, where it is the one that the course has next. */
  readonly next: Rung | null;
  readonly children?: ComponentChildren;
}

/** One call on the list: what is known of it before the phone is picked up, and how it went so far. */
export function CallCardView({ card, number, next, children }: Props) {
  const desk = useDesk();
  const { local, t } = desk;
  const started = desk.progress.value.find((one) => one.callId === card.id);
  const results = desk.finished.value.filter((one) => one.callId === card.id && one.saved.brought === card.brought);
  const best = results.reduce<(typeof results)[number] | undefined>(
    (top, one) => (top === undefined || one.score > top.score ? one : top),
    undefined,
  );
  const nextTime = desk.lines.value.find((one) => one.callId === card.id)?.nextTime ?? '';
  const titleId = `call-${card.id}`;
  return (
    <li class={next === null ? 'call-card' : 'call-card next'} aria-labelledby={titleId}>
      {next !== null && <p class="next-tag">{t('start.next')}</p>}
      <SkyBand secondOfDay={card.starts.secondOfDay} month={card.starts.month} />
      <div class="call-card-body">
        <p class="call-card-meta">
          {number !== undefined && <span class="call-number">{number}</span>}
          <span>{local(card.lot)}</span>
          <span class="time">
            <Icon name={card.kind === 'visit' ? 'sheet' : 'phone'} /> {formatClock(card.starts.secondOfDay)}
          </span>
        </p>
        <h3 id={titleId}>{local(card.title)}</h3>
        <p class="call-card-summary">{local(card.summary)}</p>
        {nextTime !== '' && (
          <p class="next-time">
            <span class="label">{t('start.nextTime')}</span> {nextTime}
          </p>
        )}
        <p class="call-card-result">
          <span>{t('start.length', { m: { measure: 'duration_min', value: card.minutes } })}</span>
          {best === undefined ? (
            <span>{t('start.notTaken')}</span>
          ) : (
            <span class={best.passed ? 'good' : 'bad'}>
              <Icon name={best.passed ? 'check' : 'flag'} />
              {t(best.passed ? 'start.best.passed' : 'start.best.failed', { score: Math.round(best.score) })}
            </span>
          )}
        </p>
        {started === undefined ? <Ways card={card} next={next} /> : <Begun card={card} started={started} />}
        {children}
      </div>
    </li>
  );
}

/** Ways to take it: alone or with a coach; where it comes next, first as far up the ladder as the trainee stands. */
function Ways({ card, next }: { card: CallCard; next: Rung | null }) {
  const { t } = useDesk();
  const first = next ?? 'alone';
  const second = first === 'alone' ? 'coached' : 'alone';
  const others = next === null ? [] : RUNGS.filter((rung) => rung !== first && rung !== second);
  return (
    <>
      <div class="buttons">
        <WayButton card={card} rung={first} look="primary" />
        {/* A coach helps to search; on a routine visit nothing is searched for yet. */}
        {card.kind !== 'visit' && <WayButton card={card} rung={second} look="secondary" />}
      </div>
      {others.length > 0 && (
        <details class="other-ways">
          <summary>{t('start.otherWays')}</summary>
          <ul>
            {others.map((rung) => (
              <li key={rung}>
                <a href={writeRoute({ screen: 'call', callId: card.id, rung })}>{t(wordsOf(rung))}</a>
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

interface WayProps {
  readonly card: CallCard;
  readonly rung: Rung;
  readonly look: 'primary' | 'secondary';
}

function WayButton({ card, rung, look }: WayProps) {
  const desk = useDesk();
  return (
    <button
      type="button"
      class={look}
      data-call={rung === 'alone' ? card.id : undefined}
      data-coached={rung === 'coached' ? card.id : undefined}
      data-rung={rung}
      onClick={() => desk.go({ screen: 'call', callId: card.id, rung })}
    >
      {desk.t(wayWords(card, rung, look))}
      <span class="vh">: {desk.local(card.title)}</span>
    </button>
  );
}

function wayWords({ kind }: CallCard, rung: Rung, look: WayProps['look']): Key {
  if (kind === 'visit') return 'start.visits.make';
  return rung === 'coached' && look === 'secondary' ? 'start.coached' : wordsOf(rung);
}

export function wordsOf(rung: Rung): Key {
  return rung === 'alone' ? 'start.take' : `start.way.${rung}`;
}

/** What was left: to go on with, or to begin again the way it was begun. */
function Begun({ card, started }: { card: CallCard; started: Progress }) {
  const desk = useDesk();
  const begin = () => desk.go({ screen: 'call', callId: card.id, rung: rungTaken(started.saved) });
  const startOver = async () => {
    await desk.store.dropProgress(card.id);
    begin();
  };
  return (
    <div class="buttons">
      <button type="button" class="secondary" data-call={card.id} onClick={begin}>
        {desk.t('start.goOn')}
        <span class="vh">: {desk.local(card.title)}</span>
      </button>
      <button type="button" class="secondary" onClick={() => void startOver()}>
        {desk.t('start.over')}
        <span class="vh">: {desk.local(card.title)}</span>
      </button>
    </div>
  );
}
