/** What a file may at most hold before anything reads it: characters of text, levels of nesting, values in all. */
export const jsonLimits = { characters: 4_000_000, depth: 16, values: 300_000 } as const;

/** Which limit a value breaks, or null. It walks with a list of its own, so that no nesting can exhaust the stack. */
export function brokenJsonLimit(file: unknown): "depth" | "values" | "characters" | null {
  const left: { readonly value: unknown; readonly depth: number }[] = [{ value: file, depth: 0 }];
  let [values, characters] = [0, 0];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    values += 1;
    if (typeof next.value === "string") characters += next.value.length;
    if (values + left.length > jsonLimits.values) return "values";
    if (characters > jsonLimits.characters) return "characters";
    if (typeof next.value !== "object" || next.value === null) continue;
    if (next.depth >= jsonLimits.depth) return "depth";
    for (const [key, value] of Object.entries(next.value)) {
      characters += key.length;
      left.push({ value, depth: next.depth + 1 });
    }
  }
  return null;
}
