import type { MeasurementName } from "../../core/body/vocabulary";
import type { Piece } from "../../core/padding/piece";
import { type Fitting, pieceFromWork, type WorkEntry } from "../../document/fitting";
import type { TunePlace, WorkFact } from "./workState";

/** The log as the order of the work asks for it; readings over the cover belong to later work. */
export const workFacts = (work: Fitting["work"]): readonly WorkFact[] => work.flatMap((entry) => factOf(entry) ?? []);

function factOf(entry: WorkEntry): WorkFact | null {
  switch (entry.did) {
    case "prepared":
    case "marked":
    case "linesCarried":
    case "looked":
    case "replanned":
    case "trial":
      return { did: entry.did };
    case "cut":
    case "stacked":
    case "unpinned":
      return { did: entry.did, pieceId: entry.pieceId };
    case "pinned":
      return { did: "pinned", pieceId: entry.piece.id, tunes: tunePlaces(pieceFromWork(entry.piece)) };
    case "basted":
      return { did: "basted", pieceIds: entry.pieceIds };
    case "measured":
      return entry.over === undefined
        ? { did: "measured", names: Object.keys(entry.readings) as MeasurementName[] }
        : null;
    case "trimmed":
      return null;
  }
}

/** Where a tuning layer lies, by the lines that its cut crosses; null for any other piece. */
export function tunePlaces({ kind, anchor, cut }: Pick<Piece, "kind" | "anchor" | "cut">): readonly TunePlace[] | null {
  if (kind !== "tuning") return null;
  const half = anchor === "centerBack" ? "back" : "front";
  return cut.flatMap((own) =>
    own.shape === "panel" ? own.widths.map(({ level }): TunePlace => `${half}-${level}`) : [],
  );
}
