import { fineStep, type LengthStep, type LengthUnit, tapeStep } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import type { FittingSettings } from "../document/fitting";
import { writtenLength } from "./writtenLength";

/**
 * A length in words that are shown: the number, its fraction and its unit stay on one line, for half a length at the end
 * of a line is read as another length. Never for a field, a file or the command, whose text is typed back.
 */
export const shownLength = (length: Millimetres, step: LengthStep): string => unbroken(writtenLength(length, step));

/** The same for a sentence somebody else wrote: every length in it keeps together. */
export const unbroken = (sentence: string): string =>
  sentence.replace(
    /(\d) (?:(\d+\/\d+) )?(in|cm|mm|m|m²|sq yd)(?![\p{L}\d²])/gu,
    (_, whole: string, fraction: string | undefined, unit: string) =>
      [whole, ...(fraction === undefined ? [] : [fraction]), ...unit.split(" ")].join(noBreakSpace),
  );

/** Whether a written length rounds to nought: "0 cm", but not "0.5 cm". */
export const isNought = (written: string): boolean => /^0(?![.,\d])/.test(written);

export const noBreakSpace = "\u00a0";

/** The step lengths are written to: as fine as a tape is read, or a sixteenth where the person asked for it. */
export const lengthStepOf = (unit: LengthUnit, roundInches: FittingSettings["roundInches"]): LengthStep =>
  unit === "in" && roundInches === "1/16" ? fineStep.in : tapeStep[unit];
