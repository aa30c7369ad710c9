import { useState } from "react";
import { paddingWords } from "../text/padding";
import { Cautions } from "../Cautions";
import { useWakeLock } from "./useWakeLock";

/** Keeping the screen awake, and once the first piece is on the caution that goes with each. */
export function ScreenTools({ isBegun }: { readonly isBegun: boolean }) {
  const [wanted, setWanted] = useState(true);
  const state = useWakeLock(wanted);
  return (
    <section className="stitched padding-tools">
      {isBegun ? <Cautions at="laterPiece" /> : null}
      {state === "unknown" ? null : (
        <label className="tick">
          <input type="checkbox" checked={wanted} onChange={(event) => setWanted(event.target.checked)} />
          <span>
            {paddingWords.awake}
            <span className="quiet small wake-state">
              {state === "on" ? paddingWords.awakeOn : state === "refused" ? paddingWords.awakeRefused : ""}
            </span>
          </span>
        </label>
      )}
    </section>
  );
}
