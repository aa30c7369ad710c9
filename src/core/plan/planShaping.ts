import type { QuarterReadings } from "../body/levelReadings";
import { lengthCurves } from "../body/torsoCurve";
import { levelNames } from "../body/vocabulary";
import { paddedThickness } from "../padding/paddedThickness";
import type { LevelOutline } from "../padding/layerThickness";
import type { ShapingLevel, ShapingProblem } from "../padding/shapingProblem";
import type { Basis } from "./basis";
import type { Start } from "./start";

/** What the shaping starts from: the form with what is pinned on it, and the readings asked of each level. */
export const shapingProblem = (
  { levelSections, sectionAt, body, bodyLines, formLines }: Basis,
  start: Start,
  targets: readonly QuarterReadings[],
): ShapingProblem => ({
  levels: levelNames.map((name, i): ShapingLevel => {
    const levelSection = levelSections[i] as LevelOutline;
    return {
      name,
      ...levelSection,
      target: targets[i] as QuarterReadings,
      offset: start.offsets[i] as QuarterReadings,
      pinned: paddedThickness(start.pinned, levelSection, start.layer),
    };
  }),
  sectionAt,
  gainAt: gainBetween(lengthCurves(bodyLines), lengthCurves(formLines)),
  apex: body.apex,
  hasCups: true,
  layer: start.layer,
});

type LengthCurves = ReturnType<typeof lengthCurves>;

const gainBetween = (body: LengthCurves, form: LengthCurves): ShapingProblem["gainAt"] => ({
  front: (depth) => body.front(depth) - form.front(depth),
  back: (depth) => body.back(depth) - form.back(depth),
});
