import {
  appendBezierCurve,
  clip,
  concatTransformationMatrix,
  degrees,
  endPath,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFOperator,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  setDashPattern,
  setLineWidth,
  StandardFonts,
  stroke,
} from "@cantoo/pdf-lib";
import { type FlatPoint, partFrame, partOutline } from "../../core/pattern/patternPart";
import { placedBeside } from "./sheetLayout";
import {
  isClear,
  overlap,
  stepAcross,
  type Tile,
  tileHeight,
  tileName,
  tilesOf,
  tileWidth,
  type Tiling,
  stepDown,
} from "./tiles";
import { dashesOf, outlineDashes } from "./lineDashes";
import { folded, type TitledPart } from "./titledPart";

/** The words of the printed pages, said by whoever asks for them. */
export interface PatternPdfWords {
  readonly title: string;
  readonly measureFirst: readonly string[];
  readonly inchSquare: string;
  readonly metricSquare: string;
  readonly howTo: readonly string[];
  readonly pagesOf: (title: string, pages: number) => string;
  readonly layOn: (page: string) => string;
  readonly pageOf: (title: string, tile: string, page: number, pages: number) => string;
}

/** Sizes of paper, in millimeters. */
export const papers = {
  letter: { width: 215.9, height: 279.4 },
  a4: { width: 210, height: 297 },
} as const;
export type PaperName = keyof typeof papers;

/** Points in a millimeter. */
const point = 72 / 25.4;

/** Text of 10 points and of 14, and a head of 22, in millimeters. */
const [small, large, head] = [10 / point, 14 / point, 22 / point];

/** What a copy shop prints on (mm): a roll of 36 inches, and one as wide as A0. */
export const rollWidths = { sheet: 36 * 25.4, sheetA0: 841 } as const;
export type SheetName = keyof typeof rollWidths;
const sheetMargin = 15;
/** No page of this format is longer (mm). */
const longestPage = 5000;

/** Every part at its true size on pages of paper, each part beginning its own pages; the first page has what to measure and a map. */
export async function tiledPdf(parts: readonly TitledPart[], paper: PaperName, words: PatternPdfWords) {
  const tilings = parts.map((titled) => ({ titled, tiling: tilesOf(titled.part) }));
  const { document, font, bold } = await newDocument(words.title);
  const { width, height } = papers[paper];
  const pen = (): Pen => {
    const page = document.addPage([width * point, height * point]);
    return new Pen(page, font, bold, (width - tileWidth) / 2, (height - tileHeight) / 2);
  };
  firstPages(tilings, words, pen);
  const pages = tilings.reduce((sum, { tiling }) => sum + tiling.tiles.length, 0);
  let printed = 0;
  for (const { titled, tiling } of tilings) {
    for (const tile of tiling.tiles) {
      printed += 1;
      tilePage(pen(), titled, tiling, tile, words, [printed, pages]);
    }
  }
  return document.save();
}

/** How many pages a written file has. */
export const pageCount = async (pdf: Uint8Array): Promise<number> => (await PDFDocument.load(pdf)).getPageCount();

/** Every part at its true size on sheets as tall as a roll is wide; taller where a part is. */
export async function sheetPdf(parts: readonly TitledPart[], sheetName: SheetName, words: PatternPdfWords) {
  const { document, font, bold } = await newDocument(words.title);
  const tallest = Math.max(rollWidths[sheetName] - 2 * sheetMargin, ...parts.map(({ part }) => partFrame(part).height));
  for (const sheet of sheetsOf(parts, tallest)) {
    const placed = placedBeside(sheet, tallest);
    const squares = 120;
    const page = document.addPage([
      (placed.width + squares + 2 * sheetMargin) * point,
      (tallest + 2 * sheetMargin) * point,
    ]);
    const pen = new Pen(page, font, bold, sheetMargin, sheetMargin);
    testSquares(pen, 0, tallest - 5, words);
    for (const { titled, x, y } of placed.parts) {
      drawPart(pen, titled, (one) => ({ x: squares + one.x + x, y: one.y + y }));
      const frame = partFrame(titled.part);
      partWords(pen, titled, {
        x: squares + frame.left + x + frame.width / 2,
        y: frame.bottom + y + frame.height / 2,
        room: 0.75 * frame.width,
      });
    }
  }
  return document.save();
}

/** As many sheets as it takes for none to be too long; the widest parts first. */
function sheetsOf(parts: readonly TitledPart[], tallest: number): readonly (readonly TitledPart[])[] {
  const most = longestPage - 200;
  const sheets: TitledPart[][] = [];
  for (const titled of parts) {
    const last = sheets.at(-1);
    if (last !== undefined && placedBeside([...last, titled], tallest).width <= most) last.push(titled);
    else sheets.push([titled]);
  }
  return sheets;
}

async function newDocument(title: string) {
  const document = await PDFDocument.create();
  document.setTitle(title);
  const font = await document.embedFont(StandardFonts.Helvetica);
  const bold = await document.embedFont(StandardFonts.HelveticaBold);
  return { document, font, bold };
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Draws in millimeters from the lower left corner of what is printed. */
class Pen {
  constructor(
    private readonly page: PDFPage,
    private readonly font: PDFFont,
    private readonly bold: PDFFont,
    private readonly left: number,
    private readonly bottom: number,
  ) {}

  private drawn(operators: readonly PDFOperator[]): void {
    this.page.pushOperators(
      pushGraphicsState(),
      concatTransformationMatrix(point, 0, 0, point, this.left * point, this.bottom * point),
      ...operators,
      popGraphicsState(),
    );
  }

  /** A line through places, closed or open; of what lies outside the frame nothing is seen. */
  line(points: readonly Spot[], style: LineStyle = {}): void {
    const [first, ...others] = points;
    if (first === undefined) return;
    const { isClosed = false, width = 0.35, dashes = [], within } = style;
    this.drawn([
      ...(within === undefined ? [] : [...rectangle(within), clip(), endPath()]),
      setLineWidth(width),
      setDashPattern([...dashes], 0),
      moveTo(first.x, first.y),
      ...others.map(({ x, y }) => lineTo(x, y)),
      ...(isClosed ? [lineTo(first.x, first.y)] : []),
      stroke(),
    ]);
  }

  circle({ x, y }: Spot, radius: number, within?: Box): void {
    const k = 0.5523 * radius;
    this.drawn([
      ...(within === undefined ? [] : [...rectangle(within), clip(), endPath()]),
      setLineWidth(0.3),
      moveTo(x + radius, y),
      appendBezierCurve(x + radius, y + k, x + k, y + radius, x, y + radius),
      appendBezierCurve(x - k, y + radius, x - radius, y + k, x - radius, y),
      appendBezierCurve(x - radius, y - k, x - k, y - radius, x, y - radius),
      appendBezierCurve(x + k, y - radius, x + radius, y - k, x + radius, y),
      stroke(),
    ]);
  }

  /** Words in lines that are no longer than there is room. */
  folded(words: string, size: number, room: number): readonly string[] {
    return folded(words, (line) => this.widthOf(line, size) <= room);
  }

  widthOf(words: string, size: number): number {
    return this.font.widthOfTextAtSize(words, size * point) / point;
  }

  text(words: string, { x, y }: Spot, size: number, style: TextStyle = {}): void {
    const font = style.isBold === true ? this.bold : this.font;
    const wide = font.widthOfTextAtSize(words, size * point) / point;
    const back = style.anchor === "middle" ? wide / 2 : 0;
    const upright = style.isUpright === true;
    this.page.drawText(words, {
      x: (this.left + x - (upright ? 0 : back)) * point,
      y: (this.bottom + y - (upright ? back : 0)) * point,
      size: size * point,
      font,
      ...(upright ? { rotate: degrees(90) } : {}),
    });
  }
}

interface Box extends Spot {
  readonly width: number;
  readonly height: number;
}

interface LineStyle {
  readonly isClosed?: boolean;
  readonly width?: number;
  readonly dashes?: readonly number[];
  readonly within?: Box;
}

interface TextStyle {
  readonly isBold?: boolean;
  readonly anchor?: "middle";
  readonly isUpright?: boolean;
}

const rectangle = ({ x, y, width, height }: Box): readonly PDFOperator[] => [
  moveTo(x, y),
  lineTo(x + width, y),
  lineTo(x + width, y + height),
  lineTo(x, y + height),
];

/** Outline, lines and notches of a part; of what lies outside the frame nothing is seen. */
function drawPart(pen: Pen, { part }: TitledPart, move: (one: FlatPoint) => Spot, within?: Box): void {
  const clipped = within === undefined ? {} : { within };
  pen.line(partOutline(part).map(move), { isClosed: true, width: 0.5, dashes: outlineDashes(part), ...clipped });
  for (const { kind, points } of part.lines) pen.line(points.map(move), { dashes: dashesOf[kind], ...clipped });
  for (const at of part.notches.map(move)) pen.circle(at, 1, within);
}

function partWords(pen: Pen, { title, says }: TitledPart, { x, y, room }: Spot & { readonly room: number }): void {
  const heads = pen.folded(title, large, room);
  const lines = says.flatMap((line) => pen.folded(line, small, room));
  for (const [i, line] of heads.entries()) {
    pen.text(line, { x, y: y + 2 + (heads.length - 1 - i) * large * lineStep }, large, {
      isBold: true,
      anchor: "middle",
    });
  }
  for (const [i, line] of lines.entries())
    pen.text(line, { x, y: y - (i + 0.5) * small * lineStep }, small, { anchor: "middle" });
}

function testSquares(pen: Pen, x: number, top: number, words: PatternPdfWords): void {
  const box = (side: number): readonly Spot[] => [
    { x, y: top },
    { x: x + side, y: top },
    { x: x + side, y: top - side },
    { x, y: top - side },
  ];
  pen.line(box(4 * 25.4), { isClosed: true, width: 0.5 });
  pen.line(box(100), { isClosed: true, dashes: [3, 2] });
  for (const [i, line] of words.measureFirst.entries()) {
    pen.text(line, { x: x + 4, y: top - 10 - i * large * 1.35 }, large, { isBold: true });
  }
  const below = top - 12 - words.measureFirst.length * large * 1.35;
  pen.text(words.inchSquare, { x: x + 4, y: below }, small);
  pen.text(words.metricSquare, { x: x + 4, y: below - 1.5 * small }, small);
}

interface Tiled {
  readonly titled: TitledPart;
  readonly tiling: Tiling;
}

/** The squares to measure, and a map: of every part how its pages lie. As many pages as the maps take. */
function firstPages(tilings: readonly Tiled[], words: PatternPdfWords, newPen: () => Pen): void {
  let pen = newPen();
  pen.text(words.title, { x: 0, y: tileHeight - head }, head, { isBold: true });
  testSquares(pen, 0, tileHeight - 16, words);
  for (const [i, line] of words.howTo.entries()) {
    pen.text(line, { x: 108, y: tileHeight - 20 - i * small * lineStep }, small);
  }
  let y = tileHeight - 16 - 4 * 25.4 - 10;
  for (const { titled, tiling } of tilings) {
    const across = tiling.columns * stepAcross;
    const scale = Math.min(mapRoom.width / across, mapRoom.height / (tiling.rows * stepDown));
    const room = tileWidth - mapRoom.width - 6;
    const says = titled.says.flatMap((line) => pen.folded(line, small, room));
    const lines = [words.pagesOf(titled.title, tiling.tiles.length), ...says];
    const height = Math.max(tiling.rows * stepDown * scale, lines.length * small * lineStep);
    if (y - height < 0) {
      pen = newPen();
      y = tileHeight;
    }
    mapOf(pen, titled, tiling, { x: 0, y, scale });
    for (const [i, line] of lines.entries()) {
      pen.text(line, { x: mapRoom.width + 6, y: y - (i + 0.8) * small * lineStep }, small, { isBold: i === 0 });
    }
    y -= height + 6;
  }
}

/** The map of a part is no larger than this (mm). */
const mapRoom = { width: 60, height: 26 };

function mapOf(pen: Pen, titled: TitledPart, tiling: Tiling, at: Spot & { readonly scale: number }): void {
  const top = tiling.frame.bottom + tiling.frame.height;
  const { scale } = at;
  const move = (one: Spot): Spot => ({
    x: at.x + (one.x - tiling.frame.left) * scale,
    y: at.y - (top - one.y) * scale,
  });
  pen.line(partOutline(titled.part).map(move), { isClosed: true, width: 0.3 });
  for (const tile of tiling.tiles) {
    const corner = move({ x: tile.left, y: tile.bottom + tileHeight });
    const [w, h] = [stepAcross * scale, stepDown * scale];
    const { x, y } = corner;
    pen.line([corner, { x: x + w, y }, { x: x + w, y: y - h }, { x, y: y - h }], { isClosed: true, width: 0.15 });
  }
}

const lineStep = 1.3;

/** Where a page has room for a line of words, its upper left corner: beside its name, or farther down where lines run there. */
function clearSpot({ part }: TitledPart, { left, bottom }: Tile, width: number, height: number): Spot {
  const spots = Array.from({ length: 40 }, (_, i) => tileHeight - 4 - i * 6).flatMap((y, i) =>
    [26, 4, 50, 75, stepAcross - width - 4].map((x) => ({ x: i < 2 ? Math.max(26, x) : x, y })),
  );
  const free = spots.find(({ x, y }) =>
    isClear(part, { left: left + x - 1, bottom: bottom + y - height, width: width + 2, height }),
  );
  return free ?? { x: 26, y: tileHeight - 4 };
}

/** One page: its part of the drawing, its name large in the corner, and the strips that the next pages are laid on. */
function tilePage(
  pen: Pen,
  titled: TitledPart,
  tiling: Tiling,
  tile: Tile,
  words: PatternPdfWords,
  [page, pages]: readonly [number, number],
): void {
  const whole: Box = { x: 0, y: 0, width: tileWidth, height: tileHeight };
  const move = ({ x, y }: Spot): Spot => ({ x: x - tile.left, y: y - tile.bottom });
  drawPart(pen, titled, move, whole);
  const name = tileName(tile);
  const has = (row: number, column: number) =>
    tiling.tiles.some((other) => other.row === row && other.column === column);
  pen.line(
    [
      { x: 0, y: 0 },
      { x: tileWidth, y: 0 },
      { x: tileWidth, y: tileHeight },
      { x: 0, y: tileHeight },
    ],
    { isClosed: true, width: 0.2 },
  );
  pen.text(name, { x: 3, y: tileHeight - 3 - head }, head, { isBold: true });
  const line = words.pageOf(titled.title, name, page, pages);
  const spot = clearSpot(titled, tile, pen.widthOf(line, small), small * lineStep);
  pen.text(line, { x: spot.x, y: spot.y - small }, small);
  if (has(tile.row, tile.column + 1))
    rightStrip(pen, words.layOn(tileName({ row: tile.row, column: tile.column + 1 })));
  if (has(tile.row + 1, tile.column))
    lowerStrip(pen, words.layOn(tileName({ row: tile.row + 1, column: tile.column })));
  meetingCircles(pen, { left: has(tile.row, tile.column - 1), right: has(tile.row, tile.column + 1) }, [
    { x: 0, y: 170, letter: "a" },
    { x: 0, y: 70, letter: "b" },
  ]);
  meetingCircles(pen, { above: has(tile.row - 1, tile.column), below: has(tile.row + 1, tile.column) }, [
    { x: 45, y: 0, letter: "c" },
    { x: 140, y: 0, letter: "d" },
  ]);
}

const chain = [6, 1.5, 1, 1.5] as const;

function rightStrip(pen: Pen, words: string): void {
  const x = stepAcross;
  pen.line(
    [
      { x, y: 0 },
      { x, y: tileHeight },
    ],
    { dashes: chain },
  );
  pen.text(words, { x: tileWidth - 3, y: tileHeight / 2 }, small, { anchor: "middle", isUpright: true });
}

function lowerStrip(pen: Pen, words: string): void {
  pen.line(
    [
      { x: 0, y: overlap },
      { x: tileWidth, y: overlap },
    ],
    { dashes: chain },
  );
  pen.text(words, { x: tileWidth / 2, y: 3 }, small, { anchor: "middle" });
}

interface Meeting {
  readonly left?: boolean;
  readonly right?: boolean;
  readonly above?: boolean;
  readonly below?: boolean;
}

/** Circles in the middle of the strip that two pages share: they lie on each other once the pages are right. */
function meetingCircles(
  pen: Pen,
  { left, right, above, below }: Meeting,
  places: readonly (Spot & { readonly letter: string })[],
): void {
  const half = overlap / 2;
  for (const { x, y, letter } of places) {
    const at: Spot[] = [
      ...(right === true ? [{ x: stepAcross + half, y }] : []),
      ...(left === true ? [{ x: half, y }] : []),
      ...(below === true ? [{ x, y: half }] : []),
      ...(above === true ? [{ x, y: tileHeight - half }] : []),
    ];
    for (const spot of at) {
      pen.circle(spot, 2.4);
      pen.line(
        [
          { x: spot.x - 4, y: spot.y },
          { x: spot.x + 4, y: spot.y },
        ],
        { width: 0.2 },
      );
      pen.line(
        [
          { x: spot.x, y: spot.y - 4 },
          { x: spot.x, y: spot.y + 4 },
        ],
        { width: 0.2 },
      );
      pen.text(letter, { x: spot.x + 3, y: spot.y + 1 }, small, { isBold: true });
    }
  }
}
