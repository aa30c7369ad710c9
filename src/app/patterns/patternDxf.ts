import { type FlatPoint, partFrame, type PatternLine, partOutline } from "../../core/pattern/patternPart";
import { placedBeside, type Placed } from "./sheetLayout";
import { foldedWords, type TitledPart } from "./titledPart";

/** One part at its true size: release 12 of the exchange format, millimeters, one layer for each kind of line. */
export const dxfOfPart = (titled: TitledPart): string => dxfOf(placedBeside([titled], Number.POSITIVE_INFINITY));

/** All parts side by side at their true size. */
export const dxfOfParts = (titled: readonly TitledPart[], tallest: number): string =>
  dxfOf(placedBeside(titled, tallest));

/** Which layer a line lies on; colors are the format's own numbers. */
const layerOf: { readonly [kind in PatternLine["kind"]]: string } = {
  cut: "CUT",
  level: "LEVEL_LINES",
  anchor: "LAY_ON_LINE",
  grain: "GRAIN",
  dart: "DARTS",
  slit: "SLITS",
};
const layers = ["OUTLINE", "NOTCHES", "WORDS", ...Object.values(layerOf)];

type Pair = readonly [code: number, value: string | number];

function dxfOf({ parts, width, height }: Placed): string {
  const pairs: readonly Pair[] = [
    [0, "SECTION"],
    [2, "HEADER"],
    [9, "$ACADVER"],
    [1, "AC1009"],
    [9, "$EXTMIN"],
    [10, 0],
    [20, 0],
    [9, "$EXTMAX"],
    [10, figure(width)],
    [20, figure(height)],
    [0, "ENDSEC"],
    [0, "SECTION"],
    [2, "TABLES"],
    [0, "TABLE"],
    [2, "LAYER"],
    [70, layers.length],
    ...layers.flatMap((name, i): readonly Pair[] => [
      [0, "LAYER"],
      [2, name],
      [70, 0],
      [62, i + 1],
      [6, "CONTINUOUS"],
    ]),
    [0, "ENDTAB"],
    [0, "ENDSEC"],
    [0, "SECTION"],
    [2, "ENTITIES"],
    ...parts.flatMap(({ titled, x, y }) => entities(titled, (one) => ({ x: one.x + x, y: one.y + y }))),
    [0, "ENDSEC"],
    [0, "EOF"],
  ];
  return pairs.map(([code, value]) => `${code}\r\n${value}\r\n`).join("");
}

type ToSheet = (point: FlatPoint) => { readonly x: number; readonly y: number };

function entities(titled: TitledPart, move: ToSheet): readonly Pair[] {
  const { part } = titled;
  const frame = partFrame(part);
  const middle = { x: frame.left + frame.width / 2, y: frame.bottom + frame.height / 2 } as FlatPoint;
  return [
    ...polyline("OUTLINE", partOutline(part).map(move), true),
    ...part.lines.flatMap(({ kind, points }) => polyline(layerOf[kind], points.map(move), false)),
    ...part.notches.map(move).flatMap((at): readonly Pair[] => [[0, "POINT"], [8, "NOTCHES"], ...place(at)]),
    ...foldedWords(titled, frame.width / textHeight).flatMap((line, i): readonly Pair[] => [
      [0, "TEXT"],
      [8, "WORDS"],
      ...place({ x: move(middle).x, y: move(middle).y - i * 1.3 * textHeight }),
      [40, textHeight],
      [1, plain(line)],
    ]),
  ];
}

const textHeight = 5;

const polyline = (layer: string, points: readonly ReturnType<ToSheet>[], isClosed: boolean): readonly Pair[] => [
  [0, "POLYLINE"],
  [8, layer],
  [66, 1],
  [70, isClosed ? 1 : 0],
  ...points.flatMap((at): readonly Pair[] => [[0, "VERTEX"], [8, layer], ...place(at)]),
  [0, "SEQEND"],
  [8, layer],
];

const place = ({ x, y }: ReturnType<ToSheet>): readonly Pair[] => [
  [10, figure(x)],
  [20, figure(y)],
  [30, 0],
];

/** To a hundredth of a millimeter. */
const figure = (value: number): string => (Math.round(100 * value) / 100).toFixed(2);

/** The format knows plain letters; any other is written by its number. */
const plain = (text: string): string =>
  [...text].map((letter) => (letter >= " " && letter <= "~" ? letter : numbered(letter))).join("");

const numbered = (letter: string): string =>
  `\\U+${(letter.codePointAt(0) ?? 0x3f).toString(16).toUpperCase().padStart(4, "0")}`;
