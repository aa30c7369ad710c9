import { mapLevels } from "../../core/body/vocabulary";
import { mostReadings } from "../../core/calibration/calibrate";
import type { Piece } from "../../core/padding/piece";
import type { PlanInput } from "../../core/plan/basis";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { type Replan, replanFitting } from "../../core/plan/replanFitting";
import { type Millimetres, mm } from "../../core/units";
import type { AnyPieceFile } from "../../document/fitting";
import { replay, type Replayed, type Work } from "./replay";

/**
 * What the tape has taught so far, and the plan that would follow from it. Nothing changes under a person's hands: the
 * plan in force is the first one, or the one of the last time she asked for the rest to be planned anew.
 */
export interface Learning {
  readonly replan: Replan;
  /** How many tape readings the calibration rests on, trials and their bare readings included. */
  readonly readingCount: number;
}

/** The plan in force: the first plan, or, once the rest was planned anew, what was pinned then and the plan made there. */
export function planInForce(first: Plan, input: PlanInput, fitting: Work, readingError: Millimetres): Plan {
  const at = fitting.work.findLastIndex((entry) => entry.did === "replanned");
  if (at === -1) return first;
  const { atReplans } = replay(input, { ...fitting, work: fitting.work.slice(0, at + 1) }, readingError);
  const files = new Map(
    fitting.work
      .slice(0, at)
      .flatMap((entry) => (entry.did === "pinned" ? [[entry.piece.id, entry.piece] as const] : [])),
  );
  return atReplans.reduce(
    (inForce, then) => joined(loggedPieces(then.pinned, files), replanAt(inForce, input, then, readingError)),
    first,
  );
}

/** What would be planned at a point of the log, from all the work until then. */
export function replanAt(
  inForce: Plan,
  input: PlanInput,
  { cut, ...then }: Replayed,
  readingError: Millimetres,
): Replan {
  return replanFitting(input, { ...then, cut: cutOf(leftOf(inForce, then.pinned), cut), readingError });
}

/** Pieces that are left and known to be cut; a log that tells of no steps, as older ones, takes all of them for cut. */
const cutOf = (left: readonly PlannedPiece[], cut: Replayed["cut"]): readonly PlannedPiece[] =>
  cut === null ? left : left.filter(({ id }) => cut.has(id));

/** What was learned by all the work so far; null while nothing has been read. */
export function learning(inForce: Plan, input: PlanInput, fitting: Work, readingError: Millimetres): Learning | null {
  const { now } = replay(input, fitting, readingError);
  const { rereads } = now;
  if (rereads.length === 0) return null;
  const replan = replanAt(inForce, input, now, readingError);
  const readingCount = rereads.reduce((count, { readings }) => count + Object.keys(readings).length, 0);
  return {
    replan,
    readingCount: Math.min(readingCount, mostReadings),
  };
}

const leftOf = ({ pieces }: Plan, pinned: readonly Piece[]): readonly PlannedPiece[] =>
  pieces.filter((piece) => !pinned.some(({ id }) => id === piece.id));

/** What is pinned, with what each piece was to read when it was pinned. */
const loggedPieces = (pinned: readonly Piece[], files: ReadonlyMap<string, AnyPieceFile>): readonly PlannedPiece[] =>
  pinned.flatMap((piece): readonly PlannedPiece[] => {
    const file = files.get(piece.id);
    return file === undefined ? [] : [{ ...piece, readingsAfter: readingsOf(file) }];
  });

/** Pinned pieces first, as they were pinned, then the new plan's; the last pinned one ends where the tape is taken to stand. */
function joined(logged: readonly PlannedPiece[], { plan, now }: Replan): Plan {
  const pinned = logged.map((piece, i) => ({
    ...piece,
    order: i + 1,
    readingsAfter: i === logged.length - 1 ? now : piece.readingsAfter,
  }));
  const rest = plan.pieces.map((piece) => ({ ...piece, order: piece.order + pinned.length }));
  return { ...plan, pieces: [...pinned, ...rest] };
}

const readingsOf = (file: AnyPieceFile): PlannedPiece["readingsAfter"] =>
  mapLevels((level) => {
    const { girthMm, frontArcMm, backArcMm } = file.readingsAfter[level];
    return { girth: mm(girthMm), frontArc: mm(frontArcMm), backArc: mm(backArcMm) };
  });
