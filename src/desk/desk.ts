import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type ComponentType, createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { LocalText, Message, MessageValue } from '../service/message.ts';
import { type Speak, speak } from '../words/speak.ts';
import { type Extra, type Key, type Language, loadWords, type Words } from '../words/words.ts';
import { type Engine, toldOf } from './engine.ts';
import type { OpenPicture } from './picture.ts';
import type { CallCard } from './protocol.ts';
import { type Route, readRoute, writeRoute } from './routes.ts';
import { createSession, type Session } from './session.ts';
import type { OpenSounds } from './sounds.ts';
import type { FinishedEntry, Store, StoreTrouble } from './store.ts';
import { type Brought, firstSettings, type Line, type Progress, type Settings } from './stored.ts';

/** What the desk is built on; a test brings its own. */
export interface DeskParts {
  readonly engine: Engine;
  readonly openStore: (trouble: (what: StoreTrouble) => void, mended: (what: StoreTrouble) => void) => Promise<Store>;
  readonly openPicture?: OpenPicture;
  readonly openSounds?: OpenSounds;
  readonly wallClock: () => number;
  /** How a call is taken alone; for practice unless a course platform has it graded. */
  readonly alone?: 'practice' | 'graded';
}

/** A note that another version waits, and how the copy stands. */
export interface OfflineViews {
  readonly Note: ComponentType;
  readonly Copy: ComponentType;
}

/** Everything the screens share. */
export interface Desk {
  readonly engine: Engine;
  readonly store: Store;
  readonly openPicture: OpenPicture | undefined;
  readonly openSounds: OpenSounds | undefined;
  readonly wallClock: () => number;
  readonly settings: ReadonlySignal<Settings>;
  readonly words: ReadonlySignal<Words>;
  readonly speak: ReadonlySignal<Speak>;
  readonly stillWanted: ReadonlySignal<boolean>;
  readonly route: ReadonlySignal<Route>;
  readonly troubles: Signal<readonly Message[]>;
  readonly calls: Signal<readonly CallCard[]>;
  readonly progress: Signal<readonly Progress[]>;
  readonly finished: Signal<readonly FinishedEntry[]>;
  readonly lines: Signal<readonly Line[]>;
  readonly brought: Signal<readonly Brought[]>;
  readonly session: Session;
  /** What the page says of the course platform that launched it. */
  readonly courseNote: Signal<ComponentType | null>;
  /** What the page says of the copy of itself that the browser keeps, once that is known. */
  readonly offline: Signal<OfflineViews | null>;
  /** How many trainers watch this window. */
  readonly trainers: Signal<number>;
  /** A text of the screens' own. */
  t(key: Key, values?: Readonly<Record<string, MessageValue>>): string;
  /** A text that came from a data file. */
  local(text: LocalText): string;
  /** Has the words of a debrief and a coach, or of the drills, ready too, from now on and in whatever language. */
  readyFor(extra: Extra): Promise<void>;
  change(
    settings: Partial<Pick<Settings, 'language' | 'units' | 'sound' | 'still' | 'theme' | 'howRead' | 'slash'>>,
  ): Promise<void>;
  go(route: Route): void;
  refreshShelves(): Promise<void>;
  fail(told: Message): void;
}

export async function createDesk(parts: DeskParts): Promise<Desk> {
  const troubles = signal<readonly Message[]>([]);
  const early: StoreTrouble[] = [];
  let report = (what: StoreTrouble) => void early.push(what);
  const store = await parts.openStore(
    (what) => report(what),
    (what) => {
      troubles.value = troubles.value.filter(({ id }) => id !== `trouble.store.${what}`);
    },
  );
  const settings = signal((await store.settings()) ?? firstSettings(navigator.languages));
  const words = signal(await loadWords(settings.value.language));
  const extras = new Set<Extra>();
  async function readyFor(extra: Extra): Promise<void> {
    if (extras.has(extra)) return;
    const { language } = words.value;
    const { texts } = await loadWords(language, extra);
    extras.add(extra);
    // Others may have come meanwhile, and another language.
    if (words.value.language === language) words.value = { language, texts: { ...words.value.texts, ...texts } };
    else words.value = await loadWords(words.value.language, ...extras);
  }
  /** What is hardly ever to be said has its words fetched first. */
  async function fail(told: Message): Promise<void> {
    if (!(told.id in words.value.texts)) await readyFor('kept').catch(() => {});
    if (!troubles.value.some((one) => one.id === told.id)) troubles.value = [...troubles.value, told];
  }
  report = (what) => void fail({ id: `trouble.store.${what}` });
  early.forEach(report);
  const said = computed(() => speak(words.value, settings.value.units));
  const route = signal<Route>(readRoute(location.hash));
  addEventListener('hashchange', () => {
    route.value = readRoute(location.hash);
  });
  const calm = matchMedia('(prefers-reduced-motion: reduce)');
  const calmAsked = signal(calm.matches);
  calm.addEventListener('change', () => {
    calmAsked.value = calm.matches;
  });
  const { engine, wallClock } = parts;
  const calls = signal<readonly CallCard[]>([]);
  const progress = signal<readonly Progress[]>([]);
  const finished = signal<readonly FinishedEntry[]>([]);
  const lines = signal<readonly Line[]>([]);
  const brought = signal<readonly Brought[]>([]);

  const desk: Desk = {
    engine,
    store,
    openPicture: parts.openPicture,
    openSounds: parts.openSounds,
    wallClock,
    settings,
    words,
    speak: said,
    stillWanted: computed(() => settings.value.still || calmAsked.value),
    route,
    troubles,
    calls,
    progress,
    finished,
    lines,
    brought,
    session: createSession({ engine, store, wallClock, fail, alone: parts.alone }),
    courseNote: signal<ComponentType | null>(null),
    offline: signal<OfflineViews | null>(null),
    trainers: signal(0),
    t: (key, values) => said.value(values === undefined ? { id: key } : { id: key, values }),
    local: (text) => text[words.value.language],
    readyFor,
    async change(some) {
      const { language = settings.value.language } = some;
      const other = language === words.value.language ? undefined : await loadWords(language, ...extras);
      // Both at once: in between, what was chosen would not be; and another choice may have been made meanwhile.
      batch(() => {
        settings.value = { ...settings.value, ...some };
        if (other) words.value = other;
      });
      if (other) await listCalls(desk, language);
      await store.putSettings(settings.value);
    },
    go(next) {
      location.hash = writeRoute(next);
    },
    async refreshShelves() {
      [progress.value, finished.value, lines.value, brought.value] = await Promise.all([
        store.progress(),
        store.finished(),
        store.lines(),
        store.brought(),
      ]);
    },
    fail,
  };
  await Promise.all([desk.refreshShelves(), listCalls(desk, words.value.language)]);
  return desk;
}

async function listCalls({ engine, calls, fail }: Desk, language: Language) {
  try {
    calls.value = (await engine.ask({ kind: 'list', language })).calls;
  } catch (error) {
    fail(toldOf(error));
  }
}

export const DeskContext = createContext<Desk | null>(null);

/** The desk of the page one is in. */
export function useDesk(): Desk {
  const desk = useContext(DeskContext);
  if (desk === null) throw new Error('used outside of a desk');
  return desk;
}
