import type { BattingRole } from "../../core/material";
import type { Plan } from "../../core/plan/plan";
import type { BattingEntry } from "../../document/fitting";
import { formatArea } from "../area";
import { battingText } from "../batting/battingText";
import { battingUse } from "../batting/battingUse";
import { printingWords } from "../text/printing";
import { useFitting } from "../useStore";

/** The head of a sheet: whose it is, the batting or both of them, and how much of each. */
export function SheetHead({ plan, isContinued }: { readonly plan: Plan; readonly isContinued: boolean }) {
  const { title, batting, finishingBatting, unit } = useFitting();
  const use = battingUse(plan);
  const amount = (role: BattingRole): string =>
    finishingBatting !== undefined && use[role] === 0
      ? printingWords.unused
      : printingWords.area(formatArea(use[role], unit));
  const sentence = (role: BattingRole, entry: BattingEntry): string => {
    const words = role === "building" ? printingWords.batting : printingWords.finishing;
    return `${words(battingText(entry, unit))} ${amount(role)}`;
  };
  return (
    <header className="sheet-head">
      <h2 className="sheet-title">
        {printingWords.sheetTitle(title)}
        {isContinued ? `, ${printingWords.continued}` : ""}
      </h2>
      <p>
        {sentence("building", batting)}
        {finishingBatting === undefined ? null : ` ${sentence("finishing", finishingBatting)}`}
      </p>
    </header>
  );
}
