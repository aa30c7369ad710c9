/** `die Taille, die hohe Hüfte und die Hüfte`; with another joining word, `oder`. */
export const listed = (words: readonly string[], joined = "und"): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${joined} ${words.at(-1) ?? ""}`;

const counts: readonly (string | undefined)[] = [undefined, undefined, "zwei", "drei", "vier", "fünf", "sechs"];

/** A count as a word as far as six, for things of more than one. */
export const countWord = (count: number): string => counts[count] ?? String(count);
