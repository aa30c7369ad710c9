import type { PieceProblem } from "./fittingProblem";
import { z } from "./strictZod";
import { type LevelName, levelNames } from "../core/body/vocabulary";
import { battingRoles } from "../core/material";
import type { EndPlace, LayerCut, LineWidth } from "../core/padding/layerCut";
import { type Piece, pieceKinds, pieceZones } from "../core/padding/piece";
import type { PlannedPiece, TapeReading, TapeReadings } from "../core/plan/plan";
import { mm, type Millimetres } from "../core/units";
import { anchors, type Layer } from "../core/padding/layer";
import type { Frozen } from "./frozen";

/**
 * One piece of batting as version 2 of the plan file writes it, and as a fitting's log of work keeps it. Every length is a plain
 * number of millimetres under a key that ends in `Mm`.
 */
const longestMm = 20_000;
export const lengthMm = z.number().check(z.minimum(0), z.maximum(longestMm));
export const placeMm = z.number().check(z.minimum(-5000), z.maximum(5000));
const levelSchema = z.enum(levelNames);

export const tapeReadingSchema = z
  .strictObject({ girthMm: lengthMm, frontArcMm: lengthMm, backArcMm: lengthMm })
  .register(z.globalRegistry, {
    id: "tapeReading",
    description:
      "What the tape reads at one level line: all around (girth), and the front and the back from side seam to side seam.",
  });

export const readingsAfterSchema = z
  .strictObject({
    bust: tapeReadingSchema,
    underbust: tapeReadingSchema,
    waist: tapeReadingSchema,
    highHip: tapeReadingSchema,
    fullHip: tapeReadingSchema,
  } satisfies {
    readonly [level in LevelName]: z.ZodMiniType;
  })
  .check(
    z.meta({ description: "What the tape reads at every level line once this piece and all before it are pinned." }),
  );

/** Rows that no piece can have, as a problem at their place. */
export const tellRow = (found: z.core.$RefinementCtx<unknown>, row: number, problem: PieceProblem): void =>
  found.addIssue({ code: "custom", path: [row], params: { problem } });

const rowSchema = z.strictObject({ depthBelowNapeMm: placeMm, startMm: placeMm, endMm: placeMm });

export const layerSchema = z.strictObject({
  batting: z.enum(battingRoles).check(z.meta({ description: "Which of the fitting's battings it is cut from." })),
  thicknessMm: z
    .number()
    .check(
      z.minimum(0.1),
      z.maximum(100),
      z.meta({ description: "One thickness of batting under a snug tape, as it is estimated now." }),
    ),
  featherMm: z.number().check(
    z.minimum(0),
    z.maximum(100),
    z.meta({
      description:
        "Thickness at a place = thicknessMm × min(1, distance to the outline / featherMm), the distance taken in the plane of (distance from the anchor, distance straight down from the nape). Zero is cut square.",
    }),
  ),
  wrap: z.boolean().check(z.meta({ description: "Goes all the way around: only its top and bottom are outline." })),
  rows: z.array(rowSchema).check(
    z.minLength(2),
    z.maxLength(400),
    z.superRefine((rows, found) => {
      for (const [i, { depthBelowNapeMm, startMm, endMm }] of rows.entries()) {
        const above = rows[i - 1]?.depthBelowNapeMm;
        if (above !== undefined && depthBelowNapeMm <= above)
          tellRow(found, i, { is: "order", at: depthBelowNapeMm, above });
        if (endMm < startMm) tellRow(found, i, { is: "sides", start: startMm, end: endMm });
      }
    }),
    z.meta({
      description:
        "The outline from the top edge to the bottom edge at heights at most 20 mm apart, straight between them: how far straight down from the nape, and distances along the bare form's surface from the piece's anchor, positive to the wearer's left.",
    }),
  ),
});

const endSchema = z.strictObject({ level: levelSchema, distanceMm: lengthMm, side: z.enum(["above", "below"]) });
const widthsSchema = z
  .array(z.strictObject({ level: levelSchema, belowTopMm: lengthMm, leftMm: placeMm, rightMm: placeMm }))
  .check(z.maxLength(20));
const dartsSchema = z
  .array(
    z.strictObject({
      from: z.enum(["top", "bottom", ...levelNames]),
      kind: z.enum(["dart", "slit"]),
      count: z.int().check(z.minimum(1), z.maximum(100)),
      widthMm: lengthMm,
      depthMm: lengthMm,
    }),
  )
  .check(z.maxLength(20));
const flatShape = {
  heightMm: lengthMm,
  top: endSchema.check(z.meta({ description: "Where the top edge lies, from the nearest level line." })),
  bottom: endSchema,
  topWidthMm: lengthMm,
  bottomWidthMm: lengthMm,
  widths: widthsSchema.check(
    z.meta({
      description: "Where level lines cross it: how far it reaches to the wearer's left and right of the anchor line.",
    }),
  ),
  darts: dartsSchema,
};

export const layerCutSchema = z
  .discriminatedUnion("shape", [
    z.strictObject({ shape: z.literal("strip"), ...flatShape }),
    z.strictObject({ shape: z.literal("panel"), ...flatShape }),
    z.strictObject({ shape: z.literal("disc"), diameterMm: lengthMm }),
    z.strictObject({ shape: z.literal("bought") }),
  ])
  .check(z.meta({ description: "The size to cut one layer, lying flat, on the surface it lies on." }));

export const pieceFileSchema = z.strictObject({
  id: z.string().check(z.minLength(1), z.maxLength(100)),
  order: z.int().check(z.minimum(1), z.maximum(1000), z.meta({ description: "The order of pinning, from 1." })),
  name: z.string().check(z.maxLength(200)),
  kind: z.enum(pieceKinds),
  zone: z.enum(pieceZones),
  level: levelSchema.check(z.meta({ description: "The level the piece is named after." })),
  number: z
    .int()
    .check(z.minimum(1), z.maximum(1000), z.meta({ description: "Counts pieces of one kind, zone and level." })),
  anchor: z
    .enum(anchors)
    .check(z.meta({ description: "The marked line that distances along the surface start from." })),
  pair: z
    .exactOptional(z.string().check(z.minLength(1), z.maxLength(100)))
    .check(z.meta({ description: "Pieces of one pair (left and right cup pads) count as one." })),
  place: z.string().check(z.maxLength(500)),
  layers: z
    .array(layerSchema)
    .check(z.minLength(1), z.maxLength(60), z.meta({ description: "From the form outwards; their thicknesses add." })),
  cut: z
    .array(layerCutSchema)
    .check(z.maxLength(60), z.meta({ description: "One for each layer, from the form outwards." })),
  readingsAfter: readingsAfterSchema,
});
export type PieceFile = Frozen<z.infer<typeof pieceFileSchema>>;

/** A piece of the plan, written out; its name and place are sentences made elsewhere. */
export const pieceToFile = (piece: PlannedPiece, name: string, place: string): PieceFile => ({
  id: piece.id,
  order: piece.order,
  name,
  kind: piece.kind,
  zone: piece.zone,
  level: piece.level,
  number: piece.number,
  anchor: piece.anchor,
  ...(piece.pair === null ? {} : { pair: piece.pair }),
  place,
  layers: piece.layers.map(layerToFile),
  cut: piece.cut.map(cutToFile),
  readingsAfter: readingsToFile(piece.readingsAfter),
});

/** The piece a file describes, without its sentences and readings. */
export const pieceFromFile = (file: PieceFile): Piece => ({
  id: file.id,
  order: file.order,
  kind: file.kind,
  zone: file.zone,
  level: file.level,
  number: file.number,
  anchor: file.anchor,
  pair: file.pair ?? null,
  layers: file.layers.map(
    (layer): Layer => ({
      batting: layer.batting,
      thickness: mm(layer.thicknessMm),
      feather: mm(layer.featherMm),
      wrap: layer.wrap,
      rows: layer.rows.map(({ depthBelowNapeMm, startMm, endMm }) => ({
        depthBelowNape: mm(depthBelowNapeMm),
        start: mm(startMm),
        end: mm(endMm),
      })),
    }),
  ),
  cut: file.cut.map(cutFromFile),
});

/** No log of work leads to a reading that could not be read back, however much is pinned. */
export const readingToFile = ({ girth, frontArc, backArc }: TapeReading) => ({
  girthMm: atMostLongest(girth),
  frontArcMm: atMostLongest(frontArc),
  backArcMm: atMostLongest(backArc),
});

const atMostLongest = (length: Millimetres): number => Math.min(longestMm, tenth(length));

export const tenth = (length: number): number => Math.round(length * 10) / 10 || 0;

const hundredth = (length: Millimetres): number => Math.round(length * 100) / 100 || 0;

const readingsToFile = (readings: TapeReadings): PieceFile["readingsAfter"] => ({
  bust: readingToFile(readings.bust),
  underbust: readingToFile(readings.underbust),
  waist: readingToFile(readings.waist),
  highHip: readingToFile(readings.highHip),
  fullHip: readingToFile(readings.fullHip),
});

const layerToFile = ({ batting, thickness, feather, wrap, rows }: Layer): PieceFile["layers"][number] => ({
  batting,
  thicknessMm: hundredth(thickness),
  featherMm: tenth(feather),
  wrap,
  rows: rows.map(({ depthBelowNape, start, end }) => ({
    depthBelowNapeMm: tenth(depthBelowNape),
    startMm: tenth(start),
    endMm: tenth(end),
  })),
});

function cutToFile(cut: LayerCut): PieceFile["cut"][number] {
  switch (cut.shape) {
    case "bought":
      return { shape: "bought" };
    case "disc":
      return { shape: "disc", diameterMm: tenth(cut.diameter) };
    case "strip":
    case "panel":
      return {
        shape: cut.shape,
        heightMm: tenth(cut.height),
        top: endToFile(cut.top),
        bottom: endToFile(cut.bottom),
        topWidthMm: tenth(cut.topWidth),
        bottomWidthMm: tenth(cut.bottomWidth),
        widths: cut.widths.map(({ level, belowTop, left, right }) => ({
          level,
          belowTopMm: tenth(belowTop),
          leftMm: tenth(left),
          rightMm: tenth(right),
        })),
        darts: cut.darts.map(({ width, depth, ...dart }) => ({
          ...dart,
          widthMm: tenth(width),
          depthMm: tenth(depth),
        })),
      };
  }
}

function cutFromFile(cut: PieceFile["cut"][number]): LayerCut {
  if (cut.shape === "bought") return cut;
  if (cut.shape === "disc") return { shape: "disc", diameter: mm(cut.diameterMm) };
  return {
    shape: cut.shape,
    height: mm(cut.heightMm),
    top: endFromFile(cut.top),
    bottom: endFromFile(cut.bottom),
    topWidth: mm(cut.topWidthMm),
    bottomWidth: mm(cut.bottomWidthMm),
    widths: cut.widths.map(
      ({ level, belowTopMm, leftMm, rightMm }): LineWidth => ({
        level,
        belowTop: mm(belowTopMm),
        left: mm(leftMm),
        right: mm(rightMm),
      }),
    ),
    darts: cut.darts.map(({ widthMm, depthMm, ...dart }) => ({ ...dart, width: mm(widthMm), depth: mm(depthMm) })),
  };
}

type EndFile = Frozen<z.infer<typeof endSchema>>;

const endToFile = ({ level, distance, side }: EndPlace): EndFile => ({ level, distanceMm: tenth(distance), side });

const endFromFile = ({ level, distanceMm, side }: EndFile): EndPlace => ({ level, distance: mm(distanceMm), side });
