import { digest, type Json } from '../../unit/index.ts';
import type { RoundFile } from './schema.ts';

/** Digest of a round's file: a year that was lived on another is not lived again on this one. */
export function roundHash(round: RoundFile): string {
  return digest(round as unknown as Json);
}
