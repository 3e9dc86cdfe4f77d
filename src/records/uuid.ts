/** Names made into identifiers: the same name always the same, on every machine (RFC 9562, section 5.5, version 5). */
import { sha1 } from '@noble/hashes/legacy.js';
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js';
import { bytesOf } from '../share/platform.ts';

/** Everything that is named here without a name of somebody's own above it. Drawn once by chance; never to be changed. */
export const UNDERLAWN = '6f0c6a1e-35b7-4c0b-9f1e-2f7d3a8b5c94';

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

export function isUuid(text: string): boolean {
  return UUID.test(text);
}

/** The identifier of a name within a namespace, which is one itself. */
export function uuid5(namespace: string, name: string): string {
  if (!isUuid(namespace)) throw new Error(`"${namespace}" is no UUID`);
  const [space, own] = [hexToBytes(namespace.replaceAll('-', '').toLowerCase()), bytesOf(name)];
  const both = new Uint8Array(space.length + own.length);
  both.set(space);
  both.set(own, space.length);
  const bytes = sha1(both).slice(0, 16);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = bytesToHex(bytes);
  return [
    [0, 8],
    [8, 12],
    [12, 16],
    [16, 20],
    [20, 32],
  ]
    .map(([from, to]) => hex.slice(from, to))
    .join('-');
}
