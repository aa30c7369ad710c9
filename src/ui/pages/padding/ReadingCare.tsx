import { formatLength } from "../../../core/lengthText";
import { mm } from "../../../core/units";
import { errorWords, type ReadingCare as Care } from "../../../text/learning";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useUnit } from "../../kit/useStore";

/** How closely this person reads a tape: three hands to choose from, the middle one to begin with. */
const cares: readonly { readonly care: Care; readonly errorMm: number }[] = [
  { care: "careful", errorMm: 3 },
  { care: "usual", errorMm: 5 },
  { care: "hasty", errorMm: 10 },
];

export function ReadingCare() {
  const { lengths } = useDerived();
  const unit = useUnit();
  const dispatch = useDispatch();
  if (lengths === null) return null;
  const write = (errorMm: number) => formatLength(mm(errorMm), unit === "in" ? "1/16 in" : "1 mm");
  return (
    <fieldset className="reading-care">
      <legend>{errorWords.title}</legend>
      <div className="segments">
        {cares.map(({ care, errorMm }) => (
          <button
            key={care}
            type="button"
            className="segment"
            aria-pressed={Math.abs(lengths.readingError - errorMm) < 0.01}
            onClick={() => dispatch({ does: "setReadingError", text: `${errorMm} mm` })}
          >
            {errorWords.choice[care]}: {write(errorMm)}
          </button>
        ))}
      </div>
      <p className="quiet">{errorWords.explain(write(lengths.readingError))}</p>
    </fieldset>
  );
}
