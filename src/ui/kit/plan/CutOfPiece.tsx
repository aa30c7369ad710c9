import { useMemo, useState } from "react";
import type { PlannedPiece } from "../../../core/plan/plan";
import { lengthWriter } from "../../../text/lengthWriter";
import { cutSize } from "../../../text/pieces";
import { pieceName } from "../../../text/plan";
import { stopWords } from "../../../text/stops";
import { Drawing } from "../../drawing/Drawing";
import { layerPictures, pieceScene, type ShownOn } from "../../drawing/pieceScene";
import { Segments } from "../Segments";
import { useLengths } from "../useStore";
import "./cutOfPiece.css";

interface CutOfPieceProps {
  readonly piece: PlannedPiece;
  /** How large the words are beside the piece, and whether they say all it takes to cut it, as they do if left out. */
  readonly shownOn?: Exclude<ShownOn, "paper">;
}

/** Every layer has its own drawing; the outermost, which is the largest, is shown first. */
export function CutOfPiece({ piece, shownOn = "screen" }: CutOfPieceProps) {
  const { unit, step } = useLengths();
  const scenes = useMemo(
    () => layerPictures(piece, pieceName(piece), lengthWriter(unit, step), shownOn).map(pieceScene),
    [piece, unit, step, shownOn],
  );
  const [chosen, setChosen] = useState<number | null>(null);
  const shown = Math.min(chosen ?? scenes.length - 1, scenes.length - 1);
  const [scene, cut] = [scenes[shown], piece.cut[shown]];
  if (scene === undefined) return null;
  return (
    <div className="cut-layers">
      <div className="cut-picture">
        <Drawing scene={scene} />
      </div>
      {scenes.length < 2 ? null : (
        <Segments
          choices={scenes.map(({ title }, i) => ({
            key: title,
            words: stopWords.layer(i + 1, scenes.length),
            isChosen: i === shown,
            choose: () => setChosen(i),
          }))}
        />
      )}
      {cut === undefined || scenes.length < 2 ? null : <p className="unseen">{cutSize(cut, step)}</p>}
    </div>
  );
}
