import { fineStep, type LengthStep, type LengthUnit, tapeStep } from "../core/lengthText";
import { mm } from "../core/units";
import { writtenLength } from "./writtenLength";

/** How lengths are written in a picture: in the person's own unit, as a tape is read or more finely for thin things. */
export interface LengthWriter {
  readonly unit: LengthUnit;
  readonly write: (lengthMm: number) => string;
  readonly writeFine: (lengthMm: number) => string;
  /** The same without the unit, for numbers along a tape or a ruler. */
  readonly writeBare: (lengthMm: number) => string;
}

const writerFor = (unit: LengthUnit, step: LengthStep): LengthWriter => ({
  unit,
  write: (length) => writtenLength(mm(length), step),
  writeFine: (length) => writtenLength(mm(length), fineStep[unit]),
  writeBare: (length) => writtenLength(mm(length), fineStep[unit], "bare"),
});

const writers = {
  "1/8 in": writerFor("in", "1/8 in"),
  "1/16 in": writerFor("in", "1/16 in"),
  "1/32 in": writerFor("in", "1/32 in"),
  "0.5 cm": writerFor("cm", "0.5 cm"),
  "0.1 cm": writerFor("cm", "0.1 cm"),
  "1 mm": writerFor("mm", "1 mm"),
  "0.1 mm": writerFor("mm", "0.1 mm"),
} as const satisfies { readonly [step in LengthStep]: LengthWriter };

/**
 * The writer of a unit, to the step a tape is read to unless the person writes lengths more finely: always the same one, so
 * that a picture drawn again with it need not be made again.
 */
export const lengthWriter = (unit: LengthUnit, step: LengthStep = tapeStep[unit]): LengthWriter => writers[step];

/** One inch in millimetres: exact by the international yard and pound agreement of 1959. */
export const inchMm = 25.4;
