import { formStanding } from "../form/formStanding";
import { placeAddress } from "../place";
import { planningWords } from "../text/planning";
import { useDerived } from "../useDerived";
import { useFitting } from "../useStore";

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
