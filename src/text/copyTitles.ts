/** Names for copies. However often a copy is copied, its name stays within what a fitting may be called. */
export const longestTitle = 200;

/** A name that is not taken yet: “Ruth (copy)”, then “Ruth (copy 2)”, whichever of them is copied. */
export function copyTitle(title: string, taken: readonly string[]): string {
  const base = title.replace(/ \(copy(?: \d+)?\)$/, "");
  for (let count = 1; ; count += 1) {
    const number = count === 1 ? "" : ` ${count}`;
    const name = base === "" ? `Copy${number}` : withEnding(base, ` (copy${number})`);
    if (!taken.includes(name)) return name;
  }
}

/** The same person measured again: the name with the day behind it. */
export function againTitle(title: string, day: string): string {
  const ending = `, ${day}`;
  return withEnding(title === "" ? "Fitting" : title.endsWith(ending) ? title.slice(0, -ending.length) : title, ending);
}

/** A name cut short where the ending would no longer fit, never through the middle of a character. */
const withEnding = (name: string, ending: string): string =>
  `${name.slice(0, longestTitle - ending.length).replace(/[\uD800-\uDBFF]$/, "")}${ending}`;
