/** A set of calls: one file that a trainer hands to a class. */
import * as z from 'zod/mini';
import { type CallFile, callSchema } from '../calls/schema.ts';
import { localText } from '../unit/schema.ts';

/** A term of weekly calls is some forty (`convention`). */
const MOST_CALLS = 60;

export const setSchema = z.strictObject({
  $schema: z.optional(z.string()),
  set: z.literal(1),
  title: localText,
  calls: z.array(callSchema).check(z.minLength(1), z.maxLength(MOST_CALLS)),
});

export type CallSet = z.infer<typeof setSchema>;
/** What is handed on: one call, or a set. */
export type SharedFile = CallFile | CallSet;

export function callsIn(file: SharedFile): readonly CallFile[] {
  return 'set' in file ? file.calls : [file];
}

/** The set without its calls, which are checked one by one. */
export const coverSchema = z.strictObject({
  ...setSchema.shape,
  calls: z.array(z.unknown()).check(z.minLength(1), z.maxLength(MOST_CALLS)),
});
