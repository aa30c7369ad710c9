import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { levelToMeasure } from "../padding/levelToMeasure";
import { cutSentence, pieceName, placeSentence } from "../text/pieces";
import { levelWords } from "../text/pictures";
import { printingWords } from "../text/printing";
import { useLengths } from "../useStore";

/** The pieces on paper: a box to tick, what to cut and where it goes, what the tape should read, and room to write. */
export interface PrintPiecesProps {
  readonly plan: Plan;
  readonly pieces: readonly PlannedPiece[];
  readonly isContinued: boolean;
}

export function PrintPieces({ plan, pieces, isContinued }: PrintPiecesProps) {
  const { step, write } = useLengths();
  const { pieceHead } = printingWords;
  return (
    <table className="sheet-table sheet-pieces">
      <caption>
        {printingWords.pieces}
        {isContinued ? `, ${printingWords.continued}` : ""}
      </caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{pieceHead.piece}</th>
          <th scope="col">{pieceHead.cut}</th>
          <th scope="col">{pieceHead.tape}</th>
          <th scope="col">{pieceHead.read}</th>
        </tr>
      </thead>
      <tbody>
        {pieces.map((piece) => {
          const level = levelToMeasure(plan, piece);
          const after = piece.readingsAfter[level];
          return (
            <tr key={piece.id}>
              <td>
                <span className="sheet-box" aria-hidden />
              </td>
              <th scope="row">
                {pieceName(piece, step)}
                <span className="sheet-place">{placeSentence(piece, plan.levels, step)}</span>
              </th>
              <td>{cutSentence(piece, step)}</td>
              <td>{printingWords.tapeReads(levelWords[level], write(after.girth), write(after.frontArc))}</td>
              <td className="sheet-write" />
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
