import { useState } from "react";
import { placeAddress } from "../place";
import { printingWords } from "../text/printing";
import { useDerived } from "../useDerived";
import { CutSheet } from "./CutSheet";
import { MeasureSheet } from "./MeasureSheet";
import { PrintSheet } from "./PrintSheet";
import { SheetChoice } from "./SheetChoice";
import { type SheetKind, sheetKinds } from "./sheetKind";

/** The sheets as they will lie on paper, which of them, and the patch that prints them. */
export function PrintPlace() {
  const { planning } = useDerived();
  const plan = planning.kind === "planned" ? planning.plan : null;
  const [wished, setWished] = useState<readonly SheetKind[]>(plan === null ? ["measuring"] : ["padding"]);
  const shown = sheetKinds.filter((kind) => wished.includes(kind) && (plan !== null || kind === "measuring"));
  return (
    <>
      <div className="place-head stack unprinted">
        <h1>{printingWords.title}</h1>
        <p className="lead">{plan === null ? printingWords.waiting : printingWords.lead}</p>
        <SheetChoice chosen={shown} hasPlan={plan !== null} onChoose={setWished} />
        <div className="row">
          <button
            type="button"
            className="patch patch-main"
            disabled={shown.length === 0}
            onClick={() => window.print()}
          >
            {printingWords.print}
          </button>
          {plan === null ? (
            <a className="patch" href={placeAddress("body")}>
              {printingWords.toReadings}
            </a>
          ) : null}
        </div>
        {shown.length === 0 ? <p>{printingWords.noneChosen}</p> : null}
      </div>
      {plan !== null && shown.includes("padding") ? <PrintSheet plan={plan} /> : null}
      {shown.includes("measuring") ? <MeasureSheet /> : null}
      {plan !== null && shown.includes("cutting") ? <CutSheet plan={plan} /> : null}
    </>
  );
}
