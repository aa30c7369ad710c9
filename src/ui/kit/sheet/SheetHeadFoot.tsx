import type { Learning } from "../../../app/progress/learning";
import { clothKind, chosenWidth } from "../../../app/supplies/fittingSupplies";
import type { BattingRole } from "../../../core/material";
import { pieceBatting } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { shortCautions } from "../../../text/cautions";
import { finishingWords } from "../../../text/finishing";
import { printingWords } from "../../../text/printing";
import { battingToHaveShort, clothLength, suppliesWords } from "../../../text/supplies";
import { thinText } from "../../../text/thinText";
import { useBattingSupplies } from "../supplies/useBattingSupplies";
import { useSuppliesNow } from "../supplies/useSuppliesNow";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { usePrintedName } from "./SheetPage";

/**
 * The head of a sheet: whose it is, the batting or both of them with the thickness of a layer as it is known now, and
 * how much of each.
 */
export function SheetHead({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { batting, finishingBatting, unit } = fitting;
  const title = usePrintedName();
  const battings = useBattingSupplies(plan);
  const amount = (role: BattingRole): string => {
    const supply = battings.find((one) => one.role === role);
    if (supply !== undefined) return battingToHaveShort(supply.layout, unit);
    return plan.pieces.some((piece) => pieceBatting(piece) === role) ? suppliesWords.allCut : printingWords.unused;
  };
  const learned = useLearned();
  const { lengths } = useDerived();
  const sentence = (role: BattingRole, name: string): string => {
    const words = role === "building" ? printingWords.batting : printingWords.finishing;
    const guess = role === "building" ? lengths?.batting : lengths?.finishingBatting;
    const thickness = learned?.replan.calibration[role].layer ?? guess?.layerThickness;
    const told =
      thickness === undefined ? "" : printingWords.layerAdds(thinText(thickness, unit), learned?.readingCount ?? 0);
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

/** The foot of the padding sheet: what finishing takes. */
export function SheetFoot({ plan }: { readonly plan: Plan }) {
  return plan.pieces.length === 0 ? null : (
    <footer className="sheet-foot sheet-keep">
      <Finishing plan={plan} />
    </footer>
  );
}

/** What the cover is cut from, and the pins counted back, in the words of the finishing. */
function Finishing({ plan }: { readonly plan: Plan }) {
  const { unit } = useLengths();
  const fitting = useFitting();
  const made = useSuppliesNow(plan);
  return (
    <p>
      <strong>{finishingWords.title}.</strong> {shortCautions("covering")}{" "}
      {made === null || made.cover.coverCount + made.cover.armCount === 0
        ? null
        : clothLength(clothKind(fitting), chosenWidth(fitting), made.cover.rows.length, unit)}{" "}
      {finishingWords.count}
    </p>
  );
}

/**
 * What the tape has taught, for paper: worked out at once, because a page that is being printed waits for nothing. It is
 * remembered, so a fitting whose padding was looked at costs nothing more.
 */
const useLearned = (): Learning | null => useDerived().learning();
