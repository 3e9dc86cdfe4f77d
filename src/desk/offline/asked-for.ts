import { DOCUMENT, isNamedByContent, type Listing } from './listing.ts';

/**
 * What of the page a request is for: its document, or the path of one of its files; undefined for all else on the host,
 * which is none of ours. A query does not change the document: some hosts and links add one.
 */
export function askedFor(
  { method, mode, url }: Pick<Request, 'method' | 'mode' | 'url'>,
  base: string,
  { files }: Pick<Listing, 'files'>,
): string | undefined {
  const [address = '', query] = (url.split('#')[0] ?? '').split('?');
  if (method !== 'GET' || !address.startsWith(base)) return undefined;
  const path = address.slice(base.length);
  if (mode === 'navigate') return path === '' || path === DOCUMENT ? DOCUMENT : undefined;
  if (query !== undefined) return undefined;
  // A file of an older version is not listed here, and may still be kept.
  return isNamedByContent(path) || files.some((file) => file.path === path) ? path : undefined;
}
