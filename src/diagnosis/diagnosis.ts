/**
 * What the readings of a call still allow. Every hypothesis is a living twin of the property; each thing that was done is
 * done on the twins, and Bayes' rule weighs them by how well what they show fits what was seen. A twin that has become too
 * unlikely rests; it catches up should the others fall.
 */
import { SYMPTOMS, type SymptomId } from '../service/index.ts';
import { type Snapshot, snapshot, Unit } from '../unit/index.ts';
import { type Hypothesis, SOMETHING_ELSE } from './hypotheses.ts';
import { compared, DOUBT, isAlike, type Reading, type SideDifferences } from './reading.ts';
import { likelierBy, type ToldFact } from './told.ts';
import { type Deed, type Property, Twin } from './twin.ts';

/** A thing done on the property and what it brought; nothing where it told nothing. */
export interface Seen {
  readonly deed: Deed;
  readonly reading?: Reading;
}

export interface Suspect {
  readonly hypothesis: Hypothesis;
  readonly twin: Twin;
  weight: number;
  /** Of the things seen that it has been through: whether it showed what was read; nothing was read, nothing to show. */
  readonly shows: boolean[];
  /** What last differed on the side from what it showed. */
  differs: SideDifferences;
}

/** The question that brings what happened before. */
const ASKED = 'ask-history';
/** A suspect below this share of the whole rests. */
const RESTS = 1e-4;

/** A hypothesis at the report: where every diagnosis of a call begins. */
export interface Beginning {
  readonly hypothesis: Hypothesis;
  readonly at: Snapshot;
  /** Whether it shows what the household had noticed. */
  readonly fits: boolean;
}

/** Hears how many of the hypotheses have been lived through so far. */
export type Lived = (done: number, of: number) => void;

export interface Chance {
  readonly cause: string;
  readonly chance: number;
}

export class Diagnosis {
  readonly suspects: readonly Suspect[];
  private elseWeight: number = SOMETHING_ELSE.prior;
  private readonly seen: Seen[] = [];
  private readonly told: readonly ToldFact[];
  private asked = false;

  /** Weighs every hypothesis by what the household had noticed when it called; `noticed`: whether that was anything. */
  constructor(property: Property, beginnings: readonly Beginning[], noticed: boolean) {
    this.suspects = beginnings.map(({ hypothesis, at, fits }) => ({
      hypothesis,
      twin: new Twin(property, hypothesis.faults, at),
      weight: hypothesis.prior * (fits ? 1 : DOUBT),
      shows: [],
      differs: new Map(),
    }));
    if (noticed) this.elseWeight *= SOMETHING_ELSE.likelihood;
    this.told = property.told ?? [];
  }

  /** Takes in a thing done and what it brought. */
  observe(seen: Seen): void {
    this.seen.push(seen);
    if (seen.reading) this.elseWeight *= SOMETHING_ELSE.likelihood;
    if (seen.deed.id === ASKED && !this.asked) this.hear();
    this.catchUp();
  }

  /** What the household told counts once, for every suspect alike, those that rest too. */
  private hear(): void {
    this.asked = true;
    for (const suspect of this.suspects) suspect.weight *= likelierBy(this.told, suspect.hypothesis.cause);
  }

  /** The causes by falling chance, "something else" among them. */
  belief(): readonly Chance[] {
    const total = this.total();
    const chances = new Map<string, number>([[SOMETHING_ELSE.cause, this.elseWeight / total]]);
    for (const { hypothesis, weight } of this.suspects) {
      chances.set(hypothesis.cause, (chances.get(hypothesis.cause) ?? 0) + weight / total);
    }
    return [...chances].map(([cause, chance]) => ({ cause, chance })).sort((a, b) => b.chance - a.chance);
  }

  /** Share of the belief whose suspects are such. */
  shareOf(such: (suspect: Suspect) => boolean): number {
    return this.suspects.reduce((sum, s) => sum + (such(s) ? s.weight : 0), 0) / this.total();
  }

  /** The suspects that hold nearly all of the belief, at most so many, the likeliest first. */
  likeliest(most: number, share: number): readonly Suspect[] {
    const sorted = [...this.suspects].sort((a, b) => b.weight - a.weight);
    const total = this.total();
    let held = 0;
    const kept: Suspect[] = [];
    for (const suspect of sorted) {
      if (kept.length === most || held > share * total) break;
      kept.push(suspect);
      held += suspect.weight;
    }
    return kept;
  }

  /**
   * Whether the suspects of each cause showed what was read, step by step. All are brought up to now for it, those too that
   * rest: what is left must not hang on who was followed. A second or two of work after a long call.
   */
  accounts(): ReadonlyMap<string, readonly (readonly boolean[])[]> {
    const forms = new Map<string, (readonly boolean[])[]>();
    for (const suspect of this.suspects) {
      this.follow(suspect);
      const { cause } = suspect.hypothesis;
      forms.set(cause, [...(forms.get(cause) ?? []), suspect.shows]);
    }
    return forms;
  }

  private total(): number {
    return this.suspects.reduce((sum, s) => sum + s.weight, this.elseWeight);
  }

  /** Brings every suspect up to now that still matters; a weight can only fall on the way, so the total is taken anew. */
  private catchUp(): void {
    const behind = (s: Suspect) => s.shows.length < this.seen.length && s.weight > RESTS * this.total();
    for (let waiting = this.suspects.filter(behind); waiting.length > 0; waiting = this.suspects.filter(behind)) {
      const least = RESTS * this.total();
      for (const suspect of waiting.sort((a, b) => b.weight - a.weight)) this.follow(suspect, least);
    }
  }

  /** Up to now, or until it has become too unlikely to go on. */
  private follow(suspect: Suspect, least = 0): void {
    for (const { deed, reading } of this.seen.slice(suspect.shows.length)) {
      if (suspect.weight <= least) return;
      const expected = suspect.twin.follow(deed);
      if (!reading) {
        suspect.shows.push(true);
        continue;
      }
      const { fit, news, differs } = compared(suspect.differs, reading, expected);
      suspect.shows.push(isAlike(fit));
      suspect.weight *= news;
      suspect.differs = differs;
    }
  }
}

/** Lives through every hypothesis up to the report: seconds of work. */
export function beginningsOf(
  property: Property,
  hypotheses: readonly Hypothesis[],
  noticed: readonly SymptomId[],
  lived: Lived = () => {},
): readonly Beginning[] {
  const past = soundPast(property, hypotheses);
  return hypotheses.map((hypothesis, done) => {
    lived(done, hypotheses.length);
    const [first] = hypothesis.faults;
    const { unit } = new Twin(property, hypothesis.faults, first && past.get(first.onset_s));
    return { hypothesis, at: snapshot(unit), fits: noticed.every((symptom) => SYMPTOMS[symptom](unit)) };
  });
}

/** Snapshots of the sound property just before each onset. */
function soundPast(property: Property, hypotheses: readonly Hypothesis[]): ReadonlyMap<number, Snapshot> {
  const sound = new Unit({ ...property.setup, faults: [] });
  if (property.left) sound.resume(property.left);
  const onsets = [...new Set(hypotheses.flatMap((h) => h.faults.map((f) => f.onset_s)))].sort((a, b) => a - b);
  const past = new Map<number, Snapshot>();
  for (const onset of onsets) {
    sound.cutAt(Math.max(sound.t, onset - 1));
    past.set(onset, snapshot(sound));
  }
  return past;
}
