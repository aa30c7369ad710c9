import { lineLength, type PatternPart, partOutline } from "../../core/pattern/patternPart";
import type { TitledPart } from "./titledPart";

/** What `patterns.json` says: every part at its true size, in millimeters, y upwards, outlines closed. */
export interface PatternFile {
  readonly version: 1;
  readonly unit: "mm";
  /** The share that a knit cover is stretched by when it is on; 0 for none. */
  readonly stretch: number;
  /** What the tape is to read over the padding at each level. */
  readonly girths: { readonly [level: string]: number };
  readonly parts: readonly PatternFilePart[];
}

export interface PatternFilePart {
  readonly id: string;
  readonly kind: PatternPart["kind"];
  readonly of: string;
  readonly title: string;
  readonly says: readonly string[];
  readonly outline: readonly FilePoint[];
  readonly edges: readonly PatternFileEdge[];
  readonly levels: readonly { readonly name: string; readonly lengthMm: number }[];
  readonly lines: readonly { readonly kind: string; readonly points: readonly FilePoint[] }[];
  readonly notches: readonly FilePoint[];
}

/** An edge that is gathered onto another is longer than that by a share of it. */
interface PatternFileEdge {
  readonly id: string;
  readonly lengthMm: number;
  readonly sewnTo: string | null;
  readonly gathered?: number;
}

type FilePoint = readonly [xMm: number, yMm: number];

export const patternFile = (
  parts: readonly TitledPart[],
  girths: { readonly [level: string]: number },
  stretch = 0,
): PatternFile => ({
  version: 1,
  unit: "mm",
  stretch,
  girths: Object.fromEntries(Object.entries(girths).map(([name, girth]) => [name, hundredth(girth)])),
  parts: parts.map(filePart),
});

const filePart = ({ part, title, says }: TitledPart): PatternFilePart => {
  const outline = partOutline(part).map(filePoint);
  return {
    id: part.id,
    kind: part.kind,
    of: part.of,
    title,
    says,
    outline: [...outline, ...outline.slice(0, 1)],
    edges: part.edges.map(({ id, points, sewnTo, gathered }) => ({
      id,
      lengthMm: hundredth(lineLength(points)),
      sewnTo,
      ...(gathered === undefined ? {} : { gathered }),
    })),
    levels: part.levels.map(({ name, length }) => ({ name, lengthMm: hundredth(length) })),
    lines: part.lines.map(({ kind, points }) => ({ kind, points: points.map(filePoint) })),
    notches: part.notches.map(filePoint),
  };
};

const filePoint = ({ x, y }: { readonly x: number; readonly y: number }): FilePoint => [hundredth(x), hundredth(y)];

const hundredth = (length: number): number => Math.round(100 * length) / 100;
