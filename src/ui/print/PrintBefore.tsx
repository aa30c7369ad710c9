import type { Plan } from "../../core/plan/plan";
import { hasCupPads } from "../padding/hasCupPads";
import { FigureOf } from "../plan/PlanFigures";
import { shortCautions } from "../text/cautions";
import { markLinesSentence } from "../text/levelLines";
import { braSentence } from "../text/padding";
import { printingWords } from "../text/printing";
import { useLengths } from "../useStore";

/** What comes before the first piece, with boxes to tick, beside the figure with every piece where it goes; its level lines are named once, between front and back. */
export function PrintBefore({ plan, isBegun }: { readonly plan: Plan; readonly isBegun: boolean }) {
  const { step } = useLengths();
  const steps = [
    braSentence(hasCupPads(plan)),
    markLinesSentence(plan.levels, step),
    ...(isBegun ? [] : [printingWords.trial]),
  ];
  return (
    <section className="sheet-before">
      <div>
        <h3 className="sheet-sub">{printingWords.before}</h3>
        <p>{shortCautions("firstPiece")}</p>
        <ul className="sheet-steps">
          {steps.map((words) => (
            <li key={words}>
              <span className="sheet-box" aria-hidden />
              <span>{words}</span>
            </li>
          ))}
        </ul>
      </div>
      <div className="sheet-figures">
        <FigureOf plan={plan} view="front" shown={null} shownOn="paper" />
        <FigureOf plan={plan} view="back" shown={null} shownOn="paper" isNamed={false} />
      </div>
    </section>
  );
}
