/**
 * The known name a mistyped one most likely meant, or null when none is near: the same letters in other case first,
 * then one that begins with it or holds it, then the fewest letters changed.
 */
export function nearestName(typed: string, known: readonly string[]): string | null {
  const wanted = letters(typed.slice(0, longestTyped));
  const same = known.find((name) => letters(name) === wanted);
  const part =
    wanted.length < 3
      ? undefined
      : (known.find((name) => letters(name).startsWith(wanted)) ??
        known.find((name) => letters(name).includes(wanted)));
  return same ?? part ?? fewestChanges(wanted, known);
}

/** Whether a word of at least four letters is within two letters of a name. */
export const isSlip = (typed: string, name: string): boolean =>
  typed.length >= 4 && typed.length <= longestTyped && changesBetween(typed, name) <= 2;

const longestTyped = 60;

const letters = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");

function fewestChanges(wanted: string, known: readonly string[]): string | null {
  const best = known
    .map((name) => ({ name, changes: changesBetween(wanted, letters(name)) }))
    .reduce((least, next) => (next.changes < least.changes ? next : least), {
      name: "",
      changes: Math.floor(wanted.length / 2) + 1,
    });
  return best.name === "" ? null : best.name;
}

/** Letters to insert, drop or exchange to turn one word into the other (Levenshtein's distance, one row at a time). */
function changesBetween(one: string, other: string): number {
  const row = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i += 1) {
    let diagonal = i - 1;
    row[0] = i;
    for (let j = 1; j <= other.length; j += 1) {
      const [above, before] = [row[j] ?? 0, row[j - 1] ?? 0];
      row[j] = Math.min(above + 1, before + 1, diagonal + (one[i - 1] === other[j - 1] ? 0 : 1));
      diagonal = above;
    }
  }
  return row[other.length] ?? 0;
}
