import { fineStep, formatLength, tapeStep, type LengthUnit } from "../../core/lengthText";
import { mm } from "../../core/units";

/** How lengths are written in a picture: in the person's own unit, as a tape is read or more finely for thin things. */
export interface LengthWriter {
  readonly unit: LengthUnit;
  readonly write: (lengthMm: number) => string;
  readonly writeFine: (lengthMm: number) => string;
  /** The same without the unit, for numbers along a tape or a ruler. */
  readonly writeBare: (lengthMm: number) => string;
}

const writerFor = (unit: LengthUnit): LengthWriter => ({
  unit,
  write: (length) => formatLength(mm(length), tapeStep[unit]),
  writeFine: (length) => formatLength(mm(length), fineStep[unit]),
  writeBare: (length) => formatLength(mm(length), fineStep[unit], "bare"),
});

const writers = { cm: writerFor("cm"), in: writerFor("in"), mm: writerFor("mm") } as const;

/** The writer of a unit: always the same one, so that a picture drawn again with it need not be made again. */
export const lengthWriter = (unit: LengthUnit): LengthWriter => writers[unit];

/** One inch in millimetres: exact by the international yard and pound agreement of 1959. */
export const inchMm = 25.4;

/** The bar under a picture to scale: ten centimetres or four inches. */
export const scaleBarMm = ({ unit }: LengthWriter): number => (unit === "in" ? 4 * inchMm : 100);
