import { useState } from "react";
import { paddingWords } from "../../../text/padding";
import { useWakeLock } from "../../kit/useWakeLock";

/** Keeping the screen awake. */
export function ScreenTools() {
  const [wanted, setWanted] = useState(true);
  const state = useWakeLock(wanted);
  return (
    <section className="stitched padding-tools">
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
