/**
 * The bones of a plan file, written down from the published description of the format and from nothing else, so that
 * the checker shares no code with the planner. All lengths are millimeters. Pieces lie on the BARE form; depths are
 * reckoned down from the nape; distances along the surface start at the piece's anchor and are positive to the wearer's left.
 */
export const checkedLevelNames = ["bust", "underbust", "waist", "highHip", "fullHip"] as const;
export type CheckedLevelName = (typeof checkedLevelNames)[number];

export interface FileReading {
  readonly girthMm: number;
  readonly frontArcMm: number;
  readonly backArcMm: number;
}

export const readingKeys = ["girthMm", "frontArcMm", "backArcMm"] as const;
export type ReadingKey = (typeof readingKeys)[number];

export interface FileForm extends FileReading {
  readonly halfBreadthMm: number;
  readonly frontDepthMm: number;
  readonly backDepthMm: number;
  /** Of both halves, or one of each, or the outline is known by its support in 72 directions from the wearer's left over the front. */
  readonly exponent?: number | undefined;
  readonly frontExponent?: number | undefined;
  readonly backExponent?: number | undefined;
  readonly supportMm?: readonly number[] | undefined;
  /** Present only where the left and right halves of the form differ; halfBreadthMm is then their mean. */
  readonly leftHalfBreadthMm?: number | undefined;
  readonly rightHalfBreadthMm?: number | undefined;
}

export interface FileLevel {
  readonly name: string;
  readonly depthBelowNapeMm: number;
  readonly body: FileReading & { readonly source?: { readonly [key in ReadingKey]?: string } };
  readonly form: FileForm;
  readonly predicted: FileReading;
}

export interface FileRow {
  readonly depthBelowNapeMm: number;
  readonly startMm: number;
  readonly endMm: number;
}

export type FileAnchor = "centerFront" | "centerBack" | "leftSide" | "rightSide";

export interface FileLayer {
  readonly batting: string;
  readonly thicknessMm: number;
  readonly featherMm: number;
  readonly wrap: boolean;
  readonly rows: readonly FileRow[];
}

export type FileReadingsAfter = { readonly [level in CheckedLevelName]: FileReading };

export interface FilePiece {
  readonly order: number;
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly anchor: FileAnchor;
  readonly pair?: string;
  readonly layers: readonly FileLayer[];
  readonly cut: readonly unknown[];
  readonly readingsAfter: FileReadingsAfter;
}

export interface FileShortfall {
  readonly level: string;
  readonly what: string;
  readonly amountMm: number;
  /** Whether the padded form reads more than the body or less. */
  readonly sense: "tooLarge" | "staysShort";
}

export interface FileSeamShift {
  readonly level: string;
  readonly perSideMm: number;
  readonly towards: "front" | "back";
}

export interface PlanFile {
  readonly version: number;
  readonly levels: readonly FileLevel[];
  readonly pieces: readonly FilePiece[];
  readonly shortfalls: readonly FileShortfall[];
  readonly seamShifts: readonly FileSeamShift[];
  readonly shapesToCut: number;
  readonly battingAreaMm2: number;
}
