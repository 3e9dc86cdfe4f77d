/** The jar of settled sludge for the picture of a call: as it was read. */
import { JAR_LIMITS_mLL, type JarVerdict, jarVerdict } from '../plant/index.ts';
import { JAR_min, type JarSeen } from '../service/index.ts';
import { lookOf, ORDINARY } from './ordinary.ts';
import type { JarScene } from './types.ts';

export type Jar = Omit<JarScene, 'ink'>;

const BANDS: Jar['bands'] = Object.entries(JAR_LIMITS_mLL).map(([verdict, to_mLL]) => ({
  verdict: verdict as JarVerdict,
  to_mLL,
}));

export const UNREAD: Jar = {
  minutes: JAR_min,
  settled_mLL: null,
  sludge: null,
  above: null,
  specks: false,
  floats: false,
  verdict: null,
  curve: [],
  bands: BANDS,
};

/** The jar as somebody read it: of its water an eye tells the colour and no more. */
export function jarSeen(seen: JarSeen | null): Jar {
  if (seen === null) return UNREAD;
  const { minutes, settled_mLL, liquor, above, specks, floats } = seen;
  return {
    ...UNREAD,
    ...{ minutes, settled_mLL, specks, floats },
    sludge: lookOf(liquor, ORDINARY.mixedLiquor),
    above: lookOf(above, ORDINARY.clarified),
    verdict: floats ? null : jarVerdict(settled_mLL),
  };
}
