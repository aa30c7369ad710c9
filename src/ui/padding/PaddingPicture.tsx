import { useMemo, useState } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { useCutFrom } from "../batting/useCutFrom";
import { Drawing } from "../drawing/Drawing";
import type { FigureView } from "../drawing/figureView";
import { lengthWriter } from "../drawing/lengthWriter";
import { layerPictures, pieceScene } from "../drawing/pieceScene";
import { FigureOf } from "../plan/PlanFigures";
import { LevelSection } from "../plan/PlanLevels";
import { paddingWords } from "../text/padding";
import { cutSentence } from "../text/pieces";
import { pieceName } from "../text/plan";
import { useLengths } from "../useStore";

/** The picture beside the action: where the piece goes, how it is cut, or the level from above. */
export interface PaddingPictureProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly current: PlannedPiece | null;
  readonly level: LevelName;
}

const pictureKinds = ["where", "cut", "above"] as const;
type PictureKind = (typeof pictureKinds)[number];

export function PaddingPicture({ plan, progress, current, level }: PaddingPictureProps) {
  const { step } = useLengths();
  const cutFrom = useCutFrom();
  const [wish, setWish] = useState<PictureKind>("where");
  const kind = current === null ? "above" : wish;
  return (
    <section className="padding-picture" aria-label={paddingWords.pictures[kind]}>
      <div className="padding-picture-sheet">
        {kind === "where" && current ? <FigureOf plan={plan} view={viewOf(current)} shown={current.order} /> : null}
        {kind === "cut" && current ? (
          <>
            <CutPicture piece={current} />
            <p>{cutSentence(current, step, cutFrom(current))}</p>
          </>
        ) : null}
        {kind === "above" ? (
          <Above plan={plan} level={level} pinned={current ? current.order : progress.pieces.length} />
        ) : null}
      </div>
      <div className="segments">
        {pictureKinds.map((name) => (
          <button
            key={name}
            type="button"
            className="segment"
            aria-pressed={kind === name}
            disabled={current === null && name !== "above"}
            onClick={() => setWish(name)}
          >
            {paddingWords.pictures[name]}
          </button>
        ))}
      </div>
    </section>
  );
}

function viewOf({ zone }: PlannedPiece): FigureView {
  if (zone === "back" || zone === "leftBack" || zone === "rightBack") return "back";
  return zone === "leftSide" || zone === "rightSide" ? "side" : "front";
}

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

interface AboveProps {
  readonly plan: Plan;
  readonly level: LevelName;
  readonly pinned: number;
}

function Above({ plan, level, pinned }: AboveProps) {
  const planned = plan.levels.find(({ name }) => name === level);
  return planned ? <LevelSection plan={plan} level={planned} pinned={pinned} /> : null;
}
