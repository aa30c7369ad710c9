import type { Plan, PlannedPiece } from "../../core/plan/plan";

/**
 * How the pieces are shared among printed pages. The first page carries the measurements as well; what does not fit is
 * said to go on overleaf and never cut off. The numbers of rows hold on Letter, the shorter of the two papers.
 */
export interface PrintedPage {
  readonly pieces: readonly PlannedPiece[];
  readonly isLast: boolean;
}

export function printPages({
  pieces,
  shortfalls,
  seamShifts,
}: Pick<Plan, "pieces" | "shortfalls" | "seamShifts">): readonly PrintedPage[] {
  const room = Math.max(leastRows, firstPageRows - Math.ceil((shortfalls.length + seamShifts.length) / rowsPerLimit));
  const pages = [pieces.slice(0, room)];
  for (let from = room; from < pieces.length; from += laterPageRows)
    pages.push(pieces.slice(from, from + laterPageRows));
  return pages.map((part, i) => ({ pieces: part, isLast: i === pages.length - 1 }));
}

const firstPageRows = 16;
const laterPageRows = 22;
const leastRows = 8;
/** A sentence about a limit is about as tall as a row of the table. */
const rowsPerLimit = 1;
