/** Base64 in the alphabet that an address bears, without padding (RFC 4648, section 5). */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const word = (a << 16) | (b << 8) | c;
    const letters = [18, 12, 6, 0].map((shift) => LETTERS.charAt((word >> shift) & 63)).join('');
    text += letters.slice(0, Math.min(4, bytes.length - at + 1));
  }
  return text;
}

/** Undefined where a letter is none, or where the text is not the one that these bytes are written as. */
export function fromBase64url(text: string): Uint8Array | undefined {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let word = 0;
  let bits = 0;
  let at = 0;
  for (const letter of text) {
    const value = LETTERS.indexOf(letter);
    if (value < 0) return undefined;
    word = ((word << 6) | value) & 0xffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at] = (word >> bits) & 0xff;
    at += 1;
  }
  // A letter left over, or bits that no byte uses: another text of the same bytes, so somebody changed it.
  return bits < 6 && (word & ((1 << bits) - 1)) === 0 ? bytes : undefined;
}
