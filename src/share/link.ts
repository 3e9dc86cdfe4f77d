/**
 * A call as the end of an address, `#/take/…`: it never reaches a server. The letters are base64url of
 *
 *     1 byte   version of this form
 *     4 bytes  CRC-32 of all other bytes, the highest first: in every later version too, so that damage is always told from age
 *     …        the file as JSON without blanks, deflated (RFC 1951)
 */
import type { Library } from '../calls/check.ts';
import { LARGEST_FILE_bytes } from '../calls/problems.ts';
import { fromBase64url, toBase64url } from './base64url.ts';
import { crc32 } from './crc32.ts';
import { LONGEST_LINK } from './limits.ts';
import { joined, packed, TooLarge, unpacked } from './pack.ts';
import { bytesOf, textOf } from './platform.ts';
import { type Received, readShared, refused } from './read.ts';
import type { SharedFile } from './set.ts';
import { inOrder } from './text.ts';

const VERSION = 1;
const HEAD_bytes = 5;

export const LINK_START = '#/take/';

export type Link =
  | { readonly ok: true; readonly fragment: string }
  /** Too long for a link: it goes by file. */
  | { readonly ok: false; readonly length: number };

/** The end of an address that opens this call, or these calls. */
export async function linkOf(file: SharedFile): Promise<Link> {
  const body = await packed(bytesOf(JSON.stringify(inOrder(file))));
  const fragment = LINK_START + toBase64url(sealed(body));
  return fragment.length > LONGEST_LINK ? { ok: false, length: fragment.length } : { ok: true, fragment };
}

/** What a link holds, checked, or why it is not taken: from a whole address, from its end, or from the letters alone. */
export async function openLink(link: string, library: Library): Promise<Received> {
  const start = link.indexOf(LINK_START);
  const letters = (start < 0 ? link : link.slice(start + LINK_START.length)).trim();
  if (letters.length > LARGEST_FILE_bytes) return refused('too-large');
  const bytes = fromBase64url(letters);
  if (bytes === undefined || bytes.length <= HEAD_bytes || !isWhole(bytes)) return refused('damaged');
  if (bytes[0] !== VERSION) return refused('newer');
  try {
    return readShared(textOf(await unpacked(bytes.slice(HEAD_bytes), LARGEST_FILE_bytes)), library);
  } catch (error) {
    return refused(error instanceof TooLarge ? 'too-large' : 'damaged');
  }
}

function sealed(body: Uint8Array): Uint8Array {
  const bytes = joined([Uint8Array.of(VERSION, 0, 0, 0, 0), body], HEAD_bytes + body.length);
  new DataView(bytes.buffer).setUint32(1, sumOf(bytes));
  return bytes;
}

function isWhole(bytes: Uint8Array): boolean {
  return new DataView(bytes.buffer).getUint32(1) === sumOf(bytes);
}

/** CRC-32 of all but itself. */
function sumOf(bytes: Uint8Array): number {
  return crc32(joined([bytes.slice(0, 1), bytes.slice(HEAD_bytes)], bytes.length - HEAD_bytes + 1));
}
