import '../css/find.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { FAULT_CARDS } from '../faults/cards.ts';
import type { FaultCard } from '../faults/fault-card.ts';
import { Icon } from '../icons.tsx';
import type { CallCard } from '../protocol.ts';
import { writeRoute } from '../routes.ts';
import { Said } from '../screen.tsx';
import { CallCardView } from '../start/call-card.tsx';
import { headingOf } from '../start/heading-of.ts';
import { ANYTHING, Filters, isWithin, type Narrowed } from './filters.tsx';
import { callIndex, faultIndex } from './searched.ts';

interface Props {
  readonly query: string;
  readonly onBack: () => void;
}

/** Cards of a kind that are shown at once while one types, so that no key waits for them. */
const FIRST = 9;
/** Long enough that a screen reader is not interrupted at each key. */
const SETTLED_ms = 500;

/** What a search finds, in place of the whole page: calls to take, visits to make, faults to read about. */
export function Results({ query, onBack }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const [narrowed, setNarrowed] = useState(ANYTHING);
  const [allOf, setAllOf] = useState('');
  const words = desk.words.value;
  const cards = useCards();
  const calls = useMemo(() => callIndex(cards, words), [cards, words]);
  const faults = useMemo(() => faultIndex(FAULT_CARDS, words, desk.speak.value), [words, desk.speak.value]);
  const asked = query.trim();
  const passed = new Set(desk.finished.value.flatMap((one) => (one.passed ? [one.callId] : [])));
  const found = calls.find(asked).filter((card) => isWithin(narrowed, card, passed.has(card.id)));
  const foundFaults = asked === '' || narrowed !== ANYTHING ? [] : faults.find(asked);
  const [brought, shipped] = parted(found, (card) => card.brought !== undefined);
  const [visits, taken] = parted(shipped, (card) => card.kind === 'visit');
  const counted = t(asked === '' || narrowed !== ANYTHING ? 'find.count.list' : 'find.count', {
    n: taken.length + brought.length,
    v: visits.length,
    f: foundFaults.length,
    q: asked,
  });
  const most = asked === '' || allOf === asked ? Number.POSITIVE_INFINITY : FIRST;
  const isMore = [taken, brought, visits, foundFaults].some(({ length }) => length > most);
  const empty = found.length === 0 && foundFaults.length === 0;
  const none = asked === '' ? t('find.none.list') : t('find.none', { q: asked });
  return (
    <section class="calls found" aria-labelledby="found-title">
      <div class="calls-head">
        <h2 id="found-title" tabIndex={-1}>
          {t(asked === '' ? 'find.narrow.title' : 'find.title')}
          <span class="found-count">{counted}</span>
        </h2>
        <div class="buttons">
          {found.length > 0 && foundFaults.length > 0 && (
            <button type="button" class="secondary to-faults" onClick={() => headingOf('found-faults')}>
              {t('find.faults')} <Icon name="arrow" />
            </button>
          )}
          <button type="button" class="secondary" data-find-back onClick={onBack}>
            {t('find.back')}
          </button>
        </div>
      </div>
      <Announced text={empty ? none : counted} />
      <Filters value={narrowed} units={unitsOf(cards)} onChange={(value) => setNarrowed(orAnything(value))} />
      {empty && (
        <div class="card found-none">
          <p class="strong">{none}</p>
          {asked !== '' && <p>{t('find.none.try')}</p>}
          <p>
            <a href="#/faults">{t('faults.all')}</a>
          </p>
        </div>
      )}
      <div class={found.length > 0 && foundFaults.length > 0 ? 'found-body both' : 'found-body'}>
        {found.length > 0 && (
          <div>
            <CallsFound id="found-calls" title={t('find.calls')} cards={taken.slice(0, most)} />
            <CallsFound id="found-brought" title={t('find.brought')} cards={brought.slice(0, most)} />
            <CallsFound id="found-visits" title={t('find.visits')} cards={visits.slice(0, most)} />
          </div>
        )}
        <FaultsFound cards={foundFaults.slice(0, most)} />
      </div>
      {isMore && (
        <button type="button" class="secondary found-more" data-find-more onClick={() => setAllOf(asked)}>
          {t('find.more')}
        </button>
      )}
    </section>
  );
}

/** The calls that ship and those that were brought; one whose id ships by now gives way to it. */
function useCards(): readonly CallCard[] {
  const desk = useDesk();
  const shipped = desk.calls.value;
  const brought = desk.brought.value;
  return useMemo(() => {
    const ids = new Set(shipped.map(({ id }) => id));
    return [
      ...shipped,
      ...brought.filter(({ card }) => !ids.has(card.id)).map(({ card, text }) => ({ ...card, brought: text })),
    ];
  }, [shipped, brought]);
}

/** Says how much was found once the typing rests. */
function Announced({ text }: { readonly text: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(text), SETTLED_ms);
    return () => clearTimeout(timer);
  }, [text]);
  return (
    <p class="vh" role="status">
      {said}
    </p>
  );
}

function CallsFound({ id, title, cards }: { id: string; title: string; cards: readonly CallCard[] }) {
  if (cards.length === 0) return null;
  return (
    <>
      <h2 id={id} class="found-kind">
        {title}
      </h2>
      <ul class="call-cards" aria-labelledby={id}>
        {cards.map((card) => (
          <CallCardView key={card.id} card={card} next={null} />
        ))}
      </ul>
    </>
  );
}

function FaultsFound({ cards }: { cards: readonly FaultCard[] }) {
  const { t } = useDesk();
  if (cards.length === 0) return null;
  return (
    <div class="found-faults">
      <div class="calls-head">
        <h2 id="found-faults" class="found-kind" tabIndex={-1}>
          {t('find.faults')}
        </h2>
        <p>{t('find.faults.note')}</p>
      </div>
      <ul class="fault-cards" aria-labelledby="found-faults">
        {cards.map(({ id, name, family }) => (
          <li key={id} class="card">
            <a href={writeRoute({ screen: 'faults', fault: id })}>
              <Said message={name} /> <Icon name="arrow" />
            </a>
            <p class="small">{t(`family.${family}`)}</p>
            <p class="fault-shows">
              <Said message={{ id: `shows.${id}` }} />
            </p>
          </li>
        ))}
      </ul>
    </div>
  );
}

function unitsOf(cards: readonly CallCard[]): readonly string[] {
  return [...new Set(cards.map(({ unit }) => unit))].sort();
}

function orAnything(value: Narrowed): Narrowed {
  return Object.values(value).every((one) => one === '') ? ANYTHING : value;
}

function parted<T>(all: readonly T[], test: (one: T) => boolean): readonly [readonly T[], readonly T[]] {
  return [all.filter(test), all.filter((one) => !test(one))];
}
