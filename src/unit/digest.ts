/** One digest for states, files and records: SHA-256 over a canonical JSON text. */
import { sha256 } from '@noble/hashes/sha2.js';

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json | undefined };

/** JSON with sorted keys, no blanks, -0 as 0 and what is not finite as a word: equal values give equal text. */
export function canonical(value: Json | undefined): string {
  if (value === undefined || value === null) return 'null';
  if (typeof value === 'number') {
    if (Number.isNaN(value)) return '"NaN"';
    if (value === Number.POSITIVE_INFINITY || value === Number.NEGATIVE_INFINITY) return `"${value}"`;
    return JSON.stringify(value === 0 ? 0 : value);
  }
  if (typeof value !== 'object') return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map((v: Json) => canonical(v)).join(',')}]`;
  const record = value as { readonly [key: string]: Json | undefined };
  const keys = Object.keys(record)
    .filter((k) => record[k] !== undefined)
    .sort();
  return `{${keys.map((k) => `${JSON.stringify(k)}:${canonical(record[k])}`).join(',')}}`;
}

/** SHA-256 of a value's canonical JSON, hexadecimal. */
export function digest(value: Json): string {
  let hex = '';
  for (const byte of sha256(utf8(canonical(value)))) hex += (byte < 16 ? '0' : '') + byte.toString(16);
  return hex;
}

function utf8(text: string): Uint8Array {
  const bytes: number[] = [];
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    if (code < 0x80) bytes.push(code);
    else if (code < 0x800) bytes.push(0xc0 | (code >> 6), 0x80 | (code & 63));
    else if (code < 0x10000) bytes.push(0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
    else bytes.push(0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63));
  }
  return Uint8Array.from(bytes);
}
