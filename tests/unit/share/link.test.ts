import { Buffer } from 'node:buffer';
import { crc32, deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { type CallFile, shippedCalls, shippedLibrary } from '../../../src/calls/index.ts';
import { LONGEST_LINK, linkOf, openLink } from '../../../src/share/index.ts';

const library = shippedLibrary();
const shipped = shippedCalls().map((call) => [call.id, call] as const);
const call = shippedCalls().find((c) => c.id === 'storm-light') as CallFile;

async function fragmentOf(call: CallFile): Promise<string> {
  const link = await linkOf(call);
  if (!link.ok) throw new Error(`too long: ${link.length}`);
  return link.fragment;
}

/** A link as another program might make it, by Node's own deflate, checksum and base64. */
function made(text: string, version = 1): string {
  const body = deflateRawSync(text);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(Buffer.concat([Buffer.of(version), body])));
  return `#/take/${Buffer.concat([Buffer.of(version), sum, body]).toString('base64url')}`;
}

async function whyNot(link: string): Promise<string> {
  const read = await openLink(link, library);
  return read.ok ? 'taken' : read.why.id;
}

describe.each(shipped)('the link of %s', (_id, call) => {
  it('opens the same call, and is short enough to be handed on', async () => {
    const fragment = await fragmentOf(call);
    expect(fragment).toMatch(/^#\/take\/[\w-]+$/);
    expect(fragment.length).toBeLessThan(3000);
    expect(await openLink(fragment, library)).toEqual({ ok: true, file: call });
  });
});

describe('a link', () => {
  it('is read from a whole address, from its end, and from its letters', async () => {
    const fragment = await fragmentOf(call);
    const taken = { ok: true, file: call };
    expect(await openLink(`https://example.org/u/${fragment}\n`, library)).toEqual(taken);
    expect(await openLink(fragment.slice('#/take/'.length), library)).toEqual(taken);
  });

  it('is the same whatever the order of the keys', async () => {
    const { id, solution, ...more } = call;
    expect(await fragmentOf({ solution, ...more, id })).toBe(await fragmentOf(call));
  });

  it('made by another program to the same form is taken', async () => {
    expect(await openLink(made(JSON.stringify(call)), library)).toEqual({ ok: true, file: call });
  });

  it('of a set of calls opens all of them', async () => {
    const calls = shippedCalls().slice(0, 2);
    const set = { set: 1 as const, title: { en: 'Week one', es: 'Semana uno' }, calls };
    const link = await linkOf(set);
    expect(await openLink(link.ok ? link.fragment : '', library)).toEqual({ ok: true, file: set });
  });

  it('is refused as damaged with any one letter changed', async () => {
    const fragment = await fragmentOf(call);
    const start = '#/take/'.length;
    // The next letter differs in the lowest bit or few; the others in bits all over.
    const swaps: Readonly<Record<string, string>> = { A: 'B', '-': '_', _: '-' };
    for (let at = start; at < fragment.length; at++) {
      const letter = fragment.charAt(at);
      const next = swaps[letter] ?? String.fromCharCode(letter.charCodeAt(0) ^ 1);
      for (const other of [next, 'A', 'z', '.']) {
        if (other === letter) continue;
        const changed = fragment.slice(0, at) + other + fragment.slice(at + 1);
        expect(await whyNot(changed), `${at}: ${letter} to ${other}`).toBe('share.damaged');
      }
    }
  });

  it('is refused as damaged wherever it is cut off, and with something behind it', async () => {
    const fragment = await fragmentOf(call);
    for (let end = '#/take/'.length; end < fragment.length; end++) {
      expect(await whyNot(fragment.slice(0, end)), `cut at ${end}`).toBe('share.damaged');
    }
    for (const more of ['A', '.', '==', '&x=1']) expect(await whyNot(fragment + more)).toBe('share.damaged');
    expect(await whyNot('')).toBe('share.damaged');
  });

  it('that unpacks into far more than a call, or is far longer than one, is refused by its size', async () => {
    const bomb = made(' '.repeat(60_000_000));
    expect(bomb.length).toBeLessThan(100_000);
    expect(await whyNot(bomb)).toBe('share.too-large');
    expect(await whyNot('A'.repeat(1_000_001))).toBe('share.too-large');
  });

  it('of a newer form, or of a newer kind of call, is told from a damaged one', async () => {
    expect(await whyNot(made(JSON.stringify(call), 2))).toBe('share.newer');
    expect(await whyNot(made(JSON.stringify({ ...call, version: 2 })))).toBe('share.newer');
    expect(await whyNot(made(JSON.stringify({ set: 2, parts: [] })))).toBe('share.newer');
  });

  it('that holds no call is refused with what to mend', async () => {
    const read = await openLink(made(JSON.stringify({ ...call, household: 'castle' })), library);
    expect(read).toMatchObject({ ok: false, why: { id: 'share.not-a-call' }, problems: [{ path: 'household' }] });
    for (const text of ['', '7', 'null', '[]', '"call"', '{"set":1', '{}']) {
      expect(await whyNot(made(text))).toBe('share.not-a-call');
    }
  });

  it('whose letters are no text, or do not unpack, is refused as damaged', async () => {
    const sealed = (body: Buffer) => {
      const sum = Buffer.alloc(4);
      sum.writeUInt32BE(crc32(Buffer.concat([Buffer.of(1), body])));
      return `#/take/${Buffer.concat([Buffer.of(1), sum, body]).toString('base64url')}`;
    };
    expect(await whyNot(sealed(Buffer.from([0xff, 0xff, 0xff])))).toBe('share.damaged');
    expect(await whyNot(sealed(deflateRawSync(Buffer.from([0xc3, 0x28]))))).toBe('share.damaged');
    expect(await whyNot(sealed(deflateRawSync(JSON.stringify(call)).subarray(0, 400)))).toBe('share.damaged');
  });

  it('that would be too long is not made: the call goes by file', async () => {
    let seed = 7;
    const noise = (length: number) =>
      Array.from({ length }, () => {
        seed = (seed * 1103515245 + 12345) % 2147483648;
        return String.fromCharCode(97 + (seed % 26));
      }).join('');
    const text = () => ({ en: noise(1990), es: noise(1990) });
    const long = { ...call, story: text(), summary: text(), lot: text() };
    const link = await linkOf(long);
    expect(link).toEqual({ ok: false, length: expect.any(Number) });
    expect(link.ok ? 0 : link.length).toBeGreaterThan(LONGEST_LINK);
  });
});
