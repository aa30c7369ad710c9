import { useMemo } from "react";
import type { PlannedPiece } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../drawing/lengthWriter";
import { layerPictures, pieceScene } from "../../drawing/pieceScene";
import { pieceName } from "../../../text/plan";
import { useLengths } from "../../kit/useStore";

/** Every layer of a piece as it is cut. */
export function CutPicture({ piece }: { readonly piece: PlannedPiece }) {
  const { unit, step } = useLengths();
  const scenes = useMemo(
    () => layerPictures(piece, pieceName(piece), lengthWriter(unit, step), "screen").map(pieceScene),
    [piece, unit, step],
  );
  return (
    <div className="piece-cut">
      {scenes.map((scene) => (
        <Drawing key={scene.title} scene={scene} />
      ))}
    </div>
  );
}
