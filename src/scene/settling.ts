/** The jar of settled sludge with everything open: as the liquor of an instant would settle. */
import { followJar, jarVerdict, sludgeRises } from '../plant/index.ts';
import { JAR_min } from '../service/index.ts';
import type { Readout } from '../unit/index.ts';
import { type Jar, UNREAD } from './jar.ts';
import { ORDINARY } from './ordinary.ts';

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
