import { type Piece, pieceExtent } from "../../core/padding/piece";
import type { PlannedLevel } from "../../core/plan/plan";
import { bodyCurveOf, formCurveOf } from "../../core/plan/torsosOfPlan";
import type { PaddedSection } from "../../core/surface/paddedSection";
import { firstAtOrBelow } from "../../core/surface/paddedSurface";
import { levelWords, pictureWords } from "../../text/pictures";
import { columnCallouts } from "./callouts";
import { armholeDepth, type FigureView, formFigure, formMarks, viewWords } from "./figureView";
import type { LengthWriter } from "../../text/lengthWriter";
import { type FacingStrip, pieceOnFigure, stripOutline } from "./pieceOnFigure";
import { figureSections, silhouette } from "./silhouette";
import { closedPath, openPath, segment } from "./pathText";
import { at, between, type Frame, label, type Label, mark, type Mark, type PicturePoint, type Scene } from "./scene";
import { scaleBar } from "./rulers";
import { pictureTexts } from "../../text/pictureTexts";

/**
 * The form with its padding and the body round it, from the front, the back or the left side, built from the plan's own
 * sections. Every piece lies where it goes; the piece at hand is filled and hatched.
 */
interface FigurePicture {
  readonly levels: readonly PlannedLevel[];
  readonly pieces: readonly Piece[];
  readonly view: FigureView;
  /** The piece at hand: it and all before it lie on the form. Left out, all pieces do and each carries its number. */
  readonly now?: number;
  readonly lengths: LengthWriter;
  /** On paper it is a small picture on a full sheet: its words are larger beside the form. On a screen if left out. */
  readonly shownOn?: FigurePlace;
  /** Whether the levels carry their names; of two figures side by side one may do. They do if left out. */
  readonly isNamed?: boolean;
  /** Whether a line leads from each level to its name, for those who see it from afar. */
  readonly isLed?: boolean;
}

export type FigurePlace = "screen" | "paper";

export function figureScene({
  levels,
  pieces,
  view,
  now,
  lengths,
  shownOn = "screen",
  isNamed = true,
  isLed = false,
}: FigurePicture): Scene {
  const shown = pieces.filter(({ order }) => now === undefined || order <= now).toSorted((a, b) => a.order - b.order);
  const sectionAt = formCurveOf(levels);
  const { top, bottom } = figureExtent(levels, pieces);
  const bare = figureSections(sectionAt, [], top, bottom);
  const padded = figureSections(sectionAt, shown, top, bottom);
  const finished = shown.length === pieces.length ? padded : figureSections(sectionAt, pieces, top, bottom);
  const body = figureSections(bodyCurveOf(levels), [], top, bottom);
  const placed = shown.map((piece) => ({ piece, strips: pieceOnFigure(piece, view, sectionAt, padded) }));
  const { frame, textSize } = figureFrame(view, [bare, body, finished], bottom, { ...linesOver[shownOn], isNamed });
  const toNumbers = -frame.x - (numberRoom / 2) * textSize;
  const columns = {
    left: -toNumbers,
    right: toNumbers,
    top: frame.y + textSize * 3,
    bottom: frame.y + frame.height - textSize * 2.5,
  };
  const numbers = columnCallouts(
    placed.filter(({ piece }) => now === undefined || piece.order === now),
    columns,
    textSize,
  );
  const bar = scaleBar(at(frame.x + textSize * 0.5, frame.y + frame.height - textSize * 0.5), lengths, textSize);
  const seen = placed.filter(({ strips }) => strips.length > 0).map(({ piece }) => String(piece.order));
  return {
    title: pictureTexts.figure(now, viewWords[view]),
    description: pictureTexts.figureShows(viewWords[view], seen),
    frame,
    textSize,
    marks: [
      ...paddingMarks(padded, view),
      ...formMarks(formFigure(silhouette(bare, view), view)),
      ...levelLines(levels, padded, view),
      ...pieceMarks(placed, now),
      ...bodyMarks(levels, body, view),
      ...(isNamed && isLed ? [nameLeaders(levels, [padded, body], view, frame, textSize)] : []),
      ...numbers.marks,
      ...bar.marks,
    ],
    labels: [...viewLabels(isNamed ? levels : [], view, frame, textSize), ...numbers.labels, ...bar.labels],
  };
}

/** From a little above the highest piece or the armhole to below the lowest piece or the full hip (drops, mm). */
export function figureExtent(
  levels: readonly PlannedLevel[],
  pieces: readonly Piece[],
): { readonly top: number; readonly bottom: number } {
  const highest = Math.min(110, ...pieces.map((piece) => pieceExtent(piece).top - 5));
  const lowest = Math.max(
    levels.at(-1)?.depthBelowNape.value ?? 0,
    ...pieces.map((piece) => pieceExtent(piece).bottom - 35),
  );
  return { top: highest, bottom: lowest + 60 };
}

/** The frame of a figure with a gutter for the numbers of pieces on either side and one more for the names of the levels. */
function figureFrame(
  view: FigureView,
  surfaces: readonly (readonly PaddedSection[])[],
  bottom: number,
  { across, down, isNamed } = { ...linesOver.screen, isNamed: true },
): { readonly frame: Frame; readonly textSize: number } {
  const reach = surfaces.flatMap((surface) => {
    const { left, right } = silhouette(surface, view);
    return [...left, ...right].map(({ x }) => Math.abs(x));
  });
  const half = Math.max(176, ...reach);
  const height = bottom + 70 + 100;
  const gutters = 2 * numberRoom + (isNamed ? nameRoom : 0);
  const textSize = Math.max((2 * half) / (across - 2 * numberRoom - nameRoom), height / down);
  const x = -half - numberRoom * textSize;
  return { frame: { x, y: -100, width: 2 * half + gutters * textSize, height }, textSize };
}

/** How many lines of words would cover the picture across and down. */
const linesOver: { readonly [place in FigurePlace]: { readonly across: number; readonly down: number } } = {
  screen: { across: 21, down: 25.2 },
  paper: { across: 15.8, down: 15.1 },
};

/** Room for a number of two digits, and for the longest name of a level; in lines of words. */
const numberRoom = 1.7;
const nameRoom = 5.2;

/** The padding where it stands out beyond the bare form. */
export function paddingMarks(padded: readonly PaddedSection[], view: FigureView): readonly Mark[] {
  const { left, right } = silhouette(padded, view);
  const below = (points: readonly PicturePoint[]) => points.filter(({ y }) => y >= armholeDepth);
  return [mark("layer", closedPath([...below(left), ...below(right).toReversed()]))];
}

export function levelLines(
  levels: readonly PlannedLevel[],
  padded: readonly PaddedSection[],
  view: FigureView,
): readonly Mark[] {
  const { left, right } = silhouette(padded, view);
  const lines = levels.map(({ depthBelowNape }) => {
    const ring = firstAtOrBelow(padded, depthBelowNape.value);
    const [from, to] = [left[ring], right[ring]];
    return from === undefined || to === undefined
      ? ""
      : segment(at(from.x, depthBelowNape.value), at(to.x, depthBelowNape.value));
  });
  return [mark("formLine", ...lines)];
}

/** From beyond the outline at each level to where its name begins. */
function nameLeaders(
  levels: readonly PlannedLevel[],
  surfaces: readonly (readonly PaddedSection[])[],
  view: FigureView,
  frame: Frame,
  size: number,
): Mark {
  const rights = surfaces.map((sections) => ({ sections, right: silhouette(sections, view).right }));
  const edge = frame.x + frame.width - size * 0.3;
  const lines = levels.map(({ name, depthBelowNape: { value: y } }) => {
    const from = Math.max(...rights.map(({ sections, right }) => right[firstAtOrBelow(sections, y)]?.x ?? 0));
    const to = edge - levelWords[name].length * size * 0.56;
    return to - from < size * 0.6 ? "" : segment(at(from + size * 0.25, y), at(to, y));
  });
  return mark("leader", ...lines);
}

export function pieceMarks(
  placed: readonly { readonly piece: Piece; readonly strips: readonly FacingStrip[] }[],
  now: number | undefined,
): readonly Mark[] {
  const paths = (isNow: boolean): readonly string[] =>
    placed
      .filter(({ piece }) => (piece.order === now) === isNow)
      .flatMap(({ strips }) => strips.map((strip) => stripOutline(strip)));
  const hatches = placed.filter(({ piece }) => piece.order === now).flatMap(({ strips }) => strips.map(stripHatch));
  return [mark("piece", ...paths(false)), mark("pieceNow", ...paths(true)), mark("hatchNow", ...hatches)];
}

/** Slanted strokes from edge to edge of a strip. */
const stripHatch = (strip: FacingStrip): string =>
  strip
    .slice(0, -1)
    .map(({ left, right }, i) => {
      const below = strip[i + 1];
      return below === undefined ? "" : segment(between(left, below.left, 1), right);
    })
    .join("");

/**
 * The body's outline. From the front and back it hangs on the breadth, which follows from the girths; from the side it is
 * firm between levels whose arcs were measured.
 */
export function bodyMarks(
  levels: readonly PlannedLevel[],
  body: readonly PaddedSection[],
  view: FigureView,
): readonly Mark[] {
  const { left, right } = silhouette(body, view);
  const isFirm = (depthBelowNape: number): boolean => {
    const below = levels.findIndex((level) => level.depthBelowNape.value >= depthBelowNape);
    const around = [levels[Math.max(0, below - 1)], levels[below]];
    return view === "side" && below > 0 && around.every((level) => level?.body.frontArc.kind === "measured");
  };
  const runs = [left, right].flatMap((edge) =>
    firmRuns(
      edge.filter(({ y }) => y >= armholeDepth),
      isFirm,
    ),
  );
  return [
    mark("bodyGuess", ...runs.filter(({ firm }) => !firm).map(({ points }) => openPath(points))),
    mark("body", ...runs.filter(({ firm }) => firm).map(({ points }) => openPath(points))),
  ];
}

function firmRuns(
  edge: readonly PicturePoint[],
  isFirm: (depthBelowNape: number) => boolean,
): readonly { readonly firm: boolean; readonly points: readonly PicturePoint[] }[] {
  const runs: { firm: boolean; points: PicturePoint[] }[] = [];
  for (const point of edge) {
    const last = runs.at(-1);
    last?.points.push(point);
    if (last === undefined || last.firm !== isFirm(point.y)) runs.push({ firm: isFirm(point.y), points: [point] });
  }
  return runs;
}

function viewLabels(levels: readonly PlannedLevel[], view: FigureView, frame: Frame, size: number): readonly Label[] {
  const words =
    view === "front"
      ? [pictureWords.right, pictureWords.left]
      : view === "back"
        ? [pictureWords.left, pictureWords.right]
        : [pictureWords.front, pictureWords.back];
  const edge = frame.x + frame.width - size * 0.3;
  return [
    label("strong", at(frame.x + size * 0.4, frame.y + size), words[0] ?? "", "start"),
    label("strong", at(-frame.x, frame.y + size), words[1] ?? "", "end"),
    ...levels.map(({ name, depthBelowNape }) =>
      label("quiet", at(edge, depthBelowNape.value), levelWords[name], "end"),
    ),
  ];
}
