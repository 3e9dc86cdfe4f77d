import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Draft, Json } from '../../build/draft.ts';
import type { Step } from '../../build/steps.ts';
import type { Problem } from '../../calls/problems.ts';
import type { PartId } from '../../scene/types.ts';
import type { Looked, OfferedFault } from './protocol.ts';
import type { LookLine } from './use-looker.ts';
import type { Proving } from './use-prover.ts';

/** What the parts of Build share. */
export interface BuildState {
  readonly draft: Draft;
  readonly looked: Looked | undefined;
  readonly busy: boolean;
  readonly line: LookLine | null;
  readonly proving: Proving;
  /** The part of the picture whose faults are listed; all where none is chosen. */
  readonly part: PartId | null;
  choosePart(part: PartId | null): void;
  /** The fault that is being dragged. */
  readonly dragged: OfferedFault | null;
  drag(fault: OfferedFault | null): void;
  readonly step: Step;
  go(step: Step): void;
  /** Place of the fault that is worked on. */
  readonly fault: number;
  chooseFault(place: number): void;
  /** The instant that the picture shows, s of the days; none before they were looked at. */
  readonly at_s: number | undefined;
  show(at_s: number): void;
  set(path: string, value: Json | undefined, typed?: boolean): void;
  keep(): Promise<void>;
}

export const BuildContext = createContext<BuildState | null>(null);

export function useBuild(): BuildState {
  const state = useContext(BuildContext);
  if (state === null) throw new Error('no draft is open');
  return state;
}

/** Problems at a path and below it; `own`: only at the path itself. */
export function problemsAt(looked: Looked | undefined, path: string, own = false): readonly Problem[] {
  const below = (one: string) => one.startsWith(`${path}.`) || one.startsWith(`${path}[`);
  return (looked?.problems ?? []).filter((one) => one.path === path || (!own && below(one.path)));
}
