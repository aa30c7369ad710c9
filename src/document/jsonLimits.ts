/**
 * What a text of JSON may at most hold: characters (white space between the values not counted), levels of nesting,
 * values in all, names in one object. They are counted in the text itself, before anything is built from it: a few megabytes can stand for
 * millions of values, which take a page minutes to look through.
 */
export interface JsonSize {
  readonly characters: number;
  readonly depth: number;
  readonly values: number;
  readonly names: number;
}

/** The limits of one fitting. */
export const jsonLimits: JsonSize = { characters: 4_000_000, depth: 16, values: 300_000, names: 2_000 };

export type JsonLimit = keyof JsonSize;

/** Which limit a text breaks first, or null. Counting ends there. A text that is no JSON is counted as if it were. */
export function brokenJsonLimit(text: string, most: JsonSize = jsonLimits): JsonLimit | null {
  const size = jsonSize(text, most);
  if (size.depth > most.depth) return "depth";
  if (size.values > most.values) return "values";
  if (size.names > most.names) return "names";
  return size.characters > most.characters ? "characters" : null;
}

/** The size of a text of JSON, counted up to the first limit it breaks. Every comma and every bracket counts a value. */
export function jsonSize(text: string, most: JsonSize): JsonSize {
  const namesAt: number[] = [];
  let [characters, depth, values, names] = [0, 0, 1, 0];
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charCodeAt(at);
    if (sign <= space) continue;
    characters += 1;
    if (sign === quote) {
      const end = stringEnd(text, at);
      characters += end - at;
      at = end;
    } else if (sign === comma) {
      values += 1;
    } else if (sign === colon) {
      namesAt.push((namesAt.pop() ?? 0) + 1);
      names = Math.max(names, namesAt.at(-1) ?? 0);
    } else if (sign === openList || sign === openObject) {
      values += 1;
      depth = Math.max(depth, namesAt.push(0));
    } else if (sign === closeList || sign === closeObject) {
      namesAt.pop();
    }
    if (characters > most.characters || depth > most.depth || values > most.values || names > most.names) break;
  }
  return { characters, depth, values, names };
}

const [quote, comma, colon, backslash, space] = [0x22, 0x2c, 0x3a, 0x5c, 0x20];
const [openList, closeList, openObject, closeObject] = [0x5b, 0x5d, 0x7b, 0x7d];

/** Where the string that opens here is closed; the last sign of a text that leaves it open. */
function stringEnd(text: string, open: number): number {
  let end = text.indexOf('"', open + 1);
  while (end > 0 && isEscaped(text, end, open)) end = text.indexOf('"', end + 1);
  return end < 0 ? text.length - 1 : end;
}

function isEscaped(text: string, at: number, open: number): boolean {
  let before = at - 1;
  while (before > open && text.charCodeAt(before) === backslash) before -= 1;
  return (at - 1 - before) % 2 === 1;
}
