import '../css/round.css';
import { useEffect, useState } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { type Desk, useDesk } from '../desk.ts';
import { OpenElsewhere } from '../elsewhere/later.tsx';
import { toldOf } from '../engine.ts';
import { Icon } from '../icons.tsx';
import type { LotView, RoundView } from '../protocol.ts';
import { isRoundCall } from '../round-call.ts';
import { Said, ScreenTitle } from '../screen.tsx';
import { HeldElsewhere } from '../store.ts';
import { LotCard } from './lot-card.tsx';
import { Weeks } from './weeks.tsx';

/** The round: the year in weeks, twelve doors, whose phone rings now, and the book of each lot. */
export function RoundScreen() {
  const desk = useDesk();
  const [view, setView] = useState<RoundView | null>(null);
  const [year, setYear] = useState(0);
  const [elsewhere, setElsewhere] = useState<'open' | 'taken' | null>(null);
  const [over, setOver] = useState(0);
  useEffect(() => liveOn(desk, over > 0, setView, setElsewhere), [desk, year, over]);
  const { t } = desk;
  if (elsewhere !== null) {
    const take = () => {
      setElsewhere(null);
      setOver(over + 1);
    };
    return <OpenElsewhere how={elsewhere} onTake={take} />;
  }
  return (
    <div class="round-screen">
      <Bar subtitle={t('title.round')} />
      <main>
        <section class="round-head">
          <ScreenTitle>{view === null ? t('round.title') : desk.local(view.title)}</ScreenTitle>
          <p>{t('round.lead')}</p>
          {view !== null && <p class="small">{desk.local(view.source)}</p>}
          <p class="round-now" role="status">
            <Now view={view} />
          </p>
        </section>
        {view !== null && (
          <>
            <Weeks weeks={view.weeks} />
            <section class="round-lots" aria-labelledby="lots-title">
              <h2 id="lots-title">{t('round.lots')}</h2>
              <ul>
                {view.lots.map((lot) => (
                  <LotCard key={lot.lot} lot={lot} />
                ))}
              </ul>
            </section>
            <section class="card round-sheet" aria-labelledby="sheet-title">
              <h2 id="sheet-title">{t('round.sheet')}</h2>
              <ul>
                {view.lots.filter(isOpened).map((lot) => (
                  <li key={lot.lot}>
                    <Said message={lot.row} />
                  </li>
                ))}
              </ul>
              <p class="strong">
                <Said message={view.all} />
              </p>
              <button
                type="button"
                class="secondary"
                onClick={() => void beginAnew(desk).then(() => setYear(year + 1))}
              >
                <Icon name="again" /> {t('round.again')}
              </button>
            </section>
          </>
        )}
      </main>
    </div>
  );
}

function isOpened({ book }: LotView): boolean {
  return book.length > 0;
}

function Now({ view }: { view: RoundView | null }) {
  const { t, local } = useDesk();
  if (view === null) return <>{t('round.opening')}</>;
  const all = view.lots.length;
  if (view.living > 0) return <>{t('round.living', { lived: all - view.living, all })}</>;
  const next = view.lots.find((lot) => lot.state === 'rings');
  if (next?.why === undefined) return <>{t('round.over')}</>;
  return <>{t('round.next', { lot: next.lot, why: local(next.why) })}</>;
}

/** Opens the round and lets lot after lot live on, until it is known whose phone rings first. Returns how to stop. */
function liveOn(
  desk: Desk,
  over: boolean,
  show: (view: RoundView) => void,
  held: (elsewhere: 'open' | 'taken') => void,
): () => void {
  let gone = false;
  const { engine, store, wallClock } = desk;
  const lose = () => {
    if (!gone) held('taken');
    gone = true;
  };
  const live = async () => {
    await desk.session.leave();
    if (!(await store.claim('round', over, lose))) return held('open');
    let reply = await engine.ask({ kind: 'round', kept: await store.takeRound() });
    if (reply.anew) {
      await store.setRoundAside();
      desk.fail({ id: 'trouble.round-anew' });
    }
    show(reply.view);
    while (!gone && reply.view.living > 0) {
      reply = await engine.ask({ kind: 'roundLive' });
      if (!gone) show(reply.view);
    }
    await store.putRound(reply.kept, wallClock());
  };
  live().catch((error: unknown) => {
    if (error instanceof HeldElsewhere) lose();
    else {
      desk.fail(toldOf(error));
      if (!gone) desk.go({ screen: 'start' });
    }
  });
  return () => {
    gone = true;
  };
}

/** Throws the year away, and with it what was left half done on its doors. */
async function beginAnew({ store }: Desk): Promise<void> {
  for (const { callId } of await store.progress()) if (isRoundCall(callId)) await store.dropProgress(callId);
  await store.dropRound();
}
