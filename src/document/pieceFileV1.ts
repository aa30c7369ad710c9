import { z } from "./strictZod";
import { battingRoles, type BattingRole } from "../core/material";
import type { Layer } from "../core/padding/layer";
import type { Piece, PieceKind, PieceZone } from "../core/padding/piece";
import { mm } from "../core/units";
import type { Frozen } from "./frozen";
import { lengthMm, placeMm, readingsAfterSchema, tellRow } from "./pieceFile";

/**
 * A piece of batting as the first release wrote it: plies of one outline, feathered as a whole, with distances from center front or center back. It is
 * read where a fitting's log of work has it, and never written.
 */
const zonesV1 = ["round", "front", "back", "leftSide", "rightSide", "leftCup", "rightCup"] as const;

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
          const above = rows[i - 1]?.dropMm;
          if (above !== undefined && dropMm <= above) tellRow(found, i, { is: "order", at: dropMm, above });
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

/** Such a piece in today's terms: its plies are layers of one outline. How it was cut is not told again. */
export function pieceFromFileV1(file: PieceFileV1): Piece {
  const isAtBack = file.anchor === "centerBack";
  const layer: Layer = {
    batting: file.batting satisfies BattingRole,
    thickness: mm(file.thicknessMm / file.plies),
    feather: mm(file.featherMm),
    wrap: file.wrap,
    rows: file.rows.map(({ dropMm, startMm, endMm }) => {
      // Told from center back the other way around, today's distances are positive to the wearer's left there too.
      const [start, end] = isAtBack ? [-endMm, -startMm] : [startMm, endMm];
      return { depthBelowNape: mm(dropMm), start: mm(start), end: mm(end) };
    }),
  };
  const isCup = file.zone === "leftCup" || file.zone === "rightCup";
  return {
    id: file.id,
    order: file.order,
    kind: kindOf(file.zone),
    zone: zoneOf(file.zone),
    level: isCup ? "bust" : "waist",
    number: Number(/\d+$/.exec(file.id)?.[0] ?? 1),
    pair: null,
    anchor: isAtBack ? "centerBack" : "centerFront",
    layers: Array.from({ length: file.plies }, () => layer),
    cut: [],
  };
}

type ZoneV1 = (typeof zonesV1)[number];

const kindOf = (zone: ZoneV1): PieceKind =>
  zone === "round" ? "wrap" : zone === "leftCup" || zone === "rightCup" ? "cup" : "panel";

const zoneOf = (zone: ZoneV1): PieceZone => (zone === "round" ? "around" : zone);
