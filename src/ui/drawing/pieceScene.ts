import type { LengthUnit } from "../../core/lengthText";
import type { CutWidth, Piece } from "../../core/padding/piece";
import { pictureWords } from "../text/pictures";
import { insetRings } from "./insetRings";
import { inchMm, type LengthWriter } from "./lengthWriter";
import { circle, closedPath, dimension, openPath, segment } from "./pathText";
import { at, between, type PicturePoint } from "./picturePoint";
import { label, mark, type Label, type Mark, type Scene } from "./scene";

/**
 * One piece as it is cut, lying flat, top edge up and its outer side towards the reader: outline, centre line, the band
 * that is pulled thin, and its sizes. On the page the wearer's left is on the right, as on a form that faces the reader.
 */
export interface PiecePicture {
  readonly piece: Piece;
  readonly title: string;
  readonly lengths: LengthWriter;
  /** A screen is smaller than a sheet and farther off: its words are larger beside the piece. On paper if left out. */
  readonly shownOn?: "paper" | "screen";
}

export function pieceScene(picture: PiecePicture): Scene {
  const { cut } = picture.piece;
  return cut.shape === "disc" ? discScene(picture, cut.diameter) : panelScene(picture);
}

/** How many lines of words would cover a piece, across and down. */
const wordsOver = {
  paper: { across: 16, down: 13, disc: 13 },
  screen: { across: 9, down: 11, disc: 12 },
} as const;

function discScene({ piece, title, lengths, shownOn = "paper" }: PiecePicture, diameter: number): Scene {
  const radius = diameter / 2;
  const size = diameter / wordsOver[shownOn].disc;
  // A small filler may be all slope: it is then pulled thin from its middle.
  const thin = Math.min(piece.feather, radius);
  return {
    title,
    description: `A disc ${lengths.write(diameter)} across; pull its edge thin over ${lengths.write(thin)}.`,
    frame: { x: -radius * 1.5, y: -radius * 1.2, width: diameter * 1.5, height: diameter * 1.2 + size * 4.4 },
    textSize: size,
    marks: [
      mark("layer", circle(at(0, 0), radius)),
      mark("feather", circle(at(0, 0), radius - thin)),
      mark("hatch", ticksInward(ringPoints(radius), thin * 0.4)),
      mark("leader", dimension(at(-radius, radius + size * 1.3), at(radius, radius + size * 1.3), size * 0.6)),
      mark("centre", segment(at(-size * 0.7, 0), at(size * 0.7, 0)), segment(at(0, -size * 0.7), at(0, size * 0.7))),
    ],
    labels: [
      label("strong", at(0, radius + size * 2.3), pictureWords.diameter(lengths.write(diameter))),
      label("quiet", at(0, radius + size * 3.7), pictureWords.feather(lengths.write(thin))),
    ],
  };
}

const ringPoints = (radius: number): readonly PicturePoint[] =>
  Array.from({ length: 49 }, (_, i) =>
    at(radius * Math.cos((i / 24) * Math.PI), radius * Math.sin((i / 24) * Math.PI)),
  );

/** Places a step apart along a closed outline, the same way round. */
function evenSteps(outline: readonly PicturePoint[], step: number): readonly PicturePoint[] {
  const ring = [...outline, ...outline.slice(0, 1)];
  let carry = 0;
  return ring.slice(1).flatMap((to, i) => {
    const from = ring[i] ?? to;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const count = Math.floor((carry + length) / step);
    const places = Array.from({ length: count }, (_, k) => between(from, to, ((k + 1) * step - carry) / length));
    carry += length - count * step;
    return places;
  });
}

/** Short strokes from the edge inward, the sign for batting pulled thin. The ring runs with the piece on its right. */
function ticksInward(ring: readonly PicturePoint[], reach: number): string {
  return ring
    .slice(1)
    .map((to, i) => {
      const from = ring[i] ?? to;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const [x, y] = length === 0 ? [0, 0] : [-(to.y - from.y) / length, (to.x - from.x) / length];
      return segment(to, at(to.x + x * reach, to.y + y * reach));
    })
    .join("");
}

function panelScene({ piece, title, lengths, shownOn = "paper" }: PiecePicture): Scene {
  const widths = cutWidths(piece);
  const [right, left] = [Math.max(...widths.map((row) => row.right)), Math.max(...widths.map((row) => row.left))];
  const height = widths.at(-1)?.belowTop ?? 0;
  const size = Math.max((right + left) / wordsOver[shownOn].across, height / wordsOver[shownOn].down);
  const outline = [
    ...widths.map((row) => at(row.left, row.belowTop)),
    ...widths.toReversed().map((row) => at(-row.right, row.belowTop)),
  ];
  const isRound = piece.zone === "round";
  const sizes = widthSizes(widths, size, lengths);
  const across = Math.max(right + left + size * 14.5, size * 24);
  const frame = { x: (left - right) / 2 - across / 2, y: -size * 2.2, width: across, height: height + size * 5.6 };
  const upright = -right - size * 1.4;
  return {
    title,
    description: describe(widths, height, isRound, lengths),
    frame,
    textSize: size,
    marks: [
      mark("layer", closedPath(outline)),
      ...featherMarks(piece, outline, isRound),
      mark("centre", segment(at(0, 0), at(0, height))),
      mark("leader", dimension(at(upright, 0), at(upright, height), size * 0.6), sizes.path),
    ],
    labels: [
      label("strong", at(0, -size * 0.9), pictureWords.top),
      label("strong", at(upright - size * 0.5, height / 2), lengths.write(height), "end"),
      ...sizes.labels,
      label("quiet", at(0, height + size * 1.1), centreWords(piece, widths)),
      label("quiet", at(0, height + size * 2.4), pictureWords.feather(lengths.write(piece.feather))),
    ],
  };
}

/** A strip without stated widths is a plain rectangle. */
function cutWidths({ cut }: Piece): readonly CutWidth[] {
  if (cut.shape === "disc") return [];
  if (cut.widths.length > 1) return cut.widths;
  const [across, height] = cut.shape === "strip" ? [cut.length, cut.width] : [cut.height, cut.height];
  const half = (across / 2) as CutWidth["left"];
  return [0, height].map((belowTop) => ({ belowTop: belowTop as CutWidth["belowTop"], left: half, right: half }));
}

/** The whole width on lines across the piece, the widest first, each with how far it lies below the top. */
function widthSizes(
  widths: readonly CutWidth[],
  size: number,
  lengths: LengthWriter,
): { readonly path: string; readonly labels: readonly Label[] } {
  const last = widths.length - 1;
  const whole = (row: CutWidth): number => row.left + row.right;
  const edge = Math.max(...widths.map((row) => row.left));
  const widest = widths.reduce((found, row, i) => (whole(row) > whole(widths[found] ?? row) + 1 ? i : found), 0);
  const height = widths.at(-1)?.belowTop ?? 0;
  const rows = [widest, ...[0.12, 0.88, 0.5, 0.3, 0.7].map((share) => Math.round(last * share))].filter((row) => {
    const place = widths[row]?.belowTop ?? 0;
    return Math.min(place, height - place) >= Math.min(size * 0.9, height * 0.2);
  });
  const shown = spaced(rows, widths, size * 1.9).flatMap((i) => widths[i] ?? []);
  return {
    path: shown.map((row) => dimension(at(-row.right, row.belowTop), at(row.left, row.belowTop), size * 0.6)).join(""),
    labels: shown.flatMap((row) => [
      label("size", at((row.left - row.right) / 2, row.belowTop), lengths.write(whole(row))),
      label("quiet", at(edge + size * 0.8, row.belowTop), pictureWords.belowTop(lengths.write(row.belowTop)), "start"),
    ]),
  };
}

/** Rows at least a gap apart, those named first kept first, in order from the top. */
function spaced(rows: readonly number[], widths: readonly CutWidth[], gap: number): readonly number[] {
  const kept: number[] = [];
  for (const row of rows) {
    const place = widths[row]?.belowTop ?? 0;
    if (kept.every((other) => Math.abs((widths[other]?.belowTop ?? 0) - place) >= gap)) kept.push(row);
  }
  return kept.toSorted((a, b) => a - b);
}

function featherMarks(piece: Piece, outline: readonly PicturePoint[], isRound: boolean): readonly Mark[] {
  if (!isRound) {
    const ticks = ticksInward(evenSteps(outline, piece.feather / 2.5), piece.feather * 0.3);
    return [mark("feather", ...insetRings(outline, piece.feather).map(closedPath)), mark("hatch", ticks)];
  }
  const bottom = Math.max(...outline.map(({ y }) => y));
  const edge = (y: number): readonly PicturePoint[] => {
    const half = outline.slice(0, outline.length / 2);
    const below = half.findIndex((point) => point.y >= y);
    const [from, to] = [half[Math.max(0, below - 1)] ?? at(0, y), half[below] ?? at(0, y)];
    const { x } = between(from, to, to.y === from.y ? 0 : (y - from.y) / (to.y - from.y));
    return [at(-x, y), at(x, y)];
  };
  return [mark("feather", openPath(edge(piece.feather)), openPath(edge(bottom - piece.feather)))];
}

/** Both sides alike to a millimetre and a half: the piece can be cut on a fold along its centre line. */
const isEven = (widths: readonly CutWidth[]): boolean =>
  widths.every(({ left, right }) => Math.abs(left - right) <= evenWithin);
const evenWithin = 1.5;

function centreWords({ zone }: Piece, widths: readonly CutWidth[]): string {
  if (zone === "round") return pictureWords.butt;
  const names = {
    front: pictureWords.centreFront,
    back: pictureWords.centreBack,
    leftSide: pictureWords.leftSeam,
    rightSide: pictureWords.rightSeam,
    leftCup: pictureWords.centreLine,
    rightCup: pictureWords.centreLine,
  };
  return isEven(widths) ? `${names[zone]}: ${pictureWords.fold}` : names[zone];
}

function describe(widths: readonly CutWidth[], height: number, isRound: boolean, lengths: LengthWriter): string {
  const rows = [widths[0], widths[Math.floor(widths.length / 2)], widths.at(-1)].flatMap((row) => row ?? []);
  const sizes = rows.map(
    (row) => `${lengths.write(row.left + row.right)} wide ${lengths.write(row.belowTop)} below its top`,
  );
  return `${isRound ? "A strip that goes all the way round" : "A panel"}, ${lengths.write(height)} from top to bottom: ${sizes.join(", ")}.`;
}

/** A side that the ruler at hand shows as a whole number: 2 in or 5 cm. Millimetres. */
export const testSquareSide = (unit: LengthUnit): number => (unit === "in" ? 2 * inchMm : 50);

/** A square to print at true size and measure, before anything is cut from paper. */
export function testSquareScene(lengths: LengthWriter): Scene {
  const side = testSquareSide(lengths.unit);
  const step = side / (lengths.unit === "in" ? 4 : 5);
  const inside = [1, 2, 3, 4]
    .map((i) => i * step)
    .filter((from) => from < side)
    .flatMap((from) => [segment(at(from, 0), at(from, 2.5)), segment(at(0, from), at(2.5, from))]);
  return {
    title: "Test square",
    description: `Printed at its true size this square measures ${lengths.write(side)} each way.`,
    frame: { x: -2, y: -2, width: 96, height: 62 },
    textSize: 3.6,
    marks: [mark("ground", closedPath([at(0, 0), at(side, 0), at(side, side), at(0, side)]), ...inside)],
    labels: [label("name", at(0, side + 4.5), pictureWords.testSquare(lengths.write(side)), "start")],
  };
}
