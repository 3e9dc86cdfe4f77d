/** The page that opens one call on a platform: the built page, told by one line in its head how it was launched. */
import type { PackedActivity } from './course.ts';
import { PACKED_MODES, type PackedMode, PLATFORMS, type Platform } from './platforms.ts';

/** Name of the line in the page's head. */
export const LAUNCHED = 'underlawn-course';

export interface LaunchedBy {
  readonly as: Platform;
  readonly call: string;
  readonly mode: PackedMode;
  readonly uuid: string;
  /** The call's own file within the package, where it does not ship. */
  readonly file?: string;
}

const HEAD = '<meta charset="utf-8" />';
const OWN_HOST = "connect-src 'self'";

/** What an installed page goes by; a package is the platform's, and installs nothing. */
const INSTALLED = /\n *<link rel="(?:manifest|apple-touch-icon)"[^>]*>/g;
/** Files of the built page that only serve one that is installed or works without a network. */
export const NOT_PACKED = /^(?:sw\.js|underlawn\.webmanifest|icons\/.*)$/;

/**
 * The entry page of an activity from the built page. Only cmi5 speaks to another host, whichever the platform names at the
 * launch, so only there the page's policy lets it.
 */
export function entryPage(
  page: string,
  as: Platform,
  activity: PackedActivity,
  mode: PackedMode,
  file?: string,
): string {
  const { call, uuid } = activity;
  const launched: LaunchedBy = { as, call, mode, uuid, ...(file === undefined ? {} : { file }) };
  const line = `<meta name="${LAUNCHED}" content="${JSON.stringify(launched).replaceAll('"', '&quot;')}" />`;
  if (!page.includes(HEAD) || !page.includes(OWN_HOST)) throw new Error('the built page has no such head');
  const told = page.replaceAll(INSTALLED, '').replace(HEAD, `${HEAD}\n    ${line}`);
  return as === 'cmi5' ? told.replace(OWN_HOST, `${OWN_HOST} https: http:`) : told;
}

/** How a page was launched; undefined where the line is not one of ours. */
export function readLaunched(content: string): LaunchedBy | undefined {
  try {
    const { as, call, mode, uuid, file } = JSON.parse(content) as Readonly<Record<string, unknown>>;
    const [platform, taken] = [PLATFORMS.find((one) => one === as), PACKED_MODES.find((one) => one === mode)];
    if (!platform || !taken || typeof call !== 'string' || typeof uuid !== 'string') return undefined;
    return { as: platform, call, mode: taken, uuid, ...(typeof file === 'string' ? { file } : {}) };
  } catch {
    return undefined;
  }
}
