/**
 * What this folder uses of the machine: streams that pack and unpack, and UTF-8, alike in Node and in every browser. What is
 * unpacked is the same bytes everywhere; what is packed may differ between machines, and each unpacks the other's.
 */
export interface Reader {
  read(): Promise<{ readonly done: boolean; readonly value?: Uint8Array }>;
  cancel(): Promise<void>;
}

interface Writer {
  write(bytes: Uint8Array): Promise<void>;
  close(): Promise<void>;
}

export interface Through {
  readonly readable: { getReader(): Reader };
  readonly writable: { getWriter(): Writer };
}

declare const CompressionStream: new (format: 'deflate-raw') => Through;
declare const DecompressionStream: new (format: 'deflate-raw') => Through;
declare const TextEncoder: new () => { encode(text: string): Uint8Array };
declare const TextDecoder: new (label: 'utf-8', options: { fatal: true }) => { decode(bytes: Uint8Array): string };

export const packing = (): Through => new CompressionStream('deflate-raw');
export const unpacking = (): Through => new DecompressionStream('deflate-raw');
export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
/** Throws where the bytes are no UTF-8. */
export const textOf = (bytes: Uint8Array): string => new TextDecoder('utf-8', { fatal: true }).decode(bytes);
