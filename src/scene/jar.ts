/** The jar of settled sludge for the picture: as it was read, or as the liquor of an instant would settle. */
import { followJar, JAR_LIMITS_mLL, type JarVerdict, jarVerdict, sludgeRises } from '../plant/index.ts';
import { JAR_min, type JarSeen } from '../service/index.ts';
import type { Readout } from '../unit/index.ts';
import { lookOf, ORDINARY } from './ordinary.ts';
import type { JarScene } from './types.ts';

type Jar = Omit<JarScene, 'ink'>;

const BANDS: Jar['bands'] = Object.entries(JAR_LIMITS_mLL).map(([verdict, to_mLL]) => ({
  verdict: verdict as JarVerdict,
  to_mLL,
}));

const UNREAD: Jar = {
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

/** How often the line is read on its way down. */
const TIMES = 10;
/** Steps of solids, mg/L, and volume index, mL/g, that move the line by less than the jar's own mark. */
const SOLIDS_mgL = 25;
const INDEX_mLg = 2;
/** Jars that are kept: of several homes side by side, and of some time about an instant. */
const MOST_KEPT = 24;

const kept = new Map<string, ReturnType<typeof followJar>>();

/** A jar is computed in layers, which takes some milliseconds, and liquor changes in hours: each is kept a while. */
function settled(solids_mgL: number, index_mLg: number): ReturnType<typeof followJar> {
  const key = `${solids_mgL}|${index_mLg}`;
  const jar = kept.get(key) ?? followJar({ solids_mgL, index_mLg, nitrate_mgL: 0, oxygen_mgL: 0 }, JAR_min, TIMES);
  kept.delete(key);
  kept.set(key, jar);
  for (const oldest of [...kept.keys()].slice(0, kept.size - MOST_KEPT)) kept.delete(oldest);
  return jar;
}

const stepped = (value: number, step: number) => Math.round(value / step) * step;

/** What a jar drawn at this instant would show after half an hour. */
export function jarOf({ liquor, hoursWithoutOxygen, sensed }: Readout): Jar {
  const { reading, curve } = settled(stepped(liquor.solids_mgL, SOLIDS_mgL), stepped(liquor.index_mLg, INDEX_mLg));
  const floats = sludgeRises(liquor, JAR_min);
  return {
    ...UNREAD,
    settled_mLL: reading.settled_mLL,
    sludge: {
      ...ORDINARY.mixedLiquor,
      solids_mgL: liquor.solids_mgL,
      oxygen_mgL: liquor.oxygen_mgL,
      hoursWithoutOxygen,
    },
    above: { ...ORDINARY.clarified, solids_mgL: reading.above_mgL },
    specks: sensed.specks,
    floats,
    verdict: floats ? null : jarVerdict(reading.settled_mLL),
    curve,
  };
}
