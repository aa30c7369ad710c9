import { useMemo, useState } from "react";
import type { PlannedPiece } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { lengthWriter } from "../../drawing/lengthWriter";
import { layerPictures, pieceScene } from "../../drawing/pieceScene";
import { stackScene } from "../../drawing/torso/stackScene";
import { pieceName } from "../../../text/plan";
import { cutSize } from "../../../text/pieces";
import { stopWords } from "../../../text/stops";
import { useLengths } from "../../kit/useStore";

/** Every layer has its own drawing; the outermost, which is the largest, is shown first. */
export function CutOfPiece({ piece }: { readonly piece: PlannedPiece }) {
  const { unit, step } = useLengths();
  const scenes = useMemo(
    () => layerPictures(piece, pieceName(piece), lengthWriter(unit, step), "screen").map(pieceScene),
    [piece, unit, step],
  );
  const [chosen, setChosen] = useState<number | null>(null);
  const shown = Math.min(chosen ?? scenes.length - 1, scenes.length - 1);
  const [scene, cut] = [scenes[shown], piece.cut[shown]];
  if (scene === undefined) return null;
  return (
    <div className="cut-layers">
      <div className="stop-picture-fill">
        <Drawing scene={scene} />
      </div>
      {scenes.length < 2 ? null : (
        <div className="segments">
          {scenes.map(({ title }, i) => (
            <button
              key={title}
              type="button"
              className="segment"
              aria-pressed={i === shown}
              onClick={() => setChosen(i)}
            >
              {stopWords.layer(i + 1, scenes.length)}
            </button>
          ))}
        </div>
      )}
      {cut === undefined || scenes.length < 2 ? null : <p className="unseen">{cutSize(cut, step)}</p>}
    </div>
  );
}

/** How the layers lie on each other: the smallest on the form, the largest outermost. */
export function StackOfPiece({ piece }: { readonly piece: PlannedPiece }) {
  const scene = useMemo(() => {
    const widths = piece.layers.map(({ rows }) => Math.max(...rows.map(({ start, end }) => end - start)));
    const widest = Math.max(...widths);
    return stackScene({
      // Layers differ by little; drawn a third further apart they can be told.
      shares: widths.map((width, i) => width / widest - 0.04 * (widths.length - 1 - i)),
      title: pieceName(piece),
      description: stopWords.layers,
      words: { outermost: stopWords.stack.outermost, inmost: stopWords.stack.inmost },
    });
  }, [piece]);
  return <Drawing scene={scene} />;
}
