import { useMemo } from "react";
import { Drawing } from "../../drawing/Drawing";
import { wallWords } from "../../../text/wall";
import type { WallView } from "./wallView";
import { wallScene } from "./wallScene";

/** The section at the level, filling up. It is drawn anew at each step, so that the new piece can come in. */
export function WallSection({ view: { plan, level, pinned: step } }: { readonly view: WallView }) {
  const scene = useMemo(() => wallScene({ level, pieces: plan.pieces, step }), [plan, level, step]);
  return (
    <section className="wall-section" aria-label={wallWords.picture}>
      <div className="wall-picture" key={`${level.name}${String(step)}`}>
        <Drawing scene={scene} />
      </div>
    </section>
  );
}
