import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { Target } from "../padding/targets";
import { type Millimetres, mm } from "../units";

/**
 * Something about the form that no padding settles and that a person can: one of the body's lines lies below the form's
 * lower edge, where nothing can be pinned; or above or below everything that was read of the form, so that nothing is
 * known of it there. The amount is how far the line lies beyond.
 */
export interface FormMatter {
  readonly level: LevelName;
  readonly what: "belowForm" | "aboveReadings" | "belowReadings";
  readonly amount: Millimetres;
}

export const formMatters = (targets: ByLevel<Target>): readonly FormMatter[] =>
  levelNames.flatMap((level): readonly FormMatter[] => {
    const { known } = targets[level].form;
    if (known.kind === "off") return [{ level, what: "belowForm", amount: mm(known.by) }];
    if (known.kind !== "beyond") return [];
    return [{ level, what: known.side === "above" ? "aboveReadings" : "belowReadings", amount: mm(known.by) }];
  });
