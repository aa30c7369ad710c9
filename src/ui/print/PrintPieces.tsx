import { printingWords } from "../text/printing";
import type { PrintedRow } from "./printPages";
import { SheetBox } from "./SheetBox";

/** The pieces on paper: a box to tick, what to cut and where it goes, what the tape should read, and what it reads or room to write. */
export interface PieceRow extends PrintedRow {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly isPinned: boolean;
}

export interface PrintPiecesProps {
  readonly rows: readonly PieceRow[];
  readonly isContinued: boolean;
}

export function PrintPieces({ rows, isContinued }: PrintPiecesProps) {
  const { pieceHead } = printingWords;
  return (
    <table className="sheet-table sheet-pieces">
      <caption>
        {printingWords.pieces}
        {isContinued ? `, ${printingWords.continued}` : ""}
      </caption>
      <thead>
        <tr>
          <td className="sheet-tick" />
          <th scope="col" className="sheet-piece">
            {pieceHead.piece}
          </th>
          <th scope="col" className="sheet-cut">
            {pieceHead.cut}
          </th>
          <th scope="col" className="sheet-tape">
            {pieceHead.tape}
          </th>
          <th scope="col">{pieceHead.read}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ id, name, place, isPinned, cut, tape, read }) => (
          <tr key={id}>
            <td>
              <SheetBox isTicked={isPinned} />
            </td>
            <th scope="row">
              <strong>{name}.</strong> {place}
            </th>
            <td>{cut}</td>
            <td>{tape}</td>
            <td>{read}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
