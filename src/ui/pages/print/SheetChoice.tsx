import { printingWords } from "../../../text/printing";
import { type SheetKind, sheetKinds } from "../../kit/sheet/sheetPages";

/** Which sheets to print: any of them; those of the plan wait until there is one. */
export interface SheetChoiceProps {
  readonly chosen: readonly SheetKind[];
  readonly hasPlan: boolean;
  readonly onChoose: (chosen: readonly SheetKind[]) => void;
}

export function SheetChoice({ chosen, hasPlan, onChoose }: SheetChoiceProps) {
  return (
    <fieldset className="sheet-choice">
      <legend>{printingWords.which}</legend>
      {sheetKinds.map((kind) => {
        const { name, buys } = printingWords.sheets[kind];
        const waits = !hasPlan && kind !== "measuring";
        return (
          <label key={kind} className="tick">
            <input
              type="checkbox"
              checked={chosen.includes(kind)}
              disabled={waits}
              onChange={({ target }) =>
                onChoose(target.checked ? [...chosen, kind] : chosen.filter((other) => other !== kind))
              }
            />
            <span>
              <strong>{name}</strong> <span className="quiet">{waits ? printingWords.needsPlan : buys}</span>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
