import type { Fitting } from "../../document/fitting";
import type { NotSaved } from "../storage/fittingOutcome";
import type { FittingStorage } from "../storage/fittingStorage";
import { longestCsv } from "./csvText";
import { type Imported, importFittings } from "./fileImport";
import { readSheet, type SheetProblem } from "./measurementSheet";

/** What came of opening a table of measurements: a new fitting with all of it, or nothing, with every reason. */
export type SheetImportOutcome =
  | Imported
  | { readonly kind: "refusedSheet"; readonly problems: readonly SheetProblem[] }
  | NotSaved;

export interface NamedFile extends Blob {
  readonly name: string;
}

/** The measurements go into a fresh fitting named like the file; bare numbers of the table are in that fitting's unit. */
export async function importSheet(
  file: NamedFile,
  storage: FittingStorage,
  fresh: Fitting,
): Promise<SheetImportOutcome> {
  const text = file.size > largestTable ? null : await tableText(file);
  if (text === null) return { kind: "refusedSheet", problems: [{ code: "tooLong", most: longestCsv }] };
  const sheet = readSheet(text, fresh.unit);
  if (!sheet.ok) return { kind: "refusedSheet", problems: sheet.problem };
  const { body, form } = sheet.value;
  const title = file.name.replace(/\.[^.]*$/, "").slice(0, 200);
  const isFormMeasured = Object.keys(form).length > 0;
  return importFittings([{ ...fresh, title, body, form: isFormMeasured ? form : fresh.form }], storage);
}

/** No sign takes more than four bytes. */
const largestTable = 4 * longestCsv;

/**
 * Spreadsheets write tables in UTF-8, in UTF-16 with a mark before it, or in the western code page of their system;
 * what is none of the first two is read as the last, in which every byte is a sign.
 */
async function tableText(file: Blob): Promise<string | null> {
  const buffer = await file.arrayBuffer().catch(() => null);
  if (buffer === null) return null;
  const bytes = new Uint8Array(buffer);
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}
