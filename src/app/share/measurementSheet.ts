import { type MeasurementName, measurementNames } from "../../core/body/vocabulary";
import { type LengthProblem, type LengthUnit, lengthUnits, parseLength } from "../../core/lengthText";
import { err, ok, type Result } from "../../core/result";
import type { Entries, Entry, Fitting } from "../../document/fitting";
import { nearestName } from "../../document/nearestName";
import { olderMeasurementKeys } from "../../document/olderKeys";
import { type CsvProblem, type CsvRow, readCsv, writeCsv } from "./csvText";

/**
 * Measurements as a table for a spreadsheet: one row for each, with the columns measurement, unit, body, form. The unit
 * is what a bare number in that row means; a cell may carry its own ("37 1/2 in"). Reading takes the columns in any
 * order and the names in any case, and gives every problem with its line, or the whole table; never a part of it.
 */
export interface MeasurementSheet {
  readonly body: Entries;
  readonly form: Entries;
}

export type SheetProblem =
  | CsvProblem
  | { readonly code: "empty" }
  /** The columns are named, and no length stands under them. */
  | { readonly code: "noLengths" }
  | { readonly code: "noColumns"; readonly got: readonly string[]; readonly expected: readonly string[] }
  | {
      readonly code: "unknownMeasurement";
      readonly line: number;
      readonly got: string;
      readonly nearest: string | null;
    }
  | { readonly code: "twice"; readonly line: number; readonly name: MeasurementName }
  | { readonly code: "unknownUnit"; readonly line: number; readonly got: string; readonly expected: readonly string[] }
  | { readonly code: "tooManyColumns"; readonly line: number; readonly got: number; readonly expected: number }
  | {
      readonly code: "unreadableLength";
      readonly line: number;
      readonly name: MeasurementName;
      readonly whose: SheetColumn;
      readonly problem: LengthProblem;
    };

export type SheetColumn = "body" | "form";

export function writeSheet({ unit, body, form }: Fitting): string {
  const measured = measurementNames.filter((name) => body[name] !== undefined || form[name] !== undefined);
  const rows = measured.map((name) => [name, unit, cellOf(body[name]), cellOf(form[name])]);
  return writeCsv([[...columnNames], ...rows]);
}

/** Reads a table whose bare numbers, where a row has no unit of its own, are in the given unit. */
export function readSheet(text: string, unit: LengthUnit): Result<MeasurementSheet, readonly SheetProblem[]> {
  const rows = readCsv(text);
  if (!rows.ok) return err([rows.problem]);
  const [head, ...body] = rows.value;
  if (head === undefined) return err([{ code: "empty" }]);
  const columns = columnsOf(head);
  if (columns === null) return err([{ code: "noColumns", got: head.cells.map(shown), expected: columnNames }]);
  const lines = body.map((row) => readLine(row, head.cells.length, columns, unit));
  const problems = [...lines.flatMap((line) => line.problems), ...repeated(lines)];
  if (problems.length > 0) return err(problems);
  if (lines.every(({ body, form }) => body === null && form === null)) return err([{ code: "noLengths" }]);
  const side = (whose: SheetColumn): Entries =>
    Object.fromEntries(lines.flatMap(({ name, [whose]: entry }) => (name && entry !== null ? [[name, entry]] : [])));
  return ok({ body: side("body"), form: side("form") });
}

const columnNames = ["measurement", "unit", "body", "form"] as const;
type ColumnName = (typeof columnNames)[number];
type Columns = { readonly [name in ColumnName]: number };

interface Line {
  readonly line: number;
  readonly name: MeasurementName | null;
  readonly body: Entry | null;
  readonly form: Entry | null;
  readonly problems: readonly SheetProblem[];
}

const cellOf = (entry: Entry | undefined): string => (entry === undefined ? "" : String(entry));

/** Where each column stands, or -1; a table needs the names and at least one side. */
function columnsOf({ cells }: CsvRow): Columns | null {
  const heads = cells.map(letters);
  const [measurement = -1, unit = -1, body = -1, form = -1] = columnNames.map((name) => heads.indexOf(name));
  return measurement >= 0 && (body >= 0 || form >= 0) ? { measurement, unit, body, form } : null;
}

function readLine({ line, cells }: CsvRow, width: number, columns: Columns, unit: LengthUnit): Line {
  const cell = (column: ColumnName): string => cells[columns[column]]?.trim() ?? "";
  const nothing = { line, name: null, body: null, form: null };
  const extra = cells.slice(width).filter((text) => text.trim() !== "");
  if (extra.length > 0)
    return { ...nothing, problems: [{ code: "tooManyColumns", line, got: cells.length, expected: width }] };
  const got = cell("measurement");
  const name = measurementNamed(letters(got));
  if (name === undefined) {
    return {
      ...nothing,
      problems: [{ code: "unknownMeasurement", line, got: shown(got), nearest: nearestName(got, measurementNames) }],
    };
  }
  const unitText = letters(cell("unit"));
  const rowUnit = unitText === "" ? unit : lengthUnits.find((known) => known === unitText);
  if (rowUnit === undefined) {
    return { ...nothing, problems: [{ code: "unknownUnit", line, got: shown(cell("unit")), expected: lengthUnits }] };
  }
  const [body, form] = (["body", "form"] as const).map((whose) => readEntry(cell(whose), rowUnit, unit));
  const problems = [body, form].flatMap((entry, i): readonly SheetProblem[] =>
    entry && !entry.ok
      ? [{ code: "unreadableLength", line, name, whose: i === 0 ? "body" : "form", problem: entry.problem }]
      : [],
  );
  return { line, name, body: body?.ok ? body.value : null, form: form?.ok ? form.value : null, problems };
}

const measurementNamed = (typed: string): MeasurementName | undefined =>
  measurementNames.find((known) => letters(known) === typed) ??
  Object.entries(olderMeasurementKeys).find(([older]) => letters(older) === typed)?.[1];

/** The cell as it was typed; one that leans on its row's unit takes it along where the fitting has another. */
function readEntry(cell: string, rowUnit: LengthUnit, unit: LengthUnit): Result<Entry | null, LengthProblem> {
  if (cell === "") return ok(null);
  const read = parseLength(cell, rowUnit);
  if (!read.ok) return read;
  if (rowUnit === unit) return ok(cell);
  const elsewhere = parseLength(cell, unit);
  return ok(elsewhere.ok && elsewhere.value === read.value ? cell : `${cell} ${rowUnit}`);
}

function repeated(lines: readonly Line[]): readonly SheetProblem[] {
  const seen = new Set<MeasurementName>();
  return lines.flatMap(({ line, name }): readonly SheetProblem[] => {
    if (name === null) return [];
    const isNew = !seen.has(name);
    seen.add(name);
    return isNew ? [] : [{ code: "twice", line, name }];
  });
}

/** As much of a cell as a sentence has room for. */
const shown = (cell: string): string => (cell.length > 60 ? `${cell.slice(0, 60)}…` : cell);

const letters = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, "");
