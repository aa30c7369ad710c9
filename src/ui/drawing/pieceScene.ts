import type { LengthUnit } from "../../core/lengthText";
import type { Anchor, Layer } from "../../core/padding/layer";
import type { LayerCut } from "../../core/padding/layerCut";
import type { Piece } from "../../core/padding/piece";
import { inchMm, type LengthWriter } from "../../text/lengthWriter";
import { pictureWords } from "../../text/pictures";
import { spreadOut } from "./callouts";
import { dartLines } from "../../core/pattern/battingParts";
import { cutOutline, type CutWidth, type FlatCut, isEven } from "../../core/padding/cutOutline";
import { featherMarks, ticksInward } from "./featherMarks";
import { circle, closedPath, dimension, openPath, segment } from "./pathText";
import { at, label, type Label, mark, type PicturePoint, type Scene } from "./scene";
import { pictureTexts } from "../../text/pictureTexts";

/** One layer of a piece as it is cut: outline, anchor line, the band that is feathered, and every size it takes to cut it. */
export function pieceScene(picture: PiecePicture): Scene {
  const { cut } = picture;
  if (cut.shape === "bought") return boughtScene(picture);
  return cut.shape === "disc" ? discScene(picture, cut.diameter) : panelScene(picture, cut);
}

/** A layer for every shape to cut, from the form outwards. */
export const layerPictures = (
  piece: Piece,
  title: string,
  lengths: LengthWriter,
  shownOn: ShownOn,
): readonly PiecePicture[] =>
  piece.cut.flatMap((cut, i) => {
    const layer = piece.layers[i];
    const name = piece.layers.length === 1 ? title : pictureWords.layerOf(title, i + 1, piece.layers.length);
    return layer === undefined ? [] : [{ piece, layer, cut, title: name, lengths, shownOn }];
  });

/** A pad as it is bought has no size to cut. */
const boughtScene = ({ title }: PiecePicture): Scene => ({
  title,
  description: pictureWords.bought,
  frame: { x: 0, y: 0, width: 120, height: 20 },
  textSize: 8,
  marks: [],
  labels: [label("name", at(60, 10), pictureWords.bought)],
});

function discScene({ layer, title, lengths, shownOn = "paper" }: PiecePicture, diameter: number): Scene {
  const radius = diameter / 2;
  const { across, down } = linesOver[shownOn];
  const size = diameter / down;
  const thin = layer.feather;
  const width = across * size;
  const left = -radius - (width - diameter - discWordRoom * size) / 2;
  return {
    title,
    description: pictureTexts.disc(lengths.write(diameter)),
    frame: { x: left, y: -radius - size * 0.5, width, height: diameter + size },
    textSize: size,
    marks: [
      mark("layer", circle(at(0, 0), radius)),
      mark("feather", circle(at(0, 0), radius - thin)),
      mark("hatch", ticksInward(ringPoints(radius), thin * 0.4)),
      mark(
        "leader",
        dimension(at(-radius, 0), at(radius, 0), size * 0.5),
        segment(at(radius, 0), at(radius + size, 0)),
      ),
      mark("centre", segment(at(0, -size * 0.7), at(0, size * 0.7))),
    ],
    labels: [label("number", at(radius + size * 1.1, 0), pictureWords.diameter(lengths.write(diameter)), "start")],
  };
}

/** Room for the words on the right, in lines of words. */
const discWordRoom = 9;

const ringPoints = (radius: number): readonly PicturePoint[] =>
  Array.from({ length: 49 }, (_, i) =>
    at(radius * Math.cos((i / 24) * Math.PI), radius * Math.sin((i / 24) * Math.PI)),
  );

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
    title: pictureTexts.testSquare,
    description: pictureTexts.testSquareShows(lengths.write(side)),
    frame: { x: -2, y: -2, width: 96, height: 62 },
    textSize: 3.6,
    marks: [mark("ground", closedPath([at(0, 0), at(side, 0), at(side, side), at(0, side)]), ...inside)],
    labels: [label("name", at(0, side + 4.5), pictureWords.testSquare(lengths.write(side)), "start")],
  };
}

/**
 * One layer of a piece as it is cut, lying flat, top edge up and its outer side towards the reader. On the page the wearer's left
 * is on the right, as on a form that faces the reader.
 */
export interface PiecePicture {
  readonly piece: Piece;
  readonly layer: Layer;
  readonly cut: LayerCut;
  readonly title: string;
  readonly lengths: LengthWriter;
  /** A screen is smaller than a sheet and farther off: its words are larger beside the piece. On paper if left out. */
  readonly shownOn?: ShownOn;
}

/** A small card on paper, a large drawing on paper, a screen, or in brief: widths and height alone, where the rest is told elsewhere. */
export type ShownOn = "paper" | "largePaper" | "screen" | "brief";

/** How many lines of words would cover the whole picture across, and the piece in it down. */
const linesOver: { readonly [place in ShownOn]: { readonly across: number; readonly down: number } } = {
  paper: { across: 25, down: 7.5 },
  largePaper: { across: 33, down: 12 },
  screen: { across: 24, down: 11 },
  brief: { across: 32, down: 13 },
};

/**
 * A strip or a panel as it is cut. Beside it stands its width at every level line it crosses, on a line of its own that leads there: of an
 * even layer the whole width, of any other the widths to both sides of the anchor line; and at both ends where they lie.
 */
function panelScene({ piece, layer, title, lengths, shownOn = "paper" }: PiecePicture, cut: FlatCut): Scene {
  const outline = cutOutline(cut);
  const rows = outline;
  const even = isEven(outline);
  const [right, left] = [Math.max(...outline.map((row) => row.right)), Math.max(...outline.map((row) => row.left))];
  const height = outline.at(-1)?.belowTop ?? 0;
  const { across, down } = linesOver[shownOn];
  const beside = { left: even ? 1 : sideRoom, right: shownOn === "brief" ? wordRoom - 1.5 : wordRoom };
  const size = Math.max((right + left) / (across - beside.left - beside.right), height / down);
  const words = writtenWords(rows, even, lengths);
  const sizes = widthWords(rows, words, { left, right, height, size, even });
  const corners = [
    ...outline.map((row) => at(row.left, row.belowTop)),
    ...outline.toReversed().map((row) => at(-row.right, row.belowTop)),
  ];
  const slack = across * size - (beside.left + beside.right) * size - right - left;
  const foot = sizes.bottom + size * 0.9;
  const tall = pictureWords.topToLower(lengths.write(height));
  const centre = layer.wrap ? [pictureWords.butt, pictureWords.stripMiddle] : [anchorWords[piece.anchor]];
  const edges = pictureWords.edges(lengths.write(cut.topWidth), lengths.write(cut.bottomWidth));
  const darts = cut.darts.map(({ from, count, width, depth }) =>
    pictureWords.darts(from, count, lengths.write(width), lengths.write(depth)),
  );
  const foots =
    shownOn === "brief" ? [tall, ...centre] : [tall, ...linesDown(rows, lengths, across), edges, ...centre, ...darts];
  const frameLeft = -right - beside.left * size - slack / 2;
  const middle = frameLeft + (across * size) / 2;
  return {
    title,
    description: `${pictureWords.cutShape(layer.wrap, lengths.write(height))}: ${words.map(({ spoken }) => spoken).join(", ")}.`,
    frame: {
      x: frameLeft,
      y: sizes.top - size * 0.9,
      width: across * size,
      height: foot - sizes.top + size * (foots.length * 1.2 + 0.9),
    },
    textSize: size,
    marks: [
      mark("layer", closedPath(corners)),
      ...featherMarks(layer, corners),
      mark("leader", ...dartMarks(cut)),
      mark("centre", segment(at(0, 0), at(0, height))),
      mark("leader", sizes.path),
    ],
    labels: [
      ...sizes.labels,
      ...foots.map((words, i) => label(i === 0 ? "number" : "name", at(middle, foot + size * (0.5 + 1.2 * i)), words)),
    ],
  };
}

/** How far each level line lies below the top edge, in as many rows of words as it takes. */
function linesDown(rows: readonly CutWidth[], { write }: LengthWriter, across: number): readonly string[] {
  const places = rows.flatMap(({ at: place, belowTop }) =>
    "line" in place ? [pictureWords.lineDown(place.line, write(belowTop))] : [],
  );
  if (places.length === 0) return [];
  return places.slice(1).reduce<readonly string[]>(
    (lines, place) => {
      const last = lines.at(-1) ?? "";
      const joined = `${last}, ${place}`;
      return joined.length < lettersPerSize * across
        ? [...lines.slice(0, -1), joined]
        : [...lines.slice(0, -1), `${last},`, place];
    },
    [pictureWords.linesDown(places[0] ?? "")],
  );
}

/** Letters that surely fit into the width that one is high. */
const lettersPerSize = 1.85;

/** Every dart as a thin wedge, evenly spread: from an edge inward, through every line where it is still open. */
const dartMarks = (cut: FlatCut): readonly string[] =>
  dartLines(cut).map(({ points }) => openPath(points.map(({ x, y }) => at(x, cut.height - y))));

/** Room for the words of a row on the right, and for the width alone on the left of an uneven piece, in lines of words. */
const wordRoom = 15;
const sideRoom = 6;
const rowGap = 1.15;

/** One width in words: beside the drawing, on its left of an uneven piece as well, and for who hears it. */
interface WidthWords {
  readonly onRight: string;
  readonly onLeft: string;
  readonly spoken: string;
}

function writtenWords(rows: readonly CutWidth[], even: boolean, { write }: LengthWriter): readonly WidthWords[] {
  const { atLine, atEnd, wide, besideCentre } = pictureWords;
  return rows.map(({ written: { left, right }, at: place }) => {
    if ("end" in place) {
      const words = atEnd(write(place.end.distance), place.end.side, place.end.level);
      return { onRight: words, onLeft: "", spoken: words };
    }
    const whole = write(left + right);
    return {
      onRight: atLine(even ? whole : write(left), place.line),
      onLeft: even ? "" : write(right),
      spoken: atLine(even ? wide(whole) : besideCentre(write(right), write(left)), place.line),
    };
  });
}

interface PieceRoom {
  readonly left: number;
  readonly right: number;
  readonly height: number;
  readonly size: number;
  readonly even: boolean;
}

/** The written widths as lines across the piece, with leaders to their words in a column beside it. */
function widthWords(
  rows: readonly CutWidth[],
  words: readonly WidthWords[],
  { left, right, height, size, even }: PieceRoom,
): { readonly path: string; readonly labels: readonly Label[]; readonly top: number; readonly bottom: number } {
  const over = Math.max(0, (rows.length - 1) * rowGap * size - height) / 2;
  const [top, bottom] = [-over, height + over];
  const lines = spreadOut(
    rows.map(({ belowTop }) => belowTop),
    rowGap * size,
    top,
    bottom,
  );
  const paths = rows.map((row, i) => {
    const y = row.belowTop;
    const leader = (edge: number, side: 1 | -1, from: number): string =>
      openPath([at(side * edge, y), at(side * (from + size * 0.3), y), at(side * (from + size * 0.95), lines[i] ?? y)]);
    const across = row.left + row.right > 0 ? dimension(at(-row.right, y), at(row.left, y), size * 0.5) : "";
    return across + leader(row.left, 1, left) + (even ? "" : leader(row.right, -1, right));
  });
  return {
    path: paths.join(""),
    top,
    bottom,
    labels: words.flatMap(({ onRight, onLeft }, i) => [
      label("number", at(left + size * 1.1, lines[i] ?? 0), onRight, "start"),
      ...(onLeft === "" ? [] : [label("number", at(-right - size * 1.1, lines[i] ?? 0), onLeft, "end")]),
    ]),
  };
}

const anchorWords: { readonly [anchor in Anchor]: string } = {
  centerFront: pictureWords.centreFront,
  centerBack: pictureWords.centreBack,
  leftSide: pictureWords.leftSeam,
  rightSide: pictureWords.rightSeam,
};
