/** When a sign was there that the untouched twin did not show. */
import type { Life } from './life.ts';
import { SIGN_IDS, type SignId } from './signs.ts';

export interface Times {
  readonly begins_s: number;
  readonly over_s?: number;
  readonly end_s: number;
}

export interface Spell {
  readonly sign: SignId;
  readonly from_s: number;
  /** When it was gone for good; nothing where it is there at the end. */
  readonly to_s?: number;
  /** It was gone for hours in between. */
  readonly cameAndWent: boolean;
}

/** A sign that was last seen so shortly before the end counts as there: it comes and goes with the hours of the day, s (convention). */
const LATELY_s = 86_400;
/** Looks that must have found it: what a single hour shows of the rest is the ordinary to and fro of a day (convention). */
const LOOKS: Readonly<Record<SignId, number>> = {
  sewage: 1,
  drains: 1,
  lamp: 1,
  clock: 1,
  germs: 3,
  smellIndoors: 2,
  smellOutdoors: 2,
  chlorine: 2,
  cloudy: 2,
  airless: 2,
};

export function spellsOf(touched: Life, twin: Life, { begins_s, end_s }: Times): Spell[] {
  return SIGN_IDS.flatMap((sign): Spell[] => {
    const extra = touched.signs[sign].map(
      (is, i) => is && twin.signs[sign][i] !== true && (touched.at_s[i] ?? 0) >= begins_s,
    );
    if (extra.filter(Boolean).length < LOOKS[sign]) return [];
    const first = extra.indexOf(true);
    const last = extra.lastIndexOf(true);
    const from_s = touched.at_s[first] ?? begins_s;
    const gone_s = touched.at_s[last + 1];
    const stays = gone_s === undefined || end_s - gone_s < LATELY_s;
    const cameAndWent = touched.signs[sign].slice(first, last).includes(false);
    return [{ sign, from_s, cameAndWent, ...(stays ? {} : { to_s: gone_s }) }];
  });
}
