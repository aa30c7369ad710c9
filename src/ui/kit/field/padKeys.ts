import type { LengthUnit } from "../../../core/lengthText";

/**
 * The pad beside a length field: whole inches and then eighths, or centimetres and then a half, a key at a time. Keys
 * work on the text of the field and know nothing of lengths, so whatever was typed by hand stays readable to them.
 */
export const digitKeys = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"] as const;
export const eighthKeys = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"] as const;
export const halfKeys = [".5"] as const;

export type PadKey =
  | (typeof digitKeys)[number]
  | (typeof eighthKeys)[number]
  | (typeof halfKeys)[number]
  | "back"
  | "clear";

/** The keys of the last row, which finish a length: parts of an inch, or half a centimetre. */
export const partKeys = (unit: LengthUnit): readonly PadKey[] => (unit === "in" ? eighthKeys : halfKeys);

/**
 * The text after a key. A field that was not touched since it was opened (`untouched`) starts anew at the first digit,
 * as does a length that already has its fraction; a part key takes the place of another one, and takes itself back.
 */
export function pressKey(text: string, key: PadKey, untouched: boolean): string {
  if (key === "clear") return "";
  if (key === "back") return withoutLast(text);
  const { whole, part } = splitText(text) ?? { whole: "", part: "" };
  if (isDigit(key)) return untouched || (part !== "" && part !== ".") ? key : `${whole}${part}${key}`;
  if (part === key) return whole;
  if (key === ".5") return `${whole === "" ? "0" : whole}${key}`;
  return whole === "" ? key : `${whole} ${key}`;
}

const isDigit = (key: PadKey): boolean => /^\d$/.test(key);

/** Whole number and part of a text the pad could have made; null when it was typed some other way. */
function splitText(text: string): { readonly whole: string; readonly part: string } | null {
  const match = /^\s*(\d*)(?:(\.\d*)|(?:^|\s+)(\d\/\d))?\s*$/.exec(text);
  return match ? { whole: match[1] ?? "", part: match[2] ?? match[3] ?? "" } : null;
}

function withoutLast(text: string): string {
  const split = splitText(text);
  if (split?.part.includes("/")) return split.whole;
  return text.trimEnd().slice(0, -1).trimEnd();
}
