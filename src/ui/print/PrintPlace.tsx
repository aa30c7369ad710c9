import { PlanWaiting } from "../plan/PlanWaiting";
import { printingWords } from "../text/printing";
import { useDerived } from "../useDerived";
import { PrintSheet } from "./PrintSheet";

/** The sheet as it will lie on paper, and the patch that prints it. */
export function PrintPlace() {
  const { planning } = useDerived();
  if (planning.kind === "waiting") return <PlanWaiting />;
  return (
    <>
      <div className="place-head stack unprinted">
        <h1>{printingWords.title}</h1>
        <p className="lead">{printingWords.lead}</p>
        <button type="button" className="patch patch-main" onClick={() => window.print()}>
          {printingWords.print}
        </button>
      </div>
      <PrintSheet plan={planning.plan} />
    </>
  );
}
