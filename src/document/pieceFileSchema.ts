import { longestMm } from "./fittingLimits";
import type { PieceProblem } from "./fittingProblem";
import { z } from "zod/mini";
import { type LevelName, levelNames } from "../core/body/vocabulary";
import { battingRoles } from "../core/material";
import { pieceKinds, pieceZones } from "../core/padding/piece";
import { anchors } from "../core/padding/layer";
import type { Frozen } from "./frozen";

/**
 * One piece of batting as version 2 of the plan file writes it, and as a fitting's log of work keeps it. Every length is a plain
 * number of millimetres under a key that ends in `Mm`.
 */
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
        const above = rows[i - 1]?.depthBelowNapeMm ?? -Infinity;
        if (depthBelowNapeMm <= above) tellRow(found, i, { is: "order", at: depthBelowNapeMm, above });
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

const layerCutSchema = z
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

export type EndFile = Frozen<z.infer<typeof endSchema>>;
