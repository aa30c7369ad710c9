import type { Reading } from "../../../core/body/reading";
import type { LengthUnit } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { lengthWriter } from "../../../text/lengthWriter";
import { tapeScale } from "../../drawing/tapeScene";

/**
 * The same difference as a length: the sewing tape with the batting lying on it as far as the tape now reads, and the pin
 * at the reading wanted. What lies bare between them is left to go. It is not drawn while anything is covered: its parts tell as much
 * as figures.
 */
interface ClassStripProps {
  readonly wanted: Reading;
  readonly now: Millimetres;
  readonly span: number;
  readonly unit: LengthUnit;
}

const width = 1000;
const pinAt = 880;
const height = 44;

export function ClassStrip({ wanted, now, span, unit }: ClassStripProps) {
  const place = (reading: number): number => pinAt + ((reading - wanted.value) / span) * pinAt;
  const end = Math.min(width, Math.max(0, place(now)));
  const first = wanted.value - span;
  const marks = tapeScale(first, first + (span * width) / pinAt, lengthWriter(unit));
  return (
    <svg
      className="class-strip"
      viewBox={`0 0 ${String(width)} ${String(height)}`}
      preserveAspectRatio="none"
      aria-hidden
      focusable="false"
    >
      <rect className="class-strip-tape" x="0" y="8" width={width} height={height - 8} />
      {marks.map(({ reading, isMajor }) => (
        <rect
          key={reading}
          className="class-strip-tick"
          x={place(reading) - 1}
          y={height - (isMajor ? 20 : 11)}
          width="2"
          height={isMajor ? 20 : 11}
        />
      ))}
      <rect className="class-strip-batting" x="0" y="8" width={end} height={height - 20} />
      <rect className="class-strip-end" x={end - 3} y="4" width="3" height={height - 12} />
      <rect className="class-strip-pin" x={pinAt - 3} y="0" width="6" height={height} />
    </svg>
  );
}
