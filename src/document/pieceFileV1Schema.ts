import { z } from "zod/mini";
import { battingRoles } from "../core/material";
import type { Frozen } from "./frozen";
import { lengthMm, placeMm, readingsAfterSchema, tellRow } from "./pieceFileSchema";

/**
 * A piece of batting as the first release wrote it: plies of one outline, feathered as a whole, with distances from center front or center back. It is
 * read where a fitting's log of work has it, and never written.
 */
export const zonesV1 = ["round", "front", "back", "leftSide", "rightSide", "leftCup", "rightCup"] as const;

const cutWidthsSchema = z.array(z.strictObject({ belowTopMm: lengthMm, leftMm: placeMm, rightMm: placeMm })).check(
  z.minLength(2),
  z.maxLength(400),
  z.superRefine((widths, found) => {
    for (const [i, { belowTopMm, leftMm, rightMm }] of widths.entries()) {
      const above = widths[i - 1]?.belowTopMm ?? 0;
      if (belowTopMm < above) tellRow(found, i, { is: "order", at: belowTopMm, above });
      if (leftMm + rightMm < 0) tellRow(found, i, { is: "sides", start: -rightMm, end: leftMm });
    }
  }),
);

export const pieceFileV1Schema = z
  .strictObject({
    id: z.string().check(z.minLength(1), z.maxLength(100)),
    order: z.int().check(z.minimum(1), z.maximum(1000)),
    name: z.string().check(z.maxLength(200)),
    place: z.string().check(z.maxLength(500)),
    zone: z.enum(zonesV1),
    wrap: z.boolean(),
    batting: z.enum(battingRoles),
    plies: z.int().check(z.minimum(1), z.maximum(500)),
    thicknessMm: z.number().check(z.minimum(0), z.maximum(500)),
    featherMm: z.number().check(z.minimum(0), z.maximum(2000)),
    anchor: z.exactOptional(z.enum(["centerFront", "centerBack"])).check(
      z.meta({
        description:
          "Where the distances of the rows are counted from, always the same way around: from center front positive to the wearer's left, from center back positive to the wearer's right. Left out, it is center front.",
      }),
    ),
    rows: z.array(z.strictObject({ dropMm: placeMm, startMm: placeMm, endMm: placeMm })).check(
      z.minLength(2),
      z.maxLength(400),
      z.superRefine((rows, found) => {
        for (const [i, { dropMm, startMm, endMm }] of rows.entries()) {
          const above = rows[i - 1]?.dropMm ?? -Infinity;
          if (dropMm <= above) tellRow(found, i, { is: "order", at: dropMm, above });
          if (endMm < startMm) tellRow(found, i, { is: "sides", start: startMm, end: endMm });
        }
      }),
    ),
    cut: z.discriminatedUnion("shape", [
      z.strictObject({ shape: z.literal("strip"), lengthMm, widthMm: lengthMm, widths: cutWidthsSchema }),
      z.strictObject({ shape: z.literal("panel"), heightMm: lengthMm, widths: cutWidthsSchema }),
      z.strictObject({ shape: z.literal("disc"), diameterMm: lengthMm }),
    ]),
    readingsAfter: readingsAfterSchema,
  })
  .check(z.meta({ description: "A piece as version 1 of the plan file wrote it; read, not written any more." }));
export type PieceFileV1 = Frozen<z.infer<typeof pieceFileV1Schema>>;
