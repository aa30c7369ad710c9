import type { PatternPart } from "../../core/pattern/patternPart";
import { letters } from "./letters";

/**
 * A short name for every seam, by the id of each of its edges: edges that are sewn to one another have the same one. Seams are named in
 * the order of the parts, A to Z, then AA.
 */
export function seamNames(parts: readonly Pick<PatternPart, "edges">[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  let count = 0;
  for (const { id, sewnTo } of parts.flatMap(({ edges }) => edges)) {
    if (sewnTo === null || names.has(id)) continue;
    const name = letters(count++);
    names.set(id, name).set(sewnTo, name);
  }
  return names;
}
