/**
 * The rows of a session plan shared out among pages, and how many empty rows for the days of the class fill the last one. Heights are
 * in millimeters, reckoned for Letter, the shorter of the two papers; on A4 less than a tenth of a page stays empty.
 */
export interface SessionPage<Row> {
  readonly rows: readonly Row[];
  /** Empty rows to write in under the last row of all. */
  readonly days: number;
}

export function sessionPages<Row>(rows: readonly Row[], heightOf: (row: Row) => number): readonly SessionPage<Row>[] {
  const pages: Row[][] = [[]];
  let room = pageHeight - firstHead;
  for (const row of rows) {
    const height = heightOf(row);
    if (height > room && pages.at(-1)?.length !== 0) {
      pages.push([]);
      room = pageHeight - laterHead;
    }
    pages.at(-1)?.push(row);
    room -= height;
  }
  const days = Math.max(0, Math.floor((room - daysHead) / dayHeight));
  return pages.map((page, i) => ({ rows: page, days: i === pages.length - 1 && days >= fewestDays ? days : 0 }));
}

/** Letter between its margins. */
const pageHeight = 257;
/** Title, blanks, what the sheet says of itself and the head of the table; overleaf the title and the head of the table. */
const [firstHead, laterHead] = [39.5, 17];
/** Of the table of days: its heading and its head. */
const daysHead = 17;
/** As the style sheet sets them, borders and all. */
export const sessionRowHeight = 8.45;
const dayHeight = 9.25;
/** Fewer are no table. */
const fewestDays = 2;
