/**
 * Consistency-based diagnosis (Reiter 1987; de Kleer and Williams 1987). A conflict is a set of things that cannot all be
 * sound, given what was seen; a diagnosis is a minimal set that hits every conflict.
 */

/** Every minimal hitting set of the conflicts with at most so many members, small ones first. No conflict: the empty set. */
export function minimalHittingSets<T>(
  conflicts: readonly ReadonlySet<T>[],
  most = Number.POSITIVE_INFINITY,
): readonly (readonly T[])[] {
  let hitting: ReadonlySet<T>[] = [new Set()];
  for (const conflict of minimal(conflicts)) {
    const hit = hitting.filter((set) => overlaps(set, conflict));
    const missed = hitting.filter((set) => set.size < most && !overlaps(set, conflict));
    hitting = minimal([...hit, ...missed.flatMap((set) => [...conflict].map((item) => new Set([...set, item])))]);
  }
  return hitting.map((set) => [...set]);
}

/** The sets of which none other is a part, small ones first. */
function minimal<T>(sets: readonly ReadonlySet<T>[]): ReadonlySet<T>[] {
  const kept: ReadonlySet<T>[] = [];
  for (const set of [...sets].sort((a, b) => a.size - b.size)) {
    if (!kept.some((smaller) => isPartOf(smaller, set))) kept.push(set);
  }
  return kept;
}

function isPartOf<T>(small: ReadonlySet<T>, large: ReadonlySet<T>): boolean {
  for (const item of small) if (!large.has(item)) return false;
  return true;
}

function overlaps<T>(a: ReadonlySet<T>, b: ReadonlySet<T>): boolean {
  for (const item of a) if (b.has(item)) return true;
  return false;
}
