/**
 * A call left half way as a short text, for a platform that keeps 4,096 characters: all that was done, to be done again to
 * the same bits. Base64url of
 *
 *     1 byte      version of this form
 *     4 bytes     CRC-32 of all that follows
 *     2 bytes     how many actions, n
 *     32 bytes    the call's hash
 *     6 n bytes   the state after each action, as the record has it
 *     …           everything else as JSON without blanks, deflated (RFC 1951)
 *
 * What does not fit is left out from the end, whole actions at a time, and the text says so.
 */
import * as z from 'zod/mini';
import { type CallRecord, type Progress, progressSchema, recordSchema } from '../../calls/schema.ts';
import type { CallMode } from '../../calls/view.ts';
import { fromBase64url, toBase64url } from '../../share/base64url.ts';
import { crc32 } from '../../share/crc32.ts';
import { joined, packed, unpacked } from '../../share/pack.ts';
import { bytesOf, textOf } from '../../share/platform.ts';

export interface LeftCall {
  readonly call: string;
  readonly mode: CallMode;
  readonly progress: Progress;
  readonly assistance?: NonNullable<CallRecord['assistance']>;
}

const VERSION = 1;
const HEAD_bytes = 5;
const HASH_bytes = 32;
const STATE_bytes = 6;
/** Far more than a call of 2,000 actions. */
const MOST_bytes = 1_000_000;

/** Texts that stand in it more than once are written once; `a`: places of actions among them, `t`: ms since the one before. */
const columns = z.strictObject({
  e: z.string(),
  c: z.string(),
  m: recordSchema.shape.mode,
  n: z.int(),
  w: z.array(z.string()),
  a: z.array(z.int()),
  t: z.array(z.int()),
  f: z.array(z.tuple([z.int(), z.unknown()])),
  h: recordSchema.shape.assistance,
});

export interface PackedCall {
  readonly text: string;
  /** Actions that it holds; fewer than were done where the limit is too low. */
  readonly holds: number;
}

/** As much of a call as `most` characters hold. */
export async function packLeft(left: LeftCall, most: number): Promise<PackedCall> {
  const { actions } = left.progress;
  const whole = await textUpTo(left, actions.length);
  if (whole.length <= most) return { text: whole, holds: actions.length };
  let fits: PackedCall = { text: '', holds: 0 };
  let [low, high] = [0, actions.length - 1];
  while (low <= high) {
    const count = Math.floor((low + high) / 2);
    const text = await textUpTo(left, count);
    if (text.length > most) high = count - 1;
    else {
      fits = { text, holds: count };
      low = count + 1;
    }
  }
  return fits;
}

async function textUpTo({ call, mode, progress, assistance }: LeftCall, count: number): Promise<string> {
  const actions = progress.actions.slice(0, count);
  const words = [...new Set(actions.map((one) => one.do))];
  const body = await packed(
    bytesOf(
      JSON.stringify({
        e: progress.engine,
        c: call,
        m: mode,
        // Where something was left out the clock stands at the last action that is there.
        n: count === progress.actions.length ? progress.now_ms : (actions.at(-1)?.at_ms ?? 0),
        w: words,
        a: actions.map((one) => words.indexOf(one.do)),
        t: actions.map(({ at_ms }, i) => at_ms - (actions[i - 1]?.at_ms ?? 0)),
        f: actions.flatMap(({ fill }, i) => (fill === undefined ? [] : [[i, fill]])),
        h: assistance,
      }),
    ),
  );
  const states = actions.map(({ state }) => bytesOfHex(state));
  const number = Uint8Array.of(count >> 8, count & 0xff);
  const pieces = [number, bytesOfHex(progress.callHash), ...states, body];
  const rest = joined(pieces, 2 + HASH_bytes + STATE_bytes * count + body.length);
  const bytes = joined([Uint8Array.of(VERSION, 0, 0, 0, 0), rest], HEAD_bytes + rest.length);
  new DataView(bytes.buffer).setUint32(1, crc32(rest));
  return toBase64url(bytes);
}

/** What such a text holds; undefined where it is damaged, of a later form or somebody else's. */
export async function unpackLeft(text: string): Promise<LeftCall | undefined> {
  const bytes = fromBase64url(text);
  if (bytes === undefined || bytes.length < HEAD_bytes + 2 + HASH_bytes || bytes[0] !== VERSION) return undefined;
  const rest = bytes.slice(HEAD_bytes);
  if (new DataView(bytes.buffer).getUint32(1) !== crc32(rest)) return undefined;
  const count = ((rest[0] ?? 0) << 8) | (rest[1] ?? 0);
  const body = 2 + HASH_bytes + STATE_bytes * count;
  try {
    const read = columns.safeParse(JSON.parse(textOf(await unpacked(rest.slice(body), MOST_bytes))));
    if (!read.success) return undefined;
    const states = Array.from({ length: count }, (_, i) => {
      const at = 2 + HASH_bytes + STATE_bytes * i;
      return hexOf(rest.slice(at, at + STATE_bytes));
    });
    return callOf(read.data, hexOf(rest.slice(2, 2 + HASH_bytes)), states);
  } catch {
    return undefined;
  }
}

function callOf(
  { e, c, m, n, w, a, t, f, h }: z.infer<typeof columns>,
  callHash: string,
  states: readonly string[],
): LeftCall | undefined {
  const fills = new Map(f);
  let at_ms = 0;
  const actions = states.map((state, i) => {
    at_ms += t[i] ?? 0;
    const fill = fills.get(i);
    return { at_ms, do: w[a[i] ?? -1], ...(fill === undefined ? {} : { fill }), state };
  });
  const progress = progressSchema.safeParse({ engine: e, callHash, actions, now_ms: n });
  return progress.success ? { call: c, mode: m, progress: progress.data, ...(h ? { assistance: h } : {}) } : undefined;
}

/** Whether one is the other as far as it goes: the same engine, call and first actions. */
export function goesOnFrom(longer: Progress, shorter: Progress): boolean {
  const same = longer.engine === shorter.engine && longer.callHash === shorter.callHash;
  return (
    same &&
    shorter.actions.every(({ state, at_ms }, i) => {
      const one = longer.actions[i];
      return one?.state === state && one.at_ms === at_ms;
    })
  );
}

function bytesOfHex(hex: string): Uint8Array {
  return Uint8Array.from({ length: hex.length / 2 }, (_, i) => Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16));
}

function hexOf(bytes: Uint8Array): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
