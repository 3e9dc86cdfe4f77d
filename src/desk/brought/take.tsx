import '../css/brought.css';
import { useEffect, useState } from 'preact/hooks';
import type { Refusal } from '../../share/read.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { CautionSign, Icon } from '../icons.tsx';
import type { BroughtCalls as Calls } from '../protocol.ts';
import { writeRoute } from '../routes.ts';
import { Said, ScreenTitle } from '../screen.tsx';
import { bring, bringFile, type Outcome, replace } from './bring.ts';
import { BroughtCalls } from './cards.tsx';

type From = 'link' | 'file';

/** Opens what somebody sent, a link or a file, and shows what it was. */
export function TakeScreen({ link }: { link: string | undefined }) {
  const desk = useDesk();
  const { t } = desk;
  const [from, setFrom] = useState<From>('link');
  const [outcome, setOutcome] = useState<Outcome | 'reading' | null>(null);
  const read = async (source: From, work: () => Promise<Outcome>) => {
    setFrom(source);
    setOutcome('reading');
    try {
      setOutcome(await work());
    } catch (error) {
      desk.fail(toldOf(error));
      setOutcome(null);
    }
  };
  useEffect(() => {
    void desk.session.leave().then(desk.refreshShelves);
    if (link !== undefined) void read('link', () => bring(desk, 'link', link));
  }, [desk, link]);
  const choose = (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file !== undefined) void read('file', () => bringFile(desk, file));
    // The same file, mended meanwhile, can be chosen again.
    input.value = '';
  };
  return (
    <div class="take">
      <Bar subtitle={t('title.take')} />
      <main>
        <section class="take-head">
          <ScreenTitle>{t('title.take')}</ScreenTitle>
          <p>{t('brought.lead')}</p>
          <div class="buttons">
            <label class="primary file-button">
              <Icon name="sheet" /> {t('brought.file')}
              <input
                type="file"
                class="vh"
                accept=".json,application/json"
                onChange={(event) => choose(event.currentTarget)}
              />
            </label>
            <a class="secondary" href="#/">
              {t('brought.back')} <Icon name="arrow" />
            </a>
          </div>
          <p class="small">{t('brought.file.note')}</p>
        </section>
        <div role="status" class="take-outcome">
          {outcome === 'reading' && <p>{t('brought.reading')}</p>}
          {outcome !== null && outcome !== 'reading' && outcome.state === 'refused' && (
            <Refused refusal={outcome.refusal} />
          )}
          {outcome !== null && outcome !== 'reading' && outcome.state === 'brought' && (
            <Taken outcome={outcome} from={from} onSettled={(others) => setOutcome({ ...outcome, others })} />
          )}
        </div>
        <BroughtCalls />
      </main>
    </div>
  );
}

interface TakenProps {
  readonly outcome: Extract<Outcome, { state: 'brought' }>;
  readonly from: From;
  readonly onSettled: (others: Calls['calls']) => void;
}

function Taken({ outcome: { brought, others }, from, onSettled }: TakenProps) {
  const desk = useDesk();
  const { t, local } = desk;
  const { set, own } = brought;
  const n = brought.calls.length - others.length;
  const settle = (one: Calls['calls'][number]) => {
    onSettled(others.filter((other) => other !== one));
    document.querySelector<HTMLElement>('h1')?.focus();
  };
  return (
    <>
      {n > 0 && (
        <p class="strong">
          {set === undefined ? t('brought.taken', { n }) : t('brought.taken.set', { n, set: local(set) })}
        </p>
      )}
      {own.length > 0 && (
        <>
          <p>{t('brought.own')}</p>
          <ul class="own-calls">
            {own.map((callId) => (
              <li key={callId}>
                <a href={writeRoute({ screen: 'call', callId })}>
                  {local(desk.calls.value.find(({ id }) => id === callId)?.title ?? { en: callId, es: callId })}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
      {others.map((one) => (
        <section key={one.card.id} class="card other-edition" aria-labelledby={`other-${one.card.id}`}>
          <h2 id={`other-${one.card.id}`}>{t('brought.other', { title: local(one.card.title) })}</h2>
          <p>{t('brought.other.text')}</p>
          <div class="buttons">
            <button
              type="button"
              class="primary"
              onClick={() => void replace(desk, from, brought, one).then(() => settle(one))}
            >
              {t('brought.replace')}
            </button>
            <button type="button" class="secondary" onClick={() => settle(one)}>
              {t('brought.keep')}
            </button>
          </div>
        </section>
      ))}
    </>
  );
}

/** Problems beyond these say little more. */
const MOST = 12;

function Refused({ refusal: { why, problems } }: { refusal: Refusal }) {
  const { t } = useDesk();
  return (
    <section class="caution-card refused">
      <p class="strong">
        <CautionSign /> <Said message={why} />
      </p>
      {problems.length > 0 && (
        <>
          <h2>{t('brought.problems')}</h2>
          {/* For whoever writes call files: they name its keys, which are English, and are English themselves. */}
          <ul lang="en">
            {problems.slice(0, MOST).map(({ path, message, mend }) => (
              <li key={`${path} ${message}`}>
                {path !== '' && <code>{path}</code>} {message}; {mend}
              </li>
            ))}
          </ul>
          {problems.length > MOST && <p>{t('brought.more', { n: problems.length - MOST })}</p>}
        </>
      )}
    </section>
  );
}
