/** A wrap before it is laid: so many turns over a run of levels. */
export interface WrapChoice {
  readonly first: number;
  readonly last: number;
  readonly turns: number;
}

/** Wraps that may be pinned together, innermost first, and how many turns that makes at each level. */
export interface WrapSet {
  readonly wraps: readonly WrapChoice[];
  readonly turns: readonly number[];
}

/** Every sensible way to wrap with at most two wraps, none of which goes beyond the most turns that a level may have. */
export function wrapSets(most: readonly number[]): readonly WrapSet[] {
  const levels = most.length;
  const single = mostRuns(most);
  const empty: WrapSet = { wraps: [], turns: most.map(() => 0) };
  const known = new Set<string>();
  const sets: WrapSet[] = [empty];
  const add = (wraps: readonly WrapChoice[]) => {
    const turns = Array.from({ length: levels }, (_, i) =>
      wraps.reduce((sum, { first, last, turns: count }) => sum + (i >= first && i <= last ? count : 0), 0),
    );
    const key = turns.join();
    if (known.has(key) || turns.some((count, i) => count > (most[i] as number))) return;
    known.add(key);
    sets.push({ wraps, turns });
  };
  for (const wrap of single) add([wrap]);
  for (const outer of single) {
    for (const inner of single) {
      const isWithin = inner.first >= outer.first && inner.last <= outer.last;
      const isApart = inner.first > outer.last;
      if ((isWithin && inner !== outer) || isApart) add([inner, outer]);
    }
  }
  return sets;
}

/** Every run of levels with every count of turns that all of them may have. */
function mostRuns(most: readonly number[]): readonly WrapChoice[] {
  return most.flatMap((_, first) =>
    most.slice(first).flatMap((_, i) => {
      const last = first + i;
      const turns = Math.min(...most.slice(first, last + 1));
      return Array.from({ length: turns }, (_, n): WrapChoice => ({ first, last, turns: n + 1 }));
    }),
  );
}
