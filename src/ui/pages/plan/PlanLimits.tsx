import { shortfallCause } from "../../../app/shortfallCause";
import type { Plan } from "../../../core/plan/plan";
import { placeAddress } from "../../kit/place";
import { formMatterText } from "../../../text/formMatters";
import { planWords } from "../../../text/plan";
import { planningWords } from "../../../text/planning";
import { unbroken } from "../../../text/shownLength";
import { useLengths } from "../../kit/useStore";

/** What padding cannot do here and what can be done about it, and where the side seams are marked anew. */
export function PlanLimits({ plan }: { readonly plan: Plan }) {
  const { step } = useLengths();
  const words = planWords(step);
  const isFormTooLarge = plan.shortfalls.some(
    (shortfall) => shortfall.sense === "tooLarge" && shortfallCause(plan, shortfall) === "form",
  );
  const isLimited = plan.shortfalls.length > 0 || plan.matters.length > 0;
  if (!isLimited && plan.seamShifts.length === 0) return null;
  return (
    <section className="limits">
      {isLimited ? (
        <div>
          <h2>{planningWords.cannot}</h2>
          <ul className="plain-list">
            {plan.matters.map((matter) => (
              <li key={`${matter.level}${matter.what}`}>{unbroken(formMatterText(matter, step))}</li>
            ))}
            {plan.shortfalls.map((shortfall) => (
              <li key={`${shortfall.level}${shortfall.what}${shortfall.what === "length" ? shortfall.length : ""}`}>
                {unbroken(words.shortfallAdvice(shortfall, shortfallCause(plan, shortfall)))}
              </li>
            ))}
          </ul>
          {isFormTooLarge ? (
            <a className="patch" href={placeAddress("form")}>
              {planningWords.otherForm}
            </a>
          ) : null}
        </div>
      ) : null}
      {plan.seamShifts.length === 0 ? null : (
        <div>
          <h2>{planningWords.seams}</h2>
          <ul className="plain-list">
            {plan.seamShifts.map((shift) => (
              <li key={shift.level}>{unbroken(words.seamShift(shift))}</li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
