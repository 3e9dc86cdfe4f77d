import * as z from 'zod/mini';

/** What the browser keeps, as checked on the way in: nothing read from storage is believed. */

const LocalText = z.object({ en: z.string(), es: z.string() });

export const Settings = z.object({
  version: z.literal(1),
  language: z.enum(['en', 'es']),
  units: z.enum(['us', 'si']),
  sound: z.boolean(),
  still: z.boolean(),
});
export type Settings = z.infer<typeof Settings>;

const SavedCall = z.object({
  version: z.literal(1),
  callId: z.string(),
  mode: z.enum(['coached', 'practice', 'graded']),
  record: z.unknown(),
  now_ms: z.number(),
  title: LocalText,
});

export const Progress = z.object({
  version: z.literal(1),
  callId: z.string(),
  /** Wall time of the save, ms: only to tell which call was left last. */
  savedAt: z.number(),
  stage: z.string(),
  clock: z.object({
    year: z.number(),
    month: z.number(),
    day: z.number(),
    weekday: z.number(),
    secondOfDay: z.number(),
  }),
  saved: SavedCall,
});
export type Progress = z.infer<typeof Progress>;

export const Finished = z.object({
  version: z.literal(1),
  callId: z.string(),
  finishedAt: z.number(),
  score: z.number(),
  passed: z.boolean(),
  saved: SavedCall,
});
export type Finished = z.infer<typeof Finished>;

export const Line = z.object({
  version: z.literal(1),
  callId: z.string(),
  toldMost: z.string(),
  costMost: z.string(),
  nextTime: z.string().check(z.maxLength(400)),
});
export type Line = z.infer<typeof Line>;

/** What a first visit starts with: the first of the reader's languages that Underlawn speaks, else English. */
export function firstSettings(languages: readonly string[]): Settings {
  const spoken = languages.map((one) => one.slice(0, 2).toLowerCase()).find((one) => one === 'en' || one === 'es');
  return { version: 1, language: spoken === 'es' ? 'es' : 'en', units: 'us', sound: true, still: false };
}
