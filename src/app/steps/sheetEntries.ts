import type { MeasurementName } from "../../core/body/vocabulary";
import { trialTurns } from "../../core/plan/trialGain";
import type { PlannedPiece } from "../../core/plan/plan";
import type { Entry, Fitting, WorkEntry } from "../../document/fitting";
import type { Making } from "../../document/fittingLimits";
import { pieceToFile } from "../../document/pieceFile";
import { pieceWithLayers } from "../print/layersByThickness";
import { chosenCloth } from "./chosenCloth";
import { isCutFromPanels } from "./makingSteps";
import { type RecordFrom, usualCover } from "./stepRecord";

/** What a person ticked and wrote on the padding sheet while the work was done with paper alone. */
export interface FilledSheet {
  /** The waist without the trial's strip and over it; null where no trial was written down. */
  readonly trial: { readonly before: Entry; readonly after: Entry } | null;
  /** Pinned pieces of the structure in the order of the sheet, with how many layers they were cut of. */
  readonly structure: readonly { readonly piece: PlannedPiece; readonly layers: number }[];
  readonly overStructure: SheetReadingTexts;
  /** Slipped in, as the sheet has them: how wide they were cut is told by what the tape read over them. */
  readonly tuning: readonly PlannedPiece[];
  readonly inTheEnd: SheetReadingTexts;
  readonly isBasted: boolean;
  /** Where the tape was laid over the cover the cover is on, and what lies beneath was looked at. */
  readonly overCover: SheetReadingTexts;
}
/** What says which cover goes over the padding. */
type CoverOf = Pick<Fitting, "work" | "unit" | "supplies">;

export type SheetReadingTexts = { readonly [name in MeasurementName]?: Entry };

/** What the log would hold if every step of the sheet had been noted when it was done, in that order. */
export function sheetEntries(
  sheet: FilledSheet,
  { plan, fitting, words }: RecordFrom & { readonly fitting: CoverOf },
  at: string,
): readonly WorkEntry[] {
  const pinned = (piece: PlannedPiece): readonly WorkEntry[] => [
    { did: "cut", pieceId: piece.id, at },
    {
      did: "pinned",
      piece: pieceToFile(piece, words.pieceName(piece), words.piecePlace(piece, plan.levels)),
      at,
    },
  ];
  const measured = (readings: SheetReadingTexts): readonly WorkEntry[] =>
    Object.keys(readings).length === 0 ? [] : [{ did: "measured", readings, at }];
  const structure = sheet.structure.flatMap(({ piece, layers }) =>
    layers === 0 ? [] : [pieceWithLayers(piece, layers)],
  );
  const pieceIds = [...structure, ...sheet.tuning].map(({ id }) => id);
  const { name: batting } = fitting.batting;
  return [
    ...(sheet.trial === null
      ? []
      : [{ did: "trial", batting, level: "waist", layers: trialTurns, ...sheet.trial, at } as const]),
    ...structure.flatMap(pinned),
    ...(structure.length === 0 ? [] : [{ did: "linesCarried", at } as const]),
    ...measured(sheet.overStructure),
    ...sheet.tuning.flatMap(pinned),
    ...measured(sheet.inTheEnd),
    ...(sheet.isBasted && pieceIds.length > 0 ? [{ did: "basted", pieceIds, at } as const] : []),
    ...overCover(sheet.overCover, fitting, at),
  ];
}

/** The cover that is chosen for the work or for what is bought, or the usual one, made as far as a tape laid over it asks for, and what the tape read. */
function overCover(readings: SheetReadingTexts, fitting: CoverOf, at: string): readonly WorkEntry[] {
  if (Object.keys(readings).length === 0) return [];
  const { work } = fitting;
  const { kind } = chosenCloth(fitting);
  const chosenAt = work.findLastIndex(({ did }) => did === "coverChosen");
  const chosen = work[chosenAt];
  const cloth = chosen?.did === "coverChosen" && chosen.cloth !== "none" ? chosen.cloth : null;
  const wanted = cloth ?? (kind === "none" ? usualCover : kind);
  const since = cloth === null ? [] : work.slice(chosenAt);
  const isMade = (making: Making) => since.some((entry) => entry.did === "made" && entry.what === making);
  const sewn = isCutFromPanels(wanted) ? (["coverCut", "coverSewn"] as const) : [];
  const makings = [...sewn, "coverFitted", "coverClosed"] as const;
  return [
    ...(cloth === null ? [{ did: "looked", at } as const, { did: "coverChosen", cloth: wanted, at } as const] : []),
    ...makings.flatMap((what): readonly WorkEntry[] => (isMade(what) ? [] : [{ did: "made", what, at }])),
    { did: "measured", readings, over: "cover", at },
  ];
}
