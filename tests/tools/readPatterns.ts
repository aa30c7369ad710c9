import DxfParser from "dxf-parser";
import { Window } from "happy-dom";
import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Written patterns read back by parsers that are not ours: lines in millimeters, y upwards. */
export type ReadPoint = readonly [x: number, y: number];
export type ReadLine = readonly ReadPoint[];

/** One for all drawings: each keeps a whole page in memory. */
const browserless = new Window();

/** The closed lines of a drawing by the id of the part they belong to, as far up as the page is tall. */
export function outlinesOfSvg(text: string): ReadonlyMap<string, ReadLine> {
  const svg = new browserless.DOMParser().parseFromString(text, "image/svg+xml").documentElement;
  const height = Number(svg.getAttribute("viewBox")?.split(" ")[3]);
  if (svg.getAttribute("height") !== `${height}mm`) throw new Error("the drawing is not in millimeters");
  return new Map(
    [...svg.querySelectorAll('[data-line="outline"]')].map((path) => {
      const numbers = (path.getAttribute("d") ?? "").match(/-?[\d.]+/g)?.map(Number) ?? [];
      return [path.parentElement?.id ?? "", pairs(numbers).map(([x, y]): ReadPoint => [x, height - y])];
    }),
  );
}

const pairs = (numbers: readonly number[]): readonly ReadPoint[] =>
  Array.from({ length: numbers.length / 2 }, (_, i) => [numbers[2 * i] as number, numbers[2 * i + 1] as number]);

/** The version of an exchange drawing, and its closed lines on the layer of outlines. */
export function readDxf(text: string): {
  readonly version: unknown;
  readonly outlines: readonly ReadLine[];
  readonly layers: readonly string[];
} {
  const read = new DxfParser().parseSync(text);
  if (read === null) throw new Error("no drawing");
  const lines = read.entities.filter(({ type }) => type === "POLYLINE") as unknown as readonly {
    readonly layer: string;
    readonly shape: boolean;
    readonly vertices: readonly { readonly x: number; readonly y: number }[];
  }[];
  return {
    version: read.header.$ACADVER,
    layers: [...new Set(read.entities.map(({ layer }) => layer))],
    outlines: lines
      .filter(({ layer, shape }) => layer === "OUTLINE" && shape)
      .map(({ vertices }) => vertices.map(({ x, y }): ReadPoint => [x, y])),
  };
}

export interface ReadPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly ReadLine[];
  readonly words: readonly { readonly text: string; readonly size: number }[];
}

type Matrix = readonly [number, number, number, number, number, number];

const millimeter = 25.4 / 72;

/** Every page of a printed file: its size, its straight lines and its words with the size of their letters in points. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let i = 1; i <= pdf.numPages; i++) {
    const page = await pdf.getPage(i);
    const { width, height } = page.getViewport({ scale: 1 });
    const { fnArray, argsArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    pages.push({
      width: width * millimeter,
      height: height * millimeter,
      lines: linesOf(fnArray, argsArray),
      words: items.flatMap((item) =>
        "str" in item && item.str.trim() !== ""
          ? [{ text: item.str, size: Math.hypot(item.transform[2] as number, item.transform[3] as number) }]
          : [],
      ),
    });
  }
  await pdf.destroy();
  return pages;
}

function linesOf(operators: readonly number[], args: readonly unknown[]): readonly ReadLine[] {
  const lines: ReadLine[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  for (const [i, operator] of operators.entries()) {
    if (operator === OPS.save) kept.push(matrix);
    if (operator === OPS.restore) matrix = kept.pop() ?? matrix;
    if (operator === OPS.transform) matrix = times(matrix, args[i] as unknown as Matrix);
    if (operator !== OPS.constructPath) continue;
    const [, [path]] = args[i] as readonly [number, readonly [ArrayLike<number> | null]];
    if (path !== null) lines.push(...straightLines(path).map((line) => line.map((point) => moved(matrix, point))));
  }
  return lines;
}

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

const moved = ([a, b, c, d, e, f]: Matrix, [x, y]: ReadPoint): ReadPoint => [
  (a * x + c * y + e) * millimeter,
  (b * x + d * y + f) * millimeter,
];

/** The reader's own list: 0 and a place begins a line, 1 and a place goes on, 2 and three places is a curve, 4 closes. */
function straightLines(path: ArrayLike<number>): readonly ReadLine[] {
  const lines: ReadPoint[][] = [];
  let at = 0;
  while (at < path.length) {
    const code = path[at] as number;
    const place = (from: number): ReadPoint => [path[from] as number, path[from + 1] as number];
    if (code === 0) lines.push([place(at + 1)]);
    else if (code === 1) lines.at(-1)?.push(place(at + 1));
    at += code === 2 ? 7 : code === 3 ? 5 : code === 4 ? 1 : 3;
  }
  return lines;
}

/** The largest distance between the points of two outlines, the second moved so that their lower left corners meet. */
export function apart(planned: ReadLine, read: ReadLine): number {
  const corner = (line: ReadLine) => [Math.min(...line.map(([x]) => x)), Math.min(...line.map(([, y]) => y))] as const;
  const open = (line: ReadLine): ReadLine => {
    const [first, last] = [line[0], line.at(-1)];
    const isClosed =
      first !== undefined && last !== undefined && Math.hypot(first[0] - last[0], first[1] - last[1]) < 0.02;
    return isClosed ? line.slice(0, -1) : line;
  };
  const [one, other] = [open(planned), open(read)];
  if (one.length !== other.length) return Number.POSITIVE_INFINITY;
  const [[x, y], [left, bottom]] = [corner(one), corner(other)];
  return Math.max(
    ...one.map((point, i) => {
      const [readX, readY] = other[i] as (typeof other)[number];
      return Math.hypot(point[0] - x - (readX - left), point[1] - y - (readY - bottom));
    }),
  );
}
