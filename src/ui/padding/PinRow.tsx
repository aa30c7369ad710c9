import type { PadProgress } from "../../app/padProgress";
import type { PlannedPiece } from "../../core/plan/plan";
import { paddingWords } from "../text/padding";
import { pieceName } from "../text/pieces";
import { useLengths } from "../useStore";

export interface PinRowProps {
  readonly progress: PadProgress;
  readonly current: PlannedPiece | null;
  readonly onLook: (order: number | null) => void;
}

/** A pin for each piece: filled once it is on the form, with the one at hand picked out. */
export function PinRow({ progress, current, onLook }: PinRowProps) {
  const { step } = useLengths();
  return (
    <ul className="pins padding-pins" aria-label={paddingWords.pinRow}>
      {progress.pieces.map(({ piece, pinned }) => (
        <li key={piece.id}>
          <button
            type="button"
            className={pinned ? "pin pin-in" : "pin"}
            aria-current={current?.id === piece.id ? "step" : undefined}
            aria-label={`${pieceName(piece, step)}: ${pinned ? paddingWords.isOn : paddingWords.isOff}`}
            onClick={() => onLook(piece.order)}
          >
            {piece.order}
          </button>
        </li>
      ))}
    </ul>
  );
}
