/** A call or a set of calls as text. */
import { type CallFile, callSchema } from '../calls/schema.ts';
import { digest, type Json } from '../unit/index.ts';
import { type SharedFile, setSchema } from './set.ts';

/** Keys in the order of the schema, whoever made the value: equal files come to the same text. */
export function inOrder(file: SharedFile): SharedFile {
  return 'set' in file ? setSchema.parse(file) : callSchema.parse(file);
}

/** A file as it is saved: two blanks a level, a line's end at the end. Loaded and saved again it is the same bytes. */
export function fileText(file: SharedFile): string {
  return `${JSON.stringify(inOrder(file), null, 2)}\n`;
}

/** Whether two calls are the same to whoever takes them. Where an editor finds the schema is no part of a call. */
export function sameCall({ $schema: _a, ...a }: CallFile, { $schema: _b, ...b }: CallFile): boolean {
  return digest(a as unknown as Json) === digest(b as unknown as Json);
}
