/** What the picture shows of a jar of settled sludge. */
import type { JarVerdict } from '../plant/jar.ts';
import type { JarLine } from '../plant/jarCurve.ts';
import type { Ink, WaterLook } from './types.ts';

/** A litre of mixed liquor that was left to stand. */
export interface JarScene {
  readonly ink: Ink;
  /** How long it stood. */
  readonly minutes: number;
  /** How much of it is sludge, mL/L: 1000 where no line has formed, 0 where there is none to speak of. */
  readonly settled_mLL: number | null;
  readonly sludge: WaterLook | null;
  /** The water that has come clear, and whether fine specks stay in it. */
  readonly above: WaterLook | null;
  readonly specks: boolean;
  /** Gas has lifted the sludge. */
  readonly floats: boolean;
  /** What the reading asks for; null where it has no line to read. */
  readonly verdict: JarVerdict | null;
  /** The line as it came down, where somebody watched. */
  readonly curve: readonly JarLine[];
  /** Verdicts from the lowest up, and up to how much each goes, mL/L. */
  readonly bands: readonly { readonly verdict: JarVerdict; readonly to_mLL: number }[];
}
