import type { Plan } from "../../core/plan/plan";
import { mapLevels, type ByLevel, type MeasurementName } from "../../core/body/vocabulary";
import { rowAt } from "../../core/padding/layer";
import { outermostLayer, type Piece } from "../../core/padding/piece";
import { type Fitting, pieceFromWork, type WorkEntry } from "../../document/fitting";
import { levelOfPlace, type TunePlace, type WorkFact } from "./workState";

/** The log as the order of the work asks for it. */
export function workFacts(work: Fitting["work"], depths: ByLevel<number>): readonly WorkFact[] {
  const pieces = new Map<string, Piece>();
  return work.flatMap((entry): readonly WorkFact[] | WorkFact => {
    if (entry.did !== "pinned") return factOf(entry) ?? [];
    const piece = pieceFromWork(entry.piece);
    const before = pieces.get(piece.id);
    pieces.set(piece.id, piece);
    return [{ did: "pinned", pieceId: piece.id, tunes: changedPlaces(piece, before, depths) }];
  });
}

function factOf(entry: Exclude<WorkEntry, { readonly did: "pinned" }>): WorkFact | null {
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
    case "basted":
      return { did: "basted", pieceIds: entry.pieceIds };
    case "measured":
      return {
        did: entry.over === undefined ? "measured" : "measuredOverCover",
        names: Object.keys(entry.readings) as MeasurementName[],
      };
    case "builtAbove":
      return { did: "builtAbove", build: entry.build };
    case "measuredBetween":
      return { did: "measuredBetween" };
    case "coverChosen":
      return { did: "coverChosen", cloth: entry.cloth };
    case "made":
      return { did: "made", what: entry.what, isPassedOver: entry.passedOver === true };
    case "trimmed":
      return null;
  }
}

/** Where a tuning layer is new or was narrowed; null for any other piece. */
function changedPlaces(piece: Piece, before: Piece | undefined, depths: ByLevel<number>): readonly TunePlace[] | null {
  const places = tunePlaces(piece);
  if (places === null || before === undefined) return places;
  return places.filter((place) => {
    const width = (of: Piece) => {
      const { start, end } = rowAt(outermostLayer(of).rows, depths[levelOfPlace(place)]);
      return end - start;
    };
    return Math.abs(width(piece) - width(before)) > sameWidth;
  });
}

/** Widths closer than this (mm) are the same: nobody cuts finer. */
const sameWidth = 1;

/** Where a tuning layer lies, by the lines that its cut crosses; null for any other piece. */
export function tunePlaces({ kind, anchor, cut }: Pick<Piece, "kind" | "anchor" | "cut">): readonly TunePlace[] | null {
  if (kind !== "tuning") return null;
  const half = anchor === "centerBack" ? "back" : "front";
  return cut.flatMap((own) =>
    own.shape === "panel" ? own.widths.map(({ level }): TunePlace => `${half}-${level}`) : [],
  );
}

/** How far each level line of a plan lies below the nape (mm). */
export const lineDepths = ({ levels }: Pick<Plan, "levels">): ByLevel<number> =>
  mapLevels((name) => levels.find((level) => level.name === name)?.depthBelowNape.value ?? 0);
