import type { AboveTurn } from "../../core/above/aboveTurn";
import type { BuildAbove } from "../../core/above/buildAbove";
import type { LevelName, MeasurementName } from "../../core/body/vocabulary";
import type { PlannedPiece } from "../../core/plan/plan";
import type { CoverOff, TuneAct } from "./step";
import type { TunePlace } from "./workState";

/** What the plan in force and the readings so far say of the work that is left. */
export interface Outlook {
  /** In the order of pinning, without what is pinned: first the structure, then what the tape tunes and what goes over all. */
  readonly structure: readonly PlannedPiece[];
  readonly tuning: readonly PlannedPiece[];
  /** Pinned pieces that go over one of the level lines. */
  readonly coversLines: ReadonlySet<string>;
  /** What the tape should read now at each level (mm). */
  readonly expectedNow: { readonly [name in MeasurementName]?: number };
  /** Whether a trial since the last plan asks for other pieces than are left of it. */
  readonly isTrialNews: boolean;
  /** Whether more than one layer is missing somewhere with the structure on. */
  readonly isLayerMissing: boolean;
  /** What needs mending where anything is off by more than 3 mm, the worst first. */
  readonly tunes: readonly {
    readonly places: readonly TunePlace[];
    readonly levels: readonly LevelName[];
    readonly act: TuneAct;
  }[];
  /** Readings that cannot be and were not taken again. */
  readonly doubtful: readonly MeasurementName[];
  /** Places whose two readings cannot both be right. */
  readonly twice: readonly MeasurementName[];
  /** Whether the plan stands on readings of the bare form at the person's lines. */
  readonly isAtLines: boolean;
  /** What is built or marked above the bust line, in the order of the work. */
  readonly above: readonly BuildAbove[];
  /** What was read over the builds as they are asks for a layer more or less. */
  readonly turnsAbove: readonly { readonly build: BuildAbove; readonly turn: AboveTurn }[];
  /** Whether everything was read that an arm is made from. */
  readonly hasArm: boolean;
  /** What the tape should read over the cover (mm). */
  readonly expectedOverCover: { readonly [name in MeasurementName]?: number };
  /** Levels that read too much or too little over the cover for it to be left as it is. */
  readonly coverOff: readonly CoverOff[];
}
