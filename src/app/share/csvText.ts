import { err, ok, type Result } from "../../core/result";

/**
 * Tables as text, as RFC 4180 (Shafranovich 2005, section 2) has them: records end with CRLF, fields with a comma, a
 * quote, or a line break stand in quotes, a quote inside is doubled. Read more kindly: any line break, and a semicolon
 * or a tab instead of the comma, as spreadsheets of other countries write them.
 */
export type CsvProblem =
  | { readonly code: "tooLong"; readonly most: number }
  | { readonly code: "tooManyCells"; readonly most: number }
  | { readonly code: "openQuote"; readonly line: number }
  | { readonly code: "afterQuote"; readonly line: number };

export interface CsvRow {
  /** The line the row begins on, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export const longestCsv = 200_000;
/** A table of every measurement has fewer than three hundred. */
const mostCells = 2_000;

export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => `${cells.map(writtenCell).join(",")}\r\n`).join("");

/**
 * A cell that a spreadsheet would take for a formula gets an apostrophe before it, which spreadsheets show as text
 * (the usual advice against formula injection; from memory). Reading takes it away again.
 */
function writtenCell(text: string): string {
  const safe = formulaStart.test(text) ? `'${text}` : text;
  return /[",;\t\r\n]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const formulaStart = /^'*[=+\-@\t\r]/;

const readCell = (text: string): string => (text.startsWith("'") && formulaStart.test(text) ? text.slice(1) : text);

export function readCsv(text: string): Result<readonly CsvRow[], CsvProblem> {
  if (text.length > longestCsv) return err({ code: "tooLong", most: longestCsv });
  const plain = text.replace(/^\uFEFF/, "");
  const rows: CsvRow[] = [];
  const scan = { text: plain, separator: separatorOf(plain), at: 0, line: 1 };
  let cells = 0;
  while (scan.at < plain.length) {
    const row = readRow(scan);
    if (!row.ok) return row;
    cells += row.value.cells.length;
    if (cells > mostCells) return err({ code: "tooManyCells", most: mostCells });
    if (row.value.cells.some((cell) => cell !== "")) rows.push(row.value);
  }
  return ok(rows);
}

interface Scan {
  readonly text: string;
  readonly separator: string;
  at: number;
  line: number;
}

/** Whichever stands most often in the first line. */
function separatorOf(text: string): string {
  const [first = ""] = text.split(/[\r\n]/, 1);
  const counts = [",", ";", "\t"].map((separator) => ({ separator, count: first.split(separator).length }));
  return counts.reduce((most, one) => (one.count > most.count ? one : most)).separator;
}

function readRow(scan: Scan): Result<CsvRow, CsvProblem> {
  const { line } = scan;
  const cells: string[] = [];
  for (;;) {
    const cell = scan.text[scan.at] === '"' ? readQuoted(scan) : ok(readBare(scan));
    if (!cell.ok) return cell;
    cells.push(readCell(cell.value));
    const next = scan.text[scan.at];
    scan.at += 1;
    if (next === scan.separator) continue;
    if (next === "\r" && scan.text[scan.at] === "\n") scan.at += 1;
    scan.line += 1;
    return ok({ line, cells });
  }
}

function readBare(scan: Scan): string {
  const start = scan.at;
  while (scan.at < scan.text.length && !isEnd(scan)) scan.at += 1;
  return scan.text.slice(start, scan.at);
}

function readQuoted(scan: Scan): Result<string, CsvProblem> {
  const { line } = scan;
  let value = "";
  for (;;) {
    const close = scan.text.indexOf('"', scan.at + 1);
    if (close < 0) return err({ code: "openQuote", line });
    const part = scan.text.slice(scan.at + 1, close);
    scan.line += part.split(/\r\n|\r|\n/).length - 1;
    value += part;
    scan.at = close + 1;
    if (scan.text[scan.at] !== '"') break;
    value += '"';
  }
  return scan.at >= scan.text.length || isEnd(scan) ? ok(value) : err({ code: "afterQuote", line: scan.line });
}

const isEnd = ({ text, at, separator }: Scan): boolean =>
  text[at] === separator || text[at] === "\r" || text[at] === "\n";
