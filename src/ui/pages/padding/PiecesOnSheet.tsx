import { upperFirst } from "../../../text/upperFirst";
import { isStructure } from "../../../core/padding/piece";
import type { PlannedPiece } from "../../../core/plan/plan";
import { mostLayersAbove } from "../../../document/fittingLimits";
import { filledSheetWords } from "../../../text/filledSheet";
import { numberedName } from "../../../text/pieces";

/** How many layers each piece was cut of; none while it is not ticked. */
export interface LayersOfPieces {
  readonly [id: string]: number;
}

interface PiecesOnSheetProps {
  readonly pieces: readonly PlannedPiece[];
  readonly layers: LayersOfPieces;
  readonly onLayers: (id: string, count: number) => void;
}

/** Every piece that is not pinned yet, with a box to tick and, of the structure, how many layers it was cut of. */
export function PiecesOnSheet({ pieces, layers, onLayers }: PiecesOnSheetProps) {
  return (
    <fieldset>
      <legend>{filledSheetWords.pieces}</legend>
      {pieces.map((piece) => {
        const [name, count] = [numberedName(piece), layers[piece.id] ?? 0];
        return (
          <div key={piece.id} className="row">
            <label className="tick">
              <input
                type="checkbox"
                checked={count > 0}
                onChange={({ target }) => onLayers(piece.id, target.checked ? piece.layers.length : 0)}
              />
              <span>{upperFirst(name)}</span>
            </label>
            {isStructure(piece) && count > 0 ? (
              <span className="row">
                <input
                  className="line-input sheet-layers"
                  type="number"
                  min={1}
                  max={mostLayersAbove}
                  aria-label={filledSheetWords.layers(name)}
                  value={count}
                  onChange={({ target }) =>
                    onLayers(piece.id, Math.max(1, Math.min(mostLayersAbove, Math.round(Number(target.value)) || 1)))
                  }
                />
                <span aria-hidden="true">{filledSheetWords.layersUnit}</span>
              </span>
            ) : null}
          </div>
        );
      })}
    </fieldset>
  );
}
