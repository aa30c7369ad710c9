import type { Piece } from "../../core/padding/piece";
import type { PlannedLevel } from "../../core/plan/plan";
import { bodyCurveOf, formCurveOf } from "../../core/plan/torsosOfPlan";
import type { PaddedSection } from "../../core/surface/paddedSection";
import { firstAtOrBelow } from "../../core/surface/paddedSurface";
import { ribbon } from "./rulers";
import { pictureWords } from "../../text/pictures";
import { bodyMarks, figureExtent, levelLines, paddingMarks, pieceMarks } from "./figureScene";
import { type FigureView, formFigure, formMarks } from "./figureView";
import { pieceOnFigure } from "./pieceOnFigure";
import { figureSections, silhouette } from "./silhouette";
import { at, type Mark, mark, type Scene } from "./scene";

/**
 * What the whole work comes to, in three figures without a word in them, seen from the front: the bare form inside the
 * body's outline; the batting going on; the form covered, in the outline it stands in for, with the
 * tape round bust, waist and full hip. They are built from the sections of a plan like every other figure, in one frame.
 */
export const standInStages = ["form", "padding", "covered"] as const;
export type StandInStage = (typeof standInStages)[number];

const view: FigureView = "front";
const tapedLevels: readonly string[] = ["bust", "waist", "fullHip"];
const tapeWidth = 26;
const tickStep = 18;

export function standInScene(levels: readonly PlannedLevel[], pieces: readonly Piece[], stage: StandInStage): Scene {
  const { top, bottom } = figureExtent(levels, pieces);
  const formAt = formCurveOf(levels);
  const surfaceOf = (on: readonly Piece[]) => figureSections(formAt, on, top, bottom);
  const [bare, whole] = [surfaceOf([]), surfaceOf(pieces)];
  const body = figureSections(bodyCurveOf(levels), [], top, bottom);
  const marks: { readonly [stage in StandInStage]: () => readonly Mark[] } = {
    form: () => [
      ...formMarks(formFigure(silhouette(bare, view), view)),
      ...levelLines(levels, bare, view),
      ...bodyMarks(levels, body, view),
    ],
    padding: () => {
      const on = upToTheFront(pieces);
      const padded = surfaceOf(on);
      const placed = on.map((piece) => ({ piece, strips: pieceOnFigure(piece, view, formAt, padded) }));
      return [
        ...paddingMarks(padded, view),
        ...formMarks(formFigure(silhouette(bare, view), view)),
        ...pieceMarks(placed, on.at(-1)?.order),
        ...bodyMarks(levels, body, view),
      ];
    },
    covered: () => [...formMarks(formFigure(silhouette(body, view), view)).map(inItsCover), ...tapeMarks(levels, body)],
  };
  const reach = [whole, body].flatMap((surface) => {
    const { left, right } = silhouette(surface, view);
    return [...left, ...right].map(({ x }) => x);
  });
  const [from, to] = [Math.min(...reach) - margin, Math.max(...reach) + margin];
  return {
    title: pictureWords.standIn[stage],
    description: `${pictureWords.standIn[stage]}, seen ${pictureWords.frontView}.`,
    frame: { x: from, y: -70, width: to - from, height: bottom + 70 + 70 },
    textSize: 30,
    marks: marks[stage](),
    labels: [],
  };
}

/** The pieces up to the last but one in front, which is then the one at hand. */
function upToTheFront(pieces: readonly Piece[]): readonly Piece[] {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  const atHand = inOrder.filter(({ zone }) => zone === "front").at(-2);
  return atHand === undefined ? inOrder : inOrder.slice(0, inOrder.indexOf(atHand) + 1);
}

const inItsCover = (item: Mark): Mark => (item.role === "form" ? { ...item, role: "garment" } : item);

/** Air on both sides of the widest outline (mm). */
const margin = 24;

function tapeMarks(levels: readonly PlannedLevel[], sections: readonly PaddedSection[]): readonly Mark[] {
  const { left, right } = silhouette(sections, view);
  const tapes = levels
    .filter(({ name }) => tapedLevels.includes(name))
    .flatMap(({ depthBelowNape }) => {
      const ring = firstAtOrBelow(sections, depthBelowNape.value);
      const [from, to] = [left[ring], right[ring]];
      return from === undefined || to === undefined
        ? []
        : [
            ribbon(
              [
                at(from.x, depthBelowNape.value),
                at((from.x + to.x) / 2, depthBelowNape.value + 5),
                at(to.x, depthBelowNape.value),
              ],
              tapeWidth,
              tickStep,
            ),
          ];
    });
  return [mark("tape", ...tapes.map(({ outline }) => outline)), mark("tapeTick", ...tapes.map(({ ticks }) => ticks))];
}
