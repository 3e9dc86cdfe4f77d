/** Walks a promise on a panel that breaks it, and tells which path caught the error. */
import { PROMISES } from './promises.ts';
import { spoiled } from './spoiled.ts';
import { SOUND } from './vocabulary.ts';
import { walk } from './walk.ts';
import type { WiringError } from './wiring-error.ts';

export interface Caught {
  readonly error: WiringError;
  readonly paths: number;
  /** Generated paths that failed, and the shortest of them up to where it did. */
  readonly failed: number;
  readonly path: readonly string[];
  /** The shortest of all sequences of events that show the error, and what was seen at its end. */
  readonly shortest: readonly string[];
  readonly seen: string;
}

export function catching(error: WiringError): Caught {
  const { unit, breaks, fault = SOUND, spoil } = error;
  const promised = PROMISES.find((p) => p.name === breaks && p.unit === unit);
  if (!promised) throw new Error(`${unit} has no promise "${breaks}"`);
  const { row, failures, shortest } = walk(promised, fault, spoiled(unit, spoil));
  return {
    error,
    paths: row.paths,
    failed: failures.length,
    path: failures[0]?.path ?? [],
    shortest: shortest?.path ?? [],
    seen: shortest?.problems[0] ?? '',
  };
}

export function caughtLines({ error, paths, failed, path, shortest, seen }: Caught): string[] {
  return [
    `${error.error} (${error.unit}; ${error.breaks}, ${error.fault ?? SOUND}): ${failed} of ${paths} paths`,
    `    ${(failed > 0 ? path : shortest).join(' > ')}`,
    `    ${seen}`,
  ];
}
