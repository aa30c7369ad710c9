import type { BattingRole } from "../core/material";
import type { Layer } from "../core/padding/layer";
import type { Piece, PieceKind, PieceZone } from "../core/padding/piece";
import { mm } from "../core/units";
import type { PieceFileV1, zonesV1 } from "./pieceFileV1Schema";

export type { PieceFileV1 } from "./pieceFileV1Schema";

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
