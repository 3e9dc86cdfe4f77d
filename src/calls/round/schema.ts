/** The round file: lots that live on through a year. What a schema cannot say is checked in `check.ts`. */
import * as z from 'zod/mini';
import { SYMPTOM_IDS } from '../../service/index.ts';
import { identifier, localText } from '../../unit/schema.ts';
import { recordedAction } from '../schema.ts';

const instant = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/));
const share = z.number().check(z.gte(0), z.lte(1));
const part = z.optional(z.string().check(z.minLength(1), z.maxLength(40)));

/** What comes back: it grows evenly from when it was last mended, at once where no days are given, until a mend starts it anew. */
const wear = z.strictObject({
  fault: identifier,
  part,
  severity: z.optional(share),
  grows_d: z.number().check(z.gte(0), z.lte(1500)),
  /** Days before the round's start at which it began. */
  since_d: z.number().check(z.gte(0), z.lte(1500)),
});

/** What comes once. */
const happening = z.strictObject({
  fault: identifier,
  part,
  severity: z.optional(share),
  onset: instant,
  /** Hours until it is over by itself. */
  for_h: z.optional(z.number().check(z.positive(), z.lte(24 * 60))),
});

const lot = z.strictObject({
  lot: z.string().check(z.regex(/^[0-9]{1,4}$/)),
  unit: identifier,
  household: identifier,
  climate: identifier,
  seed: z.int().check(z.gte(0), z.lte(4294967295)),
  sludge_y: z.number().check(z.gte(0), z.lte(20)),
  /** Nine in the morning of routine visits, by day. */
  visits: z.array(instant).check(z.maxLength(12)),
  wears: z.array(wear).check(z.maxLength(8)),
  happens: z.array(happening).check(z.maxLength(12)),
});

const symptom = z.enum(SYMPTOM_IDS);

export const roundSchema = z.strictObject({
  $schema: z.optional(z.string()),
  version: z.literal(1),
  id: identifier,
  title: localText,
  /** Where the data are from. */
  source: localText,
  start: instant,
  days: z.int().check(z.gte(1), z.lte(400)),
  lots: z.array(lot).check(z.minLength(1), z.maxLength(24)),
  /** What households say, by what they noticed. */
  texts: z.strictObject({
    lot: localText,
    routine: z.strictObject({ title: localText, said: localText }),
    symptoms: z.partialRecord(symptom, z.strictObject({ title: localText, said: localText })),
    seasons: z.strictObject({ winter: localText, spring: localText, summer: localText, autumn: localText }),
    history: z.strictObject({ first: localText, visited: localText, lately: localText }),
    use: z.strictObject({ ordinary: localText, habits: z.record(z.string(), localText) }),
    story: localText,
  }),
});

export type RoundFile = z.infer<typeof roundSchema>;
export type LotFile = RoundFile['lots'][number];

/** A year as it was lived: what was done at each door, to be lived again to the same bits. */
export const yearSchema = z.strictObject({
  kind: z.literal('underlawn-round'),
  version: z.literal(1),
  engine: z.string().check(z.minLength(1), z.maxLength(40)),
  round: identifier,
  roundHash: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  seed: z.int().check(z.gte(0)),
  visits: z
    .array(
      z.strictObject({
        lot: z.string().check(z.maxLength(8)),
        actions: z.array(recordedAction).check(z.maxLength(2000)),
        end_ms: z.int().check(z.gte(0)),
        /** Digest of the lot as it was left. */
        state: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
      }),
    )
    .check(z.maxLength(2000)),
});

export type YearRecord = z.infer<typeof yearSchema>;
