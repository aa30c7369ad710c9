import { armWish } from "../../../app/arm/fittingArm";
import { isNoted } from "../../../app/progress/isNoted";
import { armCaps, armCuts } from "../../../document/fittingLimits";
import { armChoiceWords } from "../../../text/arm";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDispatch, useFitting } from "../../kit/useStore";

/** From how many pieces the arm is cut, and how its cap meets the form; once it is cut nothing is left to choose. */
export function ArmChoice({ group }: { readonly group: string }) {
  const fitting = useFitting();
  const dispatch = useDispatch();
  const wish = armWish(fitting);
  const isCut = isNoted(fitting, "armCut");
  return (
    <>
      <fieldset className="stack" disabled={isCut}>
        <legend>{armChoiceWords.cut}</legend>
        {armCuts.map((cut) => (
          <label key={cut} className="tick">
            <input
              type="radio"
              name={`${group}Cut`}
              checked={wish.cut === cut}
              onChange={() => dispatch({ does: "chooseArm", arm: { cut } })}
            />
            <span>{armChoiceWords.cuts[cut]}</span>
          </label>
        ))}
      </fieldset>
      <fieldset className="stack" disabled={isCut}>
        <legend>{armChoiceWords.cap}</legend>
        {armCaps.map((cap) => (
          <label key={cap} className="tick">
            <input
              type="radio"
              name={`${group}Cap`}
              checked={wish.cap === cap}
              onChange={() => dispatch({ does: "chooseArm", arm: { cap } })}
            />
            <span>{armChoiceWords.caps[cap]}</span>
          </label>
        ))}
      </fieldset>
    </>
  );
}

/** How the arm is cut, in a line; folded under it the choice, so that what the hands do comes first. */
export function ArmFold({ at: { facts } }: { readonly at: StepAtHand }) {
  if (facts.arm === null) return null;
  return (
    <details>
      <summary className="fold">{`${armChoiceWords.cut} ${armChoiceWords.cuts[facts.arm.wish.cut]}.`}</summary>
      <ArmChoice group="stop" />
    </details>
  );
}
