import type { BattingRole } from "../material";
import type { Millimetres } from "../units";
import type { PieceAnchor, PieceRow, PieceZone } from "./piece";

/**
 * A piece as the planner shapes it, before it has a place in the order and a cut size: plies of one outline on the bare
 * form's surface, thickness of the whole (mm, compressed) and the width over which it is feathered to nothing.
 */
export interface Pad {
  readonly zone: PieceZone;
  readonly batting: BattingRole;
  readonly plies: number;
  readonly thickness: Millimetres;
  readonly feather: Millimetres;
  readonly anchor?: PieceAnchor;
  readonly rows: readonly PieceRow[];
}
