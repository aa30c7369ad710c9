import { useDerived } from "../useDerived";
import { PrintSheet } from "./PrintSheet";

/** The sheet as it is printed from any place of work; without a plan there is none, and the place itself is printed. */
export function PrintedSheet() {
  const { planning } = useDerived();
  return planning.kind === "planned" ? <PrintSheet plan={planning.plan} /> : null;
}
