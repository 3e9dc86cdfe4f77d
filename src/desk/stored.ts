import { LED } from '../calls/rungs.ts';
import { anything, fields, finite, flag, oneOf, type ShapeOf, text, textUpTo } from './shape.ts';

/** What the browser keeps, as checked on the way in: nothing read from storage is believed. */

const LocalText = fields({ en: text, es: text });

const Theme = oneOf('auto', 'light', 'dark');
/** `auto`: as the device has it. */
export type Theme = ShapeOf<typeof Theme>;

export const Settings = fields(
  {
    version: oneOf(1),
    language: oneOf('en', 'es'),
    units: oneOf('us', 'si'),
    sound: flag,
    still: flag,
  },
  /**
   * Later ones, which those of an earlier Underlawn lack: colours as the device has them; whether the strip on how a call goes was
   * put away, and whether a single key leads to the search, which it does unless said.
   */
  { theme: Theme, howRead: flag, slash: flag },
);
export type Settings = ShapeOf<typeof Settings>;

const Assistance = fields({ hints: oneOf(0, 1, 2, 3, 4), likely: flag }, { led: oneOf(...LED) });

export const SavedCall = fields(
  {
    version: oneOf(1),
    callId: text,
    mode: oneOf('coached', 'practice', 'graded'),
    record: anything,
    now_ms: finite,
    title: LocalText,
  },
  /** The file of the call itself, where it did not ship. */
  { assistance: Assistance, brought: text },
);

export const Progress = fields({
  version: oneOf(1),
  callId: text,
  /** Wall time of the save, ms: only to tell which call was left last. */
  savedAt: finite,
  stage: text,
  clock: fields({
    year: finite,
    month: finite,
    day: finite,
    weekday: finite,
    secondOfDay: finite,
  }),
  saved: SavedCall,
});
export type Progress = ShapeOf<typeof Progress>;

export const Finished = fields(
  {
    version: oneOf(1),
    callId: text,
    finishedAt: finite,
    score: finite,
    passed: flag,
    saved: SavedCall,
  },
  /** What each step was worth, once it has been worked out; whoever shows it checks it. */
  { review: anything },
);
export type Finished = ShapeOf<typeof Finished>;

/** One line for each family of faults; one without a family is of an earlier Underlawn and stays with its call. */
export const Line = fields(
  {
    version: oneOf(1),
    callId: text,
    toldMost: text,
    costMost: text,
    nextTime: textUpTo(400),
  },
  { family: text, savedAt: finite },
);
export type Line = ShapeOf<typeof Line>;

/** One drill of two minutes or of as long as it took. Which skills there are is known where they are shown. */
export const DrillCount = fields({
  version: oneOf(1),
  skill: text,
  finishedAt: finite,
  asked: finite,
  right: finite,
  median_s: finite,
});
export type DrillCount = ShapeOf<typeof DrillCount>;

const Card = fields({
  id: text,
  title: LocalText,
  summary: LocalText,
  kind: oneOf('alarm', 'complaint', 'visit'),
  unit: text,
  lot: LocalText,
  minutes: finite,
  starts: fields({ secondOfDay: finite, month: finite }),
});

/** A call that came by link or file: its card, and its file, which whoever opens it checks. */
export const Brought = fields(
  { version: oneOf(1), card: Card, text, from: oneOf('link', 'file'), broughtAt: finite },
  /** Title of the set it came in. */
  { set: LocalText },
);
export type Brought = ShapeOf<typeof Brought>;

/** A call that is being made. */
export const DraftEntry = fields({
  version: oneOf(1),
  savedAt: finite,
  /** The value of its file so far: whoever opens it shows what is wrong with it. */
  draft: anything,
});
export type DraftEntry = ShapeOf<typeof DraftEntry>;

/** A moment of a call that a trainer kept, to begin from: one of several of a call. */
export const Moment = fields({ version: oneOf(1), name: textUpTo(60), keptAt: finite, from: Progress });
export type Moment = ShapeOf<typeof Moment>;

/** The round between two doors. */
export const Round = fields({
  version: oneOf(1),
  /** Wall time of the save, ms: to tell which of two is the later. */
  savedAt: finite,
  /** As the engine gave it out: whoever takes it up checks it. */
  kept: anything,
});
export type Round = ShapeOf<typeof Round>;

/** What is likely still known of a skill on a unit, and when it is to be asked again. */
export const QuizCard = fields({
  version: oneOf(1),
  skill: text,
  unit: text,
  /** Wall time at which it is due, and of the last answer, ms. */
  due: finite,
  last: finite,
  stability: finite,
  difficulty: finite,
  scheduled_d: finite,
  steps: finite,
  reps: finite,
  lapses: finite,
  state: oneOf(0, 1, 2, 3),
});
export type QuizCard = ShapeOf<typeof QuizCard>;

/** The mock exam that was sat last, still open or handed in. */
export const Sitting = fields({
  version: oneOf(1),
  /** Wall time of the save, ms: to tell which of two is the later. */
  savedAt: finite,
  /** As the quiz gave it out: whoever takes it up checks it. */
  kept: anything,
});
export type Sitting = ShapeOf<typeof Sitting>;

/** What a first visit starts with: the first of the reader's languages that Underlawn speaks, else English. */
export function firstSettings(languages: readonly string[]): Settings {
  const spoken = languages.map((one) => one.slice(0, 2).toLowerCase()).find((one) => one === 'en' || one === 'es');
  return { version: 1, language: spoken === 'es' ? 'es' : 'en', units: 'us', sound: true, still: false };
}
