import { useEffect, useRef } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { PlannedPiece } from "../../core/plan/plan";
import { paddingWords } from "../text/padding";
import { numberedName } from "../text/pieces";

export interface PinRowProps {
  readonly progress: PadProgress;
  readonly current: PlannedPiece | null;
  readonly onLook: (order: number | null) => void;
}

/** A pin for each piece: filled once it is on the form, with the one at hand picked out. */
export function PinRow({ progress, current, onLook }: PinRowProps) {
  const row = useRef<HTMLUListElement>(null);
  const order = current?.order ?? null;
  // Where the row is longer than a phone is wide, the pin at hand stays in sight, and the page itself stays where it is.
  useEffect(() => {
    const pins = row.current;
    const pin = order === null ? null : pins?.children[order - 1];
    if (!pins || !(pin instanceof HTMLElement)) return;
    pins.scrollLeft = pin.offsetLeft - pins.offsetLeft - (pins.clientWidth - pin.offsetWidth) / 2;
  }, [order]);
  return (
    <ul ref={row} className="pins padding-pins" aria-label={paddingWords.pinRow}>
      {progress.pieces.map(({ piece, pinned }) => (
        <li key={piece.id}>
          <button
            type="button"
            className={pinned ? "pin pin-in" : "pin"}
            aria-current={current?.id === piece.id ? "step" : undefined}
            aria-label={`${numberedName(piece)}: ${pinned ? paddingWords.isOn : paddingWords.isOff}`}
            onClick={() => onLook(piece.order)}
          >
            {piece.order}
          </button>
        </li>
      ))}
    </ul>
  );
}
