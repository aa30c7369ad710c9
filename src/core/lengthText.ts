import { err, ok, type Result } from "./result";
import { mm, type Millimetres } from "./units";

/**
 * The only place where text meets length. People write `38 1/2`, `38½`, `38-1/2"`, `38.5 in`, `97,8 cm` or `978 mm`;
 * a bare number means the unit they chose. What is read is kept to a thousandth of a millimetre, so that one length
 * written in inches and in centimetres is the same length.
 */
export const lengthUnits = ["cm", "in", "mm"] as const;
export type LengthUnit = (typeof lengthUnits)[number];

/** How finely a length is written: the unit and the step it is rounded to, which only make sense together. */
export const lengthSteps = {
  "1/8 in": { unit: "in", parts: 8 },
  "1/16 in": { unit: "in", parts: 16 },
  "1/32 in": { unit: "in", parts: 32 },
  "0.5 cm": { unit: "cm", parts: 2 },
  "0.1 cm": { unit: "cm", parts: 10 },
  "1 mm": { unit: "mm", parts: 1 },
  "0.1 mm": { unit: "mm", parts: 10 },
} as const satisfies { readonly [step: string]: { readonly unit: LengthUnit; readonly parts: number } };
export type LengthStep = keyof typeof lengthSteps;

/** The step a tape at home is read to, for each unit, and the finer step for thin things such as one layer. */
export const tapeStep = { in: "1/8 in", cm: "0.5 cm", mm: "1 mm" } as const satisfies ByUnit<LengthStep>;
export const fineStep = { in: "1/16 in", cm: "0.1 cm", mm: "1 mm" } as const satisfies ByUnit<LengthStep>;
type ByUnit<Value> = { readonly [unit in LengthUnit]: Value };

/**
 * Why a text is not a length. `read` is the text as it was read (shortened when long) and `unit` what a bare number
 * would have meant. An ambiguous text has two readings that are both possible, as `1,005 mm` has.
 */
export type LengthProblem = { readonly read: string; readonly unit: LengthUnit } & (
  | { readonly code: "empty" | "notALength" | "badFraction" | "notPositive" }
  | { readonly code: "unknownUnit"; readonly unitRead: string }
  | { readonly code: "tooLong"; readonly longest: Millimetres }
  | { readonly code: "ambiguous"; readonly either: Millimetres; readonly or: Millimetres }
);

/** No tape and nobody's measurement reaches this far. */
const longestLength: Millimetres = mm(10_000);

/** Reads a length as people write it; a bare number is in `unit`. Zero and less are not lengths. */
export function parseLength(text: string, unit: LengthUnit): Result<Millimetres, LengthProblem> {
  const problem = { read: shortened(text), unit };
  const plain = plainText(text.slice(0, longestText + 1));
  if (plain === "") return err({ ...problem, code: "empty" });
  const parts = plain.length > longestText ? null : /^(-?)([\d.,/ -]*\d[.,]?)\s*((?:[a-z"'′]\D*)?)$/u.exec(plain);
  if (!parts) return err({ ...problem, code: "notALength" });
  const [minus, amountText, unitRead] = parts.slice(1) as [string, string, string];

  const own = unitRead === "" ? unit : unitOf(unitRead);
  if (!own) return err({ ...problem, code: "unknownUnit", unitRead });
  const amount = amountOf(amountText);
  if (typeof amount !== "number") return err({ ...problem, code: amount });
  const length = toMillimetres(amount, own);
  if (minus !== "" || length <= 0) return err({ ...problem, code: "notPositive" });
  if (length > longestLength) return err({ ...problem, code: "tooLong", longest: longestLength });

  const grouped = /^[1-9]\d{0,2}[.,]\d{3}$/.test(amountText)
    ? toMillimetres(Number(amountText.replace(/[.,]/, "")), own)
    : null;
  if (grouped !== null && grouped <= longestLength)
    return err({ ...problem, code: "ambiguous", either: length, or: grouped });
  return ok(length);
}

/** Reads a bare number in a unit, by the same rules as its text. */
export function lengthFromNumber(value: number, unit: LengthUnit): Result<Millimetres, LengthProblem> {
  const problem = { read: String(value), unit };
  if (Number.isNaN(value)) return err({ ...problem, code: "notALength" });
  const length = toMillimetres(value, unit);
  if (length <= 0) return err({ ...problem, code: "notPositive" });
  return length > longestLength ? err({ ...problem, code: "tooLong", longest: longestLength }) : ok(length);
}

/**
 * Writes a length to the nearest step: `38 1/2 in`, `97.5 cm`, `978 mm`; `bare` leaves the unit out, for a field that
 * shows it beside. Nothing here but digits, a slash, a point and a minus, so that it can be typed back.
 */
export function formatLength(length: Millimetres, step: LengthStep, style: "withUnit" | "bare" = "withUnit"): string {
  const { unit, parts } = lengthSteps[step];
  const count = stepCount(length, step);
  const text = unit === "in" ? mixedFraction(count, parts) : String(count / parts);
  return style === "bare" ? text : `${text} ${unit}`;
}

/** The length that `formatLength` writes: the nearest whole number of steps. */
export const roundLength = (length: Millimetres, step: LengthStep): Millimetres =>
  toMillimetres(stepCount(length, step) / lengthSteps[step].parts, lengthSteps[step].unit);

const longestText = 40;
const millimetresIn: ByUnit<number> = { cm: 10, in: 25.4, mm: 1 };

/** Rounded to a millionth first, so that a half thousandth falls the same way whichever unit it came from. */
const toMillimetres = (amount: number, unit: LengthUnit): Millimetres =>
  mm(Math.round(Math.round(amount * millimetresIn[unit] * 1_000_000) / 1000) / 1000);

const stepCount = (length: Millimetres, step: LengthStep): number =>
  Math.round((length * lengthSteps[step].parts) / millimetresIn[lengthSteps[step].unit]) || 0;

const shortened = (text: string): string => (text.length > longestText ? `${text.slice(0, longestText)}…` : text);

const fractionGlyphs: { readonly [glyph: string]: string } = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/**
 * A decimal digit of any script as 0 to 9: ٣٤ and ३४ are 34. Unicode keeps the ten digits of a script together in order
 * (The Unicode Standard, section 4.6, cited from memory), so a digit is worth what comes before it in its run of tens.
 */
function latinDigit(digit: string): string {
  const code = digit.codePointAt(0) as number;
  if (code <= 0x7f) return digit;
  let value = 0;
  while (/\p{Nd}/u.test(String.fromCodePoint(code - value - 1))) value++;
  return String(value % 10);
}

/** Lower case, one kind of space, slash, dash and inch mark, and fractions spelt out (`38½` becomes `38 1/2`). */
const plainText = (text: string): string =>
  text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/gu, (glyph) => ` ${fractionGlyphs[glyph]}`)
    .normalize("NFKC")
    .replace(/\p{Nd}/gu, latinDigit)
    .replace(/٫/gu, ".")
    .toLowerCase()
    .replace(/[⁄∕]/gu, "/")
    .replace(/[‐‑‒–—−]/gu, "-")
    .replace(/''|′′|[″”“]/gu, '"')
    .replace(/\s+/gu, " ")
    .trim();

const unitNames: { readonly [unit in LengthUnit]: RegExp } = {
  in: /^-?("|in\.?|inch|inches)$/,
  cm: /^(cm\.?|cms|centimet(er|re)s?)$/,
  mm: /^(mm\.?|mms|millimet(er|re)s?)$/,
};
const unitOf = (name: string): LengthUnit | undefined => lengthUnits.find((unit) => unitNames[unit].test(name));

/** A decimal with point or comma, a fraction, or a whole number and a fraction joined by a space or a dash. */
function amountOf(text: string): number | "notALength" | "badFraction" {
  if (/^(\d+[.,]?\d*|[.,]\d+)$/.test(text)) return Number(text.replace(",", "."));
  const mixed = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (!mixed) return "notALength";
  const [whole, over, under] = [mixed[1] ?? "", Number(mixed[2]), Number(mixed[3])];
  const proper = under >= 2 && under <= 64 && over > 0 && (whole === "" || over < under);
  return proper ? Number(whole) + over / under : "badFraction";
}

function mixedFraction(count: number, parts: number): string {
  const [size, whole] = [Math.abs(count), Math.floor(Math.abs(count) / parts)];
  const over = size - whole * parts;
  const shared = greatestDivisor(over, parts);
  const fraction = over === 0 ? "" : `${over / shared}/${parts / shared}`;
  const joined = [whole === 0 && fraction !== "" ? "" : String(whole), fraction]
    .filter((part) => part !== "")
    .join(" ");
  return count < 0 ? `-${joined}` : joined;
}

const greatestDivisor = (one: number, other: number): number =>
  other === 0 ? one : greatestDivisor(other, one % other);
