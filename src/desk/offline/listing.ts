/** What a version of the page is made of, written into its service worker when it is built (`tools/offline.ts`). */
export interface Listing {
  /** Digest of all the rest. */
  readonly version: string;
  /** Digest of what every call stands on: the engine, units, households, climates, the round. */
  readonly grounds: string;
  /** Digest of each shipped call's file, by its id. */
  readonly calls: Readonly<Record<string, string>>;
  /** Every file the page can ever fetch. */
  readonly files: readonly ListedFile[];
}

export interface ListedFile {
  /** Below the folder that the page lies in. */
  readonly path: string;
  readonly bytes: number;
  /** The first digits of its SHA-256. */
  readonly digest: string;
}

/** The document; all deep links are behind its hash. */
export const DOCUMENT = 'index.html';

/** Whether a file's name says what is in it, so that the same name is the same file in every version. */
export function isNamedByContent(path: string): boolean {
  return path.startsWith('assets/');
}

const DIGITS = 16;

/** As `ListedFile.digest`. */
export async function digestOf(bytes: BufferSource): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...sum.subarray(0, DIGITS / 2)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function sizeOf({ files }: Pick<Listing, 'files'>): number {
  return files.reduce((sum, { bytes }) => sum + bytes, 0);
}
