import { type FormKind, formKinds } from "../../../document/fittingLimits";
import { formKindWords } from "../../../text/formKinds";
import { useDispatch, useFitting } from "../../kit/useStore";

/** Asked once: what kind of form it is, and whether it must come off the padding as it was. */
export function FormKindChoice() {
  const { form } = useFitting();
  const dispatch = useDispatch();
  const { kind = null, shared = false } = form;
  const describe = (more: { readonly kind?: FormKind | null; readonly isShared?: boolean }) =>
    dispatch({ does: "describeForm", kind, isShared: shared, ...more });
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
    </div>
  );
}
