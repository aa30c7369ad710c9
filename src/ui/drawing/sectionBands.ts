import { coveredRuns, type LayeredSection, type LayerOutline } from "./layerOutlines";
import { closedPath, segment } from "./pathText";
import type { PicturePoint } from "./picturePoint";
import { mark, type Mark } from "./scene";

/**
 * The batting at one level: a band for each piece between the surface it lies on and its own, in two tints that take
 * turns so that the layers can be counted. The piece at hand is hatched as well.
 */
export function bandMarks({ layers }: LayeredSection, now: number | null): readonly Mark[] {
  const bands = layers.map((layer) => ({
    layer,
    path: coveredRuns(layer.own)
      .map((run) => bandPath(layer, run))
      .join(""),
  }));
  const atHand = bands.filter(({ layer }) => layer.piece.order === now);
  const others = bands.filter(({ layer }) => layer.piece.order !== now);
  return [
    mark("layer", ...others.filter((_, i) => i % 2 === 0).map(({ path }) => path)),
    mark("layerNext", ...others.filter((_, i) => i % 2 === 1).map(({ path }) => path)),
    mark("layerNow", ...atHand.map(({ path }) => path)),
    mark("hatchNow", ...atHand.flatMap(({ layer }) => coveredRuns(layer.own).map((run) => bandHatch(layer, run)))),
  ];
}

const along = (points: readonly PicturePoint[], run: readonly number[]): readonly PicturePoint[] =>
  run.flatMap((i) => points[i] ?? []);

const bandPath = ({ inner, outer }: LayerOutline, run: readonly number[]): string =>
  closedPath([...along(outer, run), ...along(inner, run).toReversed()]);

/** Short slanted strokes across a band, about a stroke's length apart. */
function bandHatch({ inner, outer }: LayerOutline, run: readonly number[]): string {
  let travelled = hatchStep;
  return run
    .map((i, step) => {
      const [from, ahead, to] = [inner[i], inner[run[step + 1] ?? i], outer[run[step + 2] ?? run[step + 1] ?? i]];
      if (from === undefined || ahead === undefined || to === undefined) return "";
      const due = travelled >= hatchStep;
      travelled = (due ? 0 : travelled) + Math.hypot(ahead.x - from.x, ahead.y - from.y);
      return due ? segment(from, to) : "";
    })
    .join("");
}

/** Space between the strokes of a hatch, in millimetres of the form. */
const hatchStep = 6;
