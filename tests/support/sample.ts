import { readFileSync } from "node:fs";

/**
 * The sample person of the tool in the words a test types or reads: a length of the body or of the bare form in inches,
 * and so many inches more, as `31 3/4`. Tests take their figures from here, so that another sample needs no other test.
 */
type Lengths = { readonly [name: string]: string };
interface SampleFile {
  readonly title: string;
  readonly body: Lengths;
  readonly form: Lengths;
}

const file = JSON.parse(readFileSync("shared/demo-fitting.json", "utf8")) as SampleFile;

const inches = (lengths: Lengths, name: string): number => {
  const text = lengths[name];
  if (text === undefined) throw new Error(`the sample person has no ${name}`);
  const [whole = "", fraction = "0/1"] = text.split(" ");
  const [over = 0, under = 1] = fraction.split("/").map(Number);
  return Number(whole) + over / under;
};

/** Inches as a tape is read and typed: whole ones and a fraction in lowest terms, down to eighths. */
export function inchText(length: number): string {
  const eighths = Math.round(length * 8);
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  if (rest === 0) return String(whole);
  const shared = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const fraction = `${rest / shared}/${8 / shared}`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

export const sampleTitle = file.title;
export const sampleInches = (name: string): number => inches(file.body, name);
export const sampleBody = (name: string, more = 0): string => inchText(inches(file.body, name) + more);
export const sampleForm = (name: string, more = 0): string => inchText(inches(file.form, name) + more);
