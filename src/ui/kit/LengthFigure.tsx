import type { LengthStep } from "../../core/lengthText";
import type { Millimetres } from "../../core/units";
import { writtenLength } from "../../text/writtenLength";

/**
 * A length set large: the whole number, its fraction stacked beside it as on a paper chart, and the unit. A screen
 * reader hears the formatter's own text. An estimate stands on a dashed line.
 */
interface LengthFigureProps {
  readonly length: Millimetres;
  readonly step: LengthStep;
  readonly estimated?: boolean;
  readonly unitShown?: boolean;
}

export function LengthFigure({ length, step, estimated = false, unitShown = true }: LengthFigureProps) {
  const text = writtenLength(length, step);
  const { whole, over, under, unit } = partsOf(text);
  return (
    <span className={estimated ? "length length-guess" : "length"}>
      <span className="unseen">{text}</span>
      <span aria-hidden>{whole}</span>
      {over === "" ? null : (
        <span className="length-fraction" aria-hidden>
          <span className="length-over">{over}</span>
          <span className="length-under">{under}</span>
        </span>
      )}
      {unitShown ? (
        <span className="length-unit" aria-hidden>
          {unit}
        </span>
      ) : null}
    </span>
  );
}

function partsOf(text: string) {
  const [amount = "", unit = ""] = text.split(/ (?=[a-z]+$)/);
  const [, whole = amount, over = "", under = ""] = /^(-?(?:\d+ )?)(\d+)\/(\d+)$/.exec(amount) ?? [];
  return { whole: whole.trim(), over, under, unit };
}
