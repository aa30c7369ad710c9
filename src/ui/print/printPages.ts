/**
 * How the pieces are shared among printed pages. The first page carries the measurements and the figure as well, and the last the
 * limits and cautions; what does not fit is said to go on overleaf and is never cut off. Heights are reckoned in points
 * from the letters in each cell, on Letter, the shorter of the two papers, with the sheet's own typeface.
 */
export interface PrintedRow {
  readonly piece: string;
  readonly cut: string;
  readonly tape: string;
  /** What was read already; empty where there is room to write. */
  readonly read: string;
}

export interface PrintedPage<Row extends PrintedRow> {
  readonly rows: readonly Row[];
  readonly isLast: boolean;
}

export function printPages<Row extends PrintedRow>(
  rows: readonly Row[],
  limits: readonly string[],
  isDraft = false,
): readonly PrintedPage<Row>[] {
  const footHeight =
    limits.length === 0
      ? 0
      : limitsHead + limits.reduce((sum, limit) => sum + lineHeight * lines(limit, lettersAcross), 0);
  const pages: Row[][] = [[]];
  let room = firstPageRoom - (isDraft ? draftHeight : 0);
  for (const row of rows) {
    const height = rowHeight(row);
    if (height > room && (pages.at(-1)?.length ?? 0) > 0) {
      pages.push([]);
      room = laterPageRoom;
    }
    pages.at(-1)?.push(row);
    room -= height;
  }
  if (footHeight > room && (pages.at(-1)?.length ?? 0) > 1) pages.push(pages.at(-1)?.splice(-1) ?? []);
  return pages.map((part, i) => ({ rows: part, isLast: i === pages.length - 1 }));
}

export const rowHeight = ({ piece, cut, tape, read }: PrintedRow): number =>
  rowEdge +
  lineHeight *
    Math.max(
      lines(piece, lettersInPiece),
      lines(cut, lettersInCut),
      lines(tape, lettersInTape),
      lines(read, lettersInRead),
    );

const lines = (text: string, letters: number): number => Math.ceil(text.length / letters);

/** Letters to a line of 8.6 pt type in each column; the columns are 40, 29, 17 and 12 hundredths of the page. */
const lettersInPiece = 58;
const lettersInCut = 41;
const lettersInTape = 19;
const lettersInRead = 13;
const lettersAcross = 118;
/** Points, at a line height of 1.25 and with the cell's own padding and rule. */
const lineHeight = 10.75;
const rowEdge = 3.2;
const limitsHead = 18;
/**
 * Letter is 792 pt high less two margins of 31 pt, title, what comes before the first piece with the figure, measurements,
 * heads of the table and the lines at the foot, with one line over for a second batting.
 */
const firstPageRoom = 346;
const laterPageRoom = 590;
/** Two lines at the head that call the plan a draft. */
const draftHeight = 27;
