import type { PieceProblem } from "./fittingProblem";
import { z } from "./strictZod";
import type { LevelName } from "../core/body/vocabulary";
import { battingRoles } from "../core/material";
import { pieceZones, type CutWidth, type Piece, type PieceAnchor, type PieceCut } from "../core/padding/piece";
import type { PlannedPiece, TapeReading, TapeReadings } from "../core/plan/plan";
import { mm, type Millimetres } from "../core/units";
import type { Frozen } from "./frozen";

/**
 * One piece of batting as files write it: in the plan file and in a fitting's log of work. Every length is a plain
 * number of millimetres under a key that ends in `Mm`, rounded to a tenth.
 */
const longestMm = 20_000;
const lengthMm = z.number().min(0).max(longestMm);
const placeMm = z.number().min(-5000).max(5000);

export const tapeReadingSchema = z.strictObject({ girthMm: lengthMm, frontArcMm: lengthMm, backArcMm: lengthMm }).meta({
  id: "tapeReading",
  description:
    "What the tape reads at one level line: all around (girth), and the front and the back from side seam to side seam.",
});

const cutWidthsSchema = z
  .array(z.strictObject({ belowTopMm: lengthMm, leftMm: placeMm, rightMm: placeMm }))
  .min(2)
  .max(400)
  .superRefine((widths, found) => {
    for (const [i, { belowTopMm, leftMm, rightMm }] of widths.entries()) {
      const above = widths[i - 1]?.belowTopMm ?? 0;
      if (belowTopMm < above) tell(found, i, { is: "order", at: belowTopMm, above });
      if (leftMm + rightMm < 0) tell(found, i, { is: "sides", start: -rightMm, end: leftMm });
    }
  })
  .meta({
    description:
      "How far the outline lies to the wearer's left and right of the center line, at a distance below the top edge.",
  });

const cutSchema = z
  .discriminatedUnion("shape", [
    z.strictObject({ shape: z.literal("strip"), lengthMm, widthMm: lengthMm, widths: cutWidthsSchema }),
    z.strictObject({ shape: z.literal("panel"), heightMm: lengthMm, widths: cutWidthsSchema }),
    z.strictObject({ shape: z.literal("disc"), diameterMm: lengthMm }),
  ])
  .meta({ description: "The true size to cut, lying flat, on the surface the piece lies on." });

/** Rows that no piece can have, as a problem at their place. */
const tell = (found: z.RefinementCtx<unknown>, row: number, problem: PieceProblem): void =>
  found.addIssue({ code: "custom", path: [row], params: { problem } });

export const pieceFileSchema = z.strictObject({
  id: z.string().min(1).max(100),
  order: z.int().min(1).max(1000).meta({ description: "The order of pinning, from 1." }),
  name: z.string().max(200),
  place: z.string().max(500),
  zone: z.enum(pieceZones),
  wrap: z
    .boolean()
    .meta({ description: "Whether the piece goes all the way around, from minus half the girth to plus half." }),
  batting: z.enum(battingRoles).meta({ description: "Which of the fitting's battings it is cut from." }),
  plies: z.int().min(1).max(500),
  thicknessMm: z
    .number()
    .min(0)
    .max(500)
    .meta({ description: "The whole piece, all layers, compressed under a snug tape." }),
  featherMm: z.number().min(0).max(2000).meta({
    description:
      "Thickness is zero on the outline and full this far inward: thickness × min(1, distance to the outline / feather).",
  }),
  anchor: z.exactOptional(z.enum(["centerFront", "centerBack"])).meta({
    description:
      "Where the distances of the rows are counted from, always the same way around: from center front positive to the wearer's left, from center back positive to the wearer's right. Left out, it is center front.",
  }),
  rows: z
    .array(z.strictObject({ dropMm: placeMm, startMm: placeMm, endMm: placeMm }))
    .min(2)
    .max(400)
    .superRefine((rows, found) => {
      for (const [i, { dropMm, startMm, endMm }] of rows.entries()) {
        const above = rows[i - 1]?.dropMm;
        if (above !== undefined && dropMm <= above) tell(found, i, { is: "order", at: dropMm, above });
        if (endMm < startMm) tell(found, i, { is: "sides", start: startMm, end: endMm });
      }
    })
    .meta({
      description:
        "The outline at heights at most 20 mm apart: the distance straight down from the nape, and signed distances along the bare form's surface from the piece's anchor.",
    }),
  cut: cutSchema,
  readingsAfter: z
    .strictObject({
      bust: tapeReadingSchema,
      underbust: tapeReadingSchema,
      waist: tapeReadingSchema,
      highHip: tapeReadingSchema,
      fullHip: tapeReadingSchema,
    } satisfies {
      readonly [level in LevelName]: z.ZodType;
    })
    .meta({ description: "What the tape reads at every level line once this piece and all before it are pinned." }),
});
export type PieceFile = Frozen<z.infer<typeof pieceFileSchema>>;

/** A piece of the plan, written out; its name and place are sentences made elsewhere. */
export const pieceToFile = (piece: PlannedPiece, name: string, place: string): PieceFile => ({
  id: piece.id,
  order: piece.order,
  name,
  place,
  zone: piece.zone,
  wrap: piece.zone === "round",
  batting: piece.batting,
  plies: piece.plies,
  thicknessMm: hundredth(piece.thickness),
  featherMm: tenth(piece.feather),
  ...(piece.anchor === undefined ? {} : { anchor: piece.anchor }),
  rows: piece.rows.map(({ drop, start, end }) => ({ dropMm: tenth(drop), startMm: tenth(start), endMm: tenth(end) })),
  cut: cutToFile(piece.cut),
  readingsAfter: readingsToFile(piece.readingsAfter),
});

/** The piece a file describes, without its sentences and readings. */
export const pieceFromFile = (file: PieceFile): Piece => ({
  id: file.id,
  order: file.order,
  zone: file.zone,
  batting: file.batting,
  plies: file.plies,
  thickness: mm(file.thicknessMm),
  // An edge cut straight down is as wide as files are rounded.
  feather: mm(Math.max(0.1, file.featherMm)),
  ...anchorFromFile(file.anchor),
  rows: file.rows.map(({ dropMm, startMm, endMm }) => ({ drop: mm(dropMm), start: mm(startMm), end: mm(endMm) })),
  cut: cutFromFile(file.cut),
});

const anchorFromFile = (anchor: PieceFile["anchor"]): { readonly anchor?: PieceAnchor } =>
  anchor === "centerBack" ? { anchor } : {};

/** No log of work leads to a reading that could not be read back, however much is pinned. */
export const readingToFile = ({ girth, frontArc, backArc }: TapeReading) => ({
  girthMm: atMostLongest(girth),
  frontArcMm: atMostLongest(frontArc),
  backArcMm: atMostLongest(backArc),
});

const atMostLongest = (length: Millimetres): number => Math.min(longestMm, tenth(length));

export const tenth = (length: Millimetres): number => Math.round(length * 10) / 10 || 0;

const hundredth = (length: Millimetres): number => Math.round(length * 100) / 100 || 0;

const readingsToFile = (readings: TapeReadings): PieceFile["readingsAfter"] => ({
  bust: readingToFile(readings.bust),
  underbust: readingToFile(readings.underbust),
  waist: readingToFile(readings.waist),
  highHip: readingToFile(readings.highHip),
  fullHip: readingToFile(readings.fullHip),
});

function cutToFile(cut: PieceCut): PieceFile["cut"] {
  if (cut.shape === "disc") return { shape: "disc", diameterMm: tenth(cut.diameter) };
  const widths = cut.widths.map(({ belowTop, left, right }) => ({
    belowTopMm: tenth(belowTop),
    leftMm: tenth(left),
    rightMm: tenth(right),
  }));
  return cut.shape === "strip"
    ? { shape: "strip", lengthMm: tenth(cut.length), widthMm: tenth(cut.width), widths }
    : { shape: "panel", heightMm: tenth(cut.height), widths };
}

function cutFromFile(cut: PieceFile["cut"]): PieceCut {
  if (cut.shape === "disc") return { shape: "disc", diameter: mm(cut.diameterMm) };
  const widths = cut.widths.map(
    ({ belowTopMm, leftMm, rightMm }): CutWidth => ({ belowTop: mm(belowTopMm), left: mm(leftMm), right: mm(rightMm) }),
  );
  return cut.shape === "strip"
    ? { shape: "strip", length: mm(cut.lengthMm), width: mm(cut.widthMm), widths }
    : { shape: "panel", height: mm(cut.heightMm), widths };
}
