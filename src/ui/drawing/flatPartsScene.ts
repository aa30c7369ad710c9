import { type FlatPoint, partFrame, partOutline, type PatternPart } from "../../core/pattern/patternPart";
import { circle, closedPath, openPath } from "./pathText";
import { at, type Label, label, type Mark, mark, type PicturePoint, type Scene } from "./scene";

export interface PartsPicture {
  readonly title: string;
  readonly names: readonly string[];
  /** Left out where a number would be too small for the room. */
  readonly isNumbered?: boolean;
}

/** Between two parts (mm), so that each stands by itself. */
const gap = 34;

/** Flat parts side by side in their order, a cover as if it lay unrolled: solid cuts, broken sews, dots are notches. */
export function flatPartsScene(
  parts: readonly PatternPart[],
  { title, names, isNumbered = true }: PartsPicture,
): Scene {
  const frames = parts.map(partFrame);
  const lefts = frames.map((_, i) => frames.slice(0, i).reduce((sum, { width }) => sum + width + gap, 0));
  const top = Math.max(...frames.map(({ bottom, height }) => bottom + height));
  const lowest = Math.min(...frames.map(({ bottom }) => bottom));
  const width = frames.reduce((sum, one) => sum + one.width + gap, -gap);
  const place = (i: number) => {
    const [frame, left] = [frames[i], lefts[i] ?? 0];
    return ({ x, y }: FlatPoint): PicturePoint => at(x - (frame?.left ?? 0) + left, top - y);
  };
  return {
    title,
    description: names.join(", "),
    frame: { x: -12, y: -12, width: width + 24, height: top - lowest + 24 + (isNumbered ? wordRoom : 0) },
    textSize: 26,
    marks: parts.flatMap((part, i) => marksOf(part, place(i))),
    labels: (isNumbered ? parts : []).map((_, i) =>
      numberOf(i, (lefts[i] ?? 0) + (frames[i]?.width ?? 0) / 2, top - lowest),
    ),
  };
}

const wordRoom = 76;

function marksOf(part: PatternPart, place: (point: FlatPoint) => PicturePoint): readonly Mark[] {
  const lines = (kind: PatternPart["lines"][number]["kind"]) =>
    part.lines.filter((line) => line.kind === kind).map(({ points }) => openPath(points.map(place)));
  const outline = closedPath(partOutline(part).map(place));
  // Batting is cut along its outline, cloth beside its sewing line.
  const cuts = lines("cut");
  return [
    mark("pieceNow", ...(cuts.length === 0 ? [outline] : cuts)),
    mark("thread", ...(cuts.length === 0 ? [] : [outline])),
    mark("levelLine", ...lines("level")),
    mark("leader", ...lines("grain")),
    mark("dot", ...part.notches.map((notch) => circle(place(notch), 4))),
  ];
}

/** Numbered in the order they are sewn. */
const numberOf = (i: number, x: number, below: number): Label => label("strong", at(x, below + 40), String(i + 1));
