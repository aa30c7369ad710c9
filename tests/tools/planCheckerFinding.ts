import type { ReadingKey } from "./planCheckerFile";

/** What a finding is about. Each rule is one sentence of the description of the plan file, or one of the model's laws. */
export const findingRules = [
  "skeleton", // five levels in order, every number finite, version 2
  "levelOrder", // depths rise from the bust down
  "arcsMakeGirth", // front arc + back arc = girth, for body, form and predicted
  "bareForm", // the outline given for the bare form reads its own girth and arcs
  "predicted", // the rebuilt stack reads what the file predicts
  "readingsAfter", // … and after every piece
  "body", // law 2: within 3 mm wherever no shortfall is listed
  "shortfallAmount", // a listed shortfall is as large as it says
  "shortfallExcuse", // … and is there because the bare form is larger: padding cannot take away, but it can always add
  "lastPiece", // readings after the last piece = predicted
  "shrinking", // law 3: a piece never shortens a reading
  "order", // pieces are numbered 1, 2, 3, …
  "layers", // one cut and one thickness of batting for each
  "thickness", // above zero, and no panel thicker than a hand can pin
  "feather", // 10 mm at most
  "rowGap", // rows at most 20 mm apart, from the top down
  "rowWidth", // no row narrower than a hand can pin
  "rowReach", // starts and ends stay on the form
  "seamShift", // at most about 15 mm a side
  "battingArea", // at least the area of all layers
] as const;
export type FindingRule = (typeof findingRules)[number];

/** One thing the checker found, with the numbers: what the file says (got) and what it should be (expected), mm. */
export interface Finding {
  readonly rule: FindingRule;
  readonly level?: string;
  readonly piece?: number;
  readonly reading?: ReadingKey;
  readonly got: number | string;
  readonly expected: number | string;
}
