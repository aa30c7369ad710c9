import { fineStep, formatLength } from "../../core/lengthText";
import type { Plan } from "../../core/plan/plan";
import { entryLength } from "../../document/fitting";
import { formatArea } from "../area";
import { battingWords } from "../text/batting";
import { printingWords } from "../text/printing";
import { useFitting } from "../useStore";

/** The head of a sheet: whose it is, the batting, and how much of it. */
export function SheetHead({ plan, isContinued }: { readonly plan: Plan; readonly isContinued: boolean }) {
  const { title, batting, unit } = useFitting();
  const layer = entryLength(batting.layerThickness, unit);
  const layerText = layer.ok ? formatLength(layer.value, unit === "in" ? fineStep.in : "1 mm") : "";
  return (
    <header className="sheet-head">
      <h2 className="sheet-title">
        {printingWords.sheetTitle(title)}
        {isContinued ? `, ${printingWords.continued}` : ""}
      </h2>
      <p>
        {printingWords.batting(battingWords.layerShort(batting.name, layerText))}{" "}
        {printingWords.area(formatArea(plan.battingArea, unit))}
      </p>
    </header>
  );
}
