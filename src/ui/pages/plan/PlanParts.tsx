import { type ReactNode, useMemo } from "react";
import { shortfallCause } from "../../../app/progress/shortfallCause";
import type { BattingRole } from "../../../core/material";
import type { LayerCut } from "../../../core/padding/layerCut";
import { cutArea } from "../../../core/padding/layerCuts";
import { pieceBatting } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { battingNames } from "../../../text/batting";
import { formMatterText } from "../../../text/formMatters";
import { levelLines, markLinesSentence, markLinesWords } from "../../../text/levelLines";
import { cutSize } from "../../../text/pieces";
import { planWords } from "../../../text/plan";
import { planningWords } from "../../../text/planning";
import { unbroken } from "../../../text/shownLength";
import { battingToHave } from "../../../text/supplies";
import { Cautions } from "../../kit/Cautions";
import { pageAddress, suppliesThing } from "../../kit/page";
import { useBattingSupplies } from "../../kit/supplies/useBattingSupplies";
import { phoneQuery, useMediaQuery } from "../../kit/useScreen";
import { useFitting, useLengths } from "../../kit/useStore";

/** A part of the plan under its heading. On a phone it is folded, so that the pieces fill the first screen. */
interface PlanPartProps {
  readonly title: string;
  readonly className?: string;
  readonly children: ReactNode;
}

export function PlanPart({ title, className = "", children }: PlanPartProps) {
  const isPhone = useMediaQuery(phoneQuery);
  if (!isPhone) {
    return (
      <section className={`stitched ${className}`}>
        <h2>{title}</h2>
        {children}
      </section>
    );
  }
  return (
    <details className={`stitched plan-fold ${className}`}>
      <summary className="fold">
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  );
}

/** What is done before anything is cut: the lines on the form, until a piece is on it, and what to have ready. */
export function BeforeCutting({ plan, isBegun }: { readonly plan: Plan; readonly isBegun: boolean }) {
  const { step } = useLengths();
  const areHeightsGuessed = useMemo(
    () => levelLines(plan.levels, step).some(({ isGuessed }) => isGuessed),
    [plan, step],
  );
  return (
    <>
      {isBegun ? null : (
        <>
          <h3>{markLinesWords.title}</h3>
          <p>{markLinesSentence(plan.levels, step)}</p>
          <p className="quiet">
            {markLinesWords.how} {areHeightsGuessed ? null : markLinesWords.why}
          </p>
        </>
      )}
      <PlanShopping plan={plan} />
      <Cautions at="cutting" />
    </>
  );
}

/** How much of each batting to have, by the pieces themselves, and the way to the list of everything else. */
function PlanShopping({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const battings = useBattingSupplies(plan);
  const names = battingNames(useFitting());
  if (battings.length === 0) return null;
  return (
    <>
      <h3>{planningWords.shopping}</h3>
      <ul className="plain-list">
        {battings.map(({ role, layout }) => (
          <li key={role}>
            {battingToHave(names[role], layout, unit)} {planningWords.largest(cutSize(largestCut(plan, role), step))}
          </li>
        ))}
      </ul>
      <p>
        <a href={pageAddress("finishing", suppliesThing)}>{planningWords.everythingElse}</a>
      </p>
    </>
  );
}

/** The cut of a batting that takes most room: a sheet must be at least as large. Some piece is cut from it. */
function largestCut({ pieces }: Plan, role: BattingRole): LayerCut {
  return pieces
    .filter((piece) => pieceBatting(piece) === role)
    .flatMap(({ cut }) => cut)
    .reduce((most, cut) => (cutArea(cut) > cutArea(most) ? cut : most));
}

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
            <a className="patch" href={pageAddress("form")}>
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
