import '../css/build.css';
import { useEffect, useState } from 'preact/hooks';
import { type Draft, isDraft, shownAt, textAt, valueAt } from '../../build/draft.ts';
import { newDraft } from '../../build/new-draft.ts';
import type { Problem } from '../../calls/problems.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { handOverText } from '../hand-over.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { callText } from './copies.ts';
import { ProblemLine } from './fields.tsx';
import { askedOnce } from './use-looker.ts';

interface Row {
  readonly key: number;
  readonly savedAt: number;
  readonly draft: Draft;
}

/** The calls that are being made, and the ways to begin one. */
export function DraftList() {
  const desk = useDesk();
  const { t } = desk;
  const [rows, setRows] = useState<readonly Row[] | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const refresh = async () => {
    const all = await desk.store.drafts();
    setRows(all.flatMap(({ key, savedAt, draft }) => (isDraft(draft) ? [{ key, savedAt, draft }] : [])));
  };
  useEffect(() => void refresh(), [desk]);
  const open = async (draft: Draft) => {
    const key = await desk.store.putDraft(draft, desk.wallClock());
    if (key !== undefined) desk.go({ screen: 'build', draft: key });
  };
  const read = async (text: string) => {
    setProblem(null);
    const came = (await askedOnce(desk, { kind: 'read', text }))?.read;
    if (came === undefined) return;
    if ('draft' in came) await open(came.draft);
    else setProblem(came.problem);
  };
  const choose = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    input.value = '';
    if (file !== undefined) await read(await file.text());
  };
  const from = async (id: string) => {
    const text = await callText(desk, id).catch(() => undefined);
    if (text === undefined) desk.fail({ id: 'trouble.notLoaded' });
    else await read(text);
  };
  return (
    <div class="build-list">
      <Bar subtitle={t('title.build')} />
      <main>
        <section class="take-head">
          <ScreenTitle>{t('title.build')}</ScreenTitle>
          <p>{t('build.lead')}</p>
          <div class="buttons">
            <button type="button" class="primary" data-new onClick={() => void open(newDraft())}>
              <Icon name="plus" /> {t('build.new')}
            </button>
            <label class="secondary file-button">
              <Icon name="sheet" /> {t('build.open')}
              <input
                type="file"
                class="vh"
                accept=".json,application/json"
                onChange={(event) => void choose(event.currentTarget)}
              />
            </label>
            <a class="secondary" href="#/">
              {t('build.to-start')} <Icon name="arrow" />
            </a>
          </div>
          <FromCall onChoose={(id) => void from(id)} />
          {problem !== null && (
            <div role="alert" class="caution-card">
              <ProblemLine problem={problem} where />
            </div>
          )}
        </section>
        {rows !== null && <Drafts rows={rows} onChange={refresh} />}
      </main>
    </div>
  );
}

/** A call that there is already, as the beginning of another. */
function FromCall({ onChoose }: { onChoose: (id: string) => void }) {
  const desk = useDesk();
  const { t, local } = desk;
  const [id, setId] = useState('');
  const cards = [...desk.brought.value.map(({ card }) => card), ...desk.calls.value];
  return (
    <div class="from-call">
      <label for="from-call">{t('build.from')}</label>
      <select id="from-call" value={id} onChange={(event) => setId(event.currentTarget.value)}>
        <option value="">{t('build.from.none')}</option>
        {cards.map((card) => (
          <option key={card.id} value={card.id}>
            {local(card.title)}
          </option>
        ))}
      </select>
      <button type="button" class="secondary" aria-disabled={id === ''} onClick={() => id !== '' && onChoose(id)}>
        {t('build.from.go')}
      </button>
    </div>
  );
}

function Drafts({ rows, onChange }: { rows: readonly Row[]; onChange: () => Promise<void> }) {
  const desk = useDesk();
  const { t } = desk;
  const [ticked, setTicked] = useState<ReadonlySet<number>>(new Set());
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  if (rows.length === 0) return <p class="none">{t('build.list.none')}</p>;
  const tick = (key: number) => {
    const next = new Set(ticked);
    if (!next.delete(key)) next.add(key);
    setTicked(next);
  };
  const chosen = rows.filter(({ key }) => ticked.has(key));
  const pack = async () => {
    setProblems([]);
    const drafts = chosen.map(({ draft }) => draft);
    const set = (await askedOnce(desk, { kind: 'set', title: SET_TITLE, drafts }))?.set;
    if (set === undefined) return;
    if ('text' in set) handOverText('calls.json', set.text, 'application/json');
    else setProblems(set.problems);
  };
  return (
    <section class="drafts" aria-labelledby="drafts-title">
      <h2 id="drafts-title">{t('build.list')}</h2>
      <ul>
        {rows.map((row) => (
          <DraftRow
            key={row.key}
            row={row}
            ticked={ticked.has(row.key)}
            onTick={() => tick(row.key)}
            onChange={onChange}
          />
        ))}
      </ul>
      <div class="buttons">
        <button
          type="button"
          class="secondary"
          aria-disabled={chosen.length === 0}
          onClick={() => chosen.length > 0 && void pack()}
        >
          <Icon name="save" /> {t('build.set', { n: chosen.length })}
        </button>
      </div>
      <p class="small">{t('build.set.help')}</p>
      {problems.length > 0 && (
        <ul role="alert" class="mends">
          {problems.map((one) => (
            <li key={`${one.path} ${one.message}`}>
              <ProblemLine problem={one} where />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** A set's own title, which its taker reads; whoever hands it on may write another into the file. */
const SET_TITLE = { en: 'Calls', es: 'Avisos' };

interface DraftRowProps {
  readonly row: Row;
  readonly ticked: boolean;
  readonly onTick: () => void;
  readonly onChange: () => Promise<void>;
}

function DraftRow({ row: { key, savedAt, draft }, ticked, onTick, onChange }: DraftRowProps) {
  const desk = useDesk();
  const { t } = desk;
  const [asked, setAsked] = useState(false);
  const title = textAt(draft, 'title', desk.words.value.language);
  const name = title === '' ? t('build.untitled') : title;
  const faults = Array.isArray(valueAt(draft, 'faults')) ? (valueAt(draft, 'faults') as readonly unknown[]).length : 0;
  const drop = async () => {
    await desk.store.dropDraft(key);
    await onChange();
    document.querySelector<HTMLElement>('h1')?.focus();
  };
  const at = new Date(savedAt);
  return (
    <li class="card draft-row">
      <label class="draft-tick">
        <input type="checkbox" checked={ticked} onChange={onTick} />
        <span class="vh">{t('build.tick', { name })}</span>
      </label>
      <div>
        <a class="draft-name" href={`#/build/${key}`}>
          {name}
        </a>
        <p class="small">
          {shownAt(draft, 'unit').toUpperCase()} · {t('build.row.faults', { n: faults })} ·{' '}
          {shownAt(draft, 'start').replace('T', ' ')} ·{' '}
          {t('build.row.kept', { when: at.toLocaleString(desk.words.value.language) })}
        </p>
      </div>
      <div class="draft-ways">
        <button type="button" class="quiet" aria-expanded={asked} onClick={() => setAsked(!asked)}>
          <Icon name="cross" /> {t('build.drop')}
          <span class="vh">: {name}</span>
        </button>
        {asked && (
          <button type="button" class="secondary" data-drop={key} onClick={() => void drop()}>
            {t('build.drop.sure')}
          </button>
        )}
      </div>
    </li>
  );
}
