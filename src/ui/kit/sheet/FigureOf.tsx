import { useMemo } from "react";
import type { Plan } from "../../../core/plan/plan";
import { lengthWriter } from "../../../text/lengthWriter";
import { Drawing } from "../../drawing/Drawing";
import { figureScene } from "../../drawing/figureScene";
import type { FigureView } from "../../drawing/figureView";
import { useLengths } from "../useStore";

interface FigureOfProps {
  readonly plan: Plan;
  readonly view: FigureView;
  readonly isNamed: boolean;
}

/** The padded form on paper, with every piece and its number where it goes. */
export function FigureOf({ plan: { levels, pieces }, view, isNamed }: FigureOfProps) {
  const { unit, step } = useLengths();
  const scene = useMemo(
    () => figureScene({ levels, pieces, view, lengths: lengthWriter(unit, step), shownOn: "paper", isNamed }),
    [levels, pieces, view, isNamed, unit, step],
  );
  return <Drawing scene={scene} />;
}
