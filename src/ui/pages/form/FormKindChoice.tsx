import { formFacts, formFactsOfPlan, usualLayer } from "../../../app/steps/formFacts";
import { formKinds } from "../../../document/fittingLimits";
import { formKindWords, readyWords } from "../../../text/formKinds";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";

/** Asked once: what kind of form it is, whether it must come off the padding as it was, whether it has legs; and what follows before it is measured. */
export function FormKindChoice() {
  const { form } = useFitting();
  const dispatch = useDispatch();
  const { planning, lengths } = useDerived();
  const { step } = useLengths();
  const { kind = null, shared = false, legs = false } = form;
  const facts =
    planning.kind === "planned"
      ? formFactsOfPlan(planning.plan, form)
      : formFacts(form, lengths?.body ?? {}, lengths?.batting.layerThickness ?? usualLayer);
  const described = { kind, isShared: shared, hasLegs: legs };
  const describe = (more: Partial<typeof described>) => dispatch({ does: "describeForm", ...described, ...more });
  return (
    <div className="form-kind">
      <label className="choice">
        <span>{formKindWords.title}</span>
        <select
          className="line-input"
          value={kind ?? ""}
          onChange={({ target }) => describe({ kind: formKinds.find((one) => one === target.value) ?? null })}
        >
          <option value="">{formKindWords.unknown}</option>
          {formKinds.map((one) => (
            <option key={one} value={one}>
              {formKindWords.kinds[one]}
            </option>
          ))}
        </select>
      </label>
      <label className="tick">
        <input type="checkbox" checked={shared} onChange={({ target }) => describe({ isShared: target.checked })} />
        <span>{formKindWords.shared}</span>
      </label>
      <label className="tick">
        <input type="checkbox" checked={legs} onChange={({ target }) => describe({ hasLegs: target.checked })} />
        <span>{formKindWords.legs}</span>
      </label>
      <ul className="plain-list">
        {readyWords(facts, step).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}
