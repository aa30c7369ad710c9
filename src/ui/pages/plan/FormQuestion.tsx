import { formStanding } from "../../../app/session/formStanding";
import { placeAddress } from "../../kit/place";
import { planningWords } from "../../../text/planning";
import { useDerived } from "../../kit/useDerived";
import { useFitting } from "../../kit/useStore";

/** Asked once, in one line, until the person says which form it is or lays a tape round it. */
export function FormQuestion() {
  const fitting = useFitting();
  const { planning } = useDerived();
  const standing = formStanding(fitting, planning);
  if (standing.kind !== "supposed") return null;
  return (
    <p className="plan-question">
      <span>
        {planningWords.whichForm(standing.size)} <a href={placeAddress("form")}>{planningWords.sayWhichForm}</a>
      </span>
    </p>
  );
}
