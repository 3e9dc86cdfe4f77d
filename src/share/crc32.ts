/** CRC-32 as in ISO-HDLC, the one of Ethernet and PNG: any change of up to 32 bits in a row shows. */
const POLYNOMIAL = 0xedb88320;

export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ POLYNOMIAL : crc >>> 1;
  }
  return ~crc >>> 0;
}
