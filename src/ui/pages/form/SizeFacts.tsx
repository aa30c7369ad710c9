import { requiredMeasurementNames } from "../../../core/body/vocabulary";
import type { RankedSize } from "../../../core/plan/chooseForm";
import { tapeAgreement } from "../../../core/tolerances";
import { LengthFigure } from "../../kit/LengthFigure";
import { formingWords } from "../../../text/forming";
import { unitMarks } from "../../../text/workroom";
import { useLengths } from "../../kit/useStore";

const { bust, waist, fullHip } = formingWords.sizeHead;
const girthHeads = { bustGirth: bust, waistGirth: waist, fullHipGirth: fullHip } as const;

/** What the columns are; beside each figure a screen reader hears it again. */
export function SizeHead() {
  const { unit } = useLengths();
  const { size, verdict } = formingWords.sizeHead;
  return (
    <li className="size size-head" aria-hidden>
      <span />
      <span>
        {size}, {unitMarks[unit]}
      </span>
      <span className="size-facts">
        <span className="size-girths">
          {requiredMeasurementNames.map((name) => (
            <span key={name}>{girthHeads[name]}</span>
          ))}
        </span>
        <span>{verdict}</span>
      </span>
    </li>
  );
}

/** The size’s own girths, and how it suits this body. */
export function SizeFacts({ ranked }: { readonly ranked: RankedSize }) {
  const { step, write } = useLengths();
  return (
    <span className="size-facts">
      <span className="size-girths">
        {requiredMeasurementNames.map((name) => {
          const girth = ranked.measurements[name];
          return girth === undefined ? null : (
            <span key={name}>
              <span className="unseen">{girthHeads[name]} </span>
              <LengthFigure length={girth} step={step} unitShown={false} />
            </span>
          );
        })}
      </span>
      <span>
        {ranked.shortfallTotal > 0 ? formingWords.over(write(ranked.shortfallTotal)) : formingWords.nothingOver};{" "}
        {ranked.waistGain <= tapeAgreement ? formingWords.noLayers : formingWords.waistLayers(ranked.waistLayers)}
      </span>
    </span>
  );
}
