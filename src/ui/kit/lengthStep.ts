import { fineStep, type LengthStep, type LengthUnit, tapeStep } from "../../core/lengthText";
import type { FittingSettings } from "../../document/fitting";

/** The step lengths are written to: as fine as a tape is read, or a sixteenth where the person asked for it. */
export const lengthStepOf = (unit: LengthUnit, roundInches: FittingSettings["roundInches"]): LengthStep =>
  unit === "in" && roundInches === "1/16" ? fineStep.in : tapeStep[unit];
