import type { BattingRole } from "../../../core/material";
import type { Plan } from "../../../core/plan/plan";
import { formatArea } from "../area";
import { battingNeeds } from "../batting/battingUse";
import { battingAmount } from "../../../text/batting";
import { printingWords } from "../../../text/printing";
import { thinText } from "../../../text/thinText";
import { useDerived } from "../useDerived";
import { useFitting } from "../useStore";
import { usePrintedName } from "./printedName";
import { useLearned } from "./useLearned";

/** The head of a sheet: whose it is, the batting or both of them with the worth that is believed now, and how much of each. */
export function SheetHead({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { batting, finishingBatting, unit } = fitting;
  const title = usePrintedName();
  const needs = battingNeeds(plan, fitting);
  const amount = (role: BattingRole): string => {
    const need = needs.find((one) => one.role === role);
    return need === undefined ? printingWords.unused : battingAmount(formatArea(need.area, unit));
  };
  const learned = useLearned();
  const { lengths } = useDerived();
  const sentence = (role: BattingRole, name: string): string => {
    const words = role === "building" ? printingWords.batting : printingWords.finishing;
    const guess = role === "building" ? lengths?.batting : lengths?.finishingBatting;
    const worth = learned?.replan.belief[role].layer ?? guess?.layerThickness;
    const told = worth === undefined ? "" : printingWords.worth(thinText(worth, unit), learned?.readingCount ?? 0);
    return [words(name), told, amount(role)].join(" ");
  };
  return (
    <header className="sheet-head">
      <h2 className="sheet-title">{printingWords.sheetTitle(title)}</h2>
      <p>
        {sentence("building", batting.name)}
        {finishingBatting === undefined ? null : ` ${sentence("finishing", finishingBatting.name)}`}{" "}
        {plan.pieces.length === 0 ? null : printingWords.count(plan.pieces.length, plan.shapesToCut)}
      </p>
    </header>
  );
}
