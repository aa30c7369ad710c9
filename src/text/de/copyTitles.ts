import { longestTitle } from "../copyTitles";

export { longestTitle } from "../copyTitles";

/** Names made by the English page are known as copies too. */
export function copyTitle(title: string, taken: readonly string[]): string {
  const base = title.replace(/ \((?:Kopie|copy)(?: \d+)?\)$/, "");
  for (let count = 1; ; count += 1) {
    const number = count === 1 ? "" : ` ${count}`;
    const name = base === "" ? `Kopie${number}` : withEnding(base, ` (Kopie${number})`);
    if (!taken.includes(name)) return name;
  }
}

export function againTitle(title: string, day: string): string {
  const ending = `, ${day}`;
  return withEnding(title === "" ? "Anprobe" : title.endsWith(ending) ? title.slice(0, -ending.length) : title, ending);
}

const withEnding = (name: string, ending: string): string =>
  `${name.slice(0, longestTitle - ending.length).replace(/[\uD800-\uDBFF]$/, "")}${ending}`;
