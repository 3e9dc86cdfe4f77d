/** What a row of the published table is to the test: the printed statement, and the property that is to bear it out. */
import type { UnitFault } from '../../../src/unit/index.ts';
import type { Life } from './life.ts';

/** A property before anything happens to it. */
export interface Setting {
  readonly unit: 'u1' | 'u2' | 'u3';
  readonly household: string;
  readonly temperature_C: number;
  /** Years since sludge was last removed. */
  readonly years: number;
  /** What is so on the sound property too: it makes a unit of ours into the one that a row is about. */
  readonly also: readonly Put[];
}

/** A fault of the catalogue as it is put into a property; its own severity and effect where nothing else is said. */
export interface Put {
  readonly fault: string;
  /** How the page calls it, where it is not just the catalogue's fault. */
  readonly called?: string;
  readonly severity?: number;
  readonly present?: UnitFault['present'];
  readonly effect?: UnitFault['effect'];
}

/** What happens to the property: faults and rain from the onset on; age and load of the sludge are there from the beginning. */
export interface Cause {
  readonly faults?: readonly Put[];
  readonly rain?: { readonly from_h: number; readonly hours: number; readonly depth_mm: number };
  /** The aeration chamber was pumped out at the onset. */
  readonly hauled?: boolean;
  /** Years since sludge was last removed, and so many times the household's BOD and solids. */
  readonly years?: number;
  readonly load?: number;
}

/** Something that can be found on a property: by a check, or in its state where no check of ours reads it. */
export interface Finding {
  readonly says: string | ((life: Life) => string);
  readonly holds: (life: Life) => boolean;
}

/** One cause that stands for a row: how it is put, when it is looked at, and what must then be found. */
export interface Line extends Partial<Setting> {
  readonly unit: Setting['unit'];
  /** Which of the causes that the row names, where it names several. */
  readonly of?: string;
  readonly put: Cause;
  /** Hours from the onset to the look. */
  readonly after_h: number;
  /** The symptom: found here, and not on the sound property. */
  readonly symptom: readonly Finding[];
  /** The test: found here, and not with any of `from` (the sound property where left out). */
  readonly test: readonly Finding[];
  readonly from?: readonly Cause[];
  readonly note?: string;
  /** Why the simulation does not bear the row out, where it does not. */
  readonly miss?: string;
}

/**
 * A printed row: its number, cause and test in our words, and where the table has it from. Its first line is the cause that
 * its test is printed for, and counts; other causes that it names have lines of their own.
 */
export interface Row {
  readonly no: number;
  readonly cause: string;
  readonly test: string;
  readonly tag: string;
  readonly lines: readonly [Line, ...Line[]];
}

export interface Heading {
  readonly name: string;
  readonly rows: readonly Row[];
}
