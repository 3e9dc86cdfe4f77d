/** The exam file: how many questions of which topic, how long, how many right. */
import * as z from 'zod/mini';
import { identifier, localText } from '../unit/schema.ts';
import { TOPICS } from './topics.ts';

export const examSchema = z.strictObject({
  $schema: z.optional(z.string()),
  version: z.literal(1),
  id: identifier,
  title: localText,
  /** Where the share to pass with and the parting into topics are from. */
  source: localText,
  minutes: z.int().check(z.gte(1), z.lte(480)),
  /** Share of right answers to pass with. */
  pass: z.number().check(z.gt(0), z.lte(1)),
  /** Questions of each topic. */
  topics: z.partialRecord(z.enum(TOPICS), z.int().check(z.gte(1), z.lte(60))),
});

export type ExamFile = z.infer<typeof examSchema>;
