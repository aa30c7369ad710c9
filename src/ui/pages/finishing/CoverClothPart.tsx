import { chosenCloth } from "../../../app/steps/chosenCloth";
import { clothKind, chosenWidth, type CoverClothKind } from "../../../app/supplies/fittingSupplies";
import type { CoverCloth } from "../../../app/supplies/coverCloth";
import { clothWidthIds, clothWidths } from "../../../core/supplies/goods";
import type { SuppliesEntry } from "../../../document/suppliesSchema";
import { clothPictureWords, clothSentence, clothTooWide, clothWidthName, suppliesWords } from "../../../text/supplies";
import { Drawing } from "../../drawing/Drawing";
import { clothScene } from "../../drawing/layoutScene";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { useLetters } from "../../kit/supplies/useLetters";
import { PriceField } from "./PriceField";
import "../../kit/supplies/supplies.css";

const clothKinds: readonly CoverClothKind[] = ["knit", "woven"];

/** The cloth of the cover: from what and how wide, how much of it, and how the panels lie. */
export function CoverClothPart({ cover }: { readonly cover: CoverCloth | null }) {
  const { unit, write } = useLengths();
  const letters = useLetters();
  const fitting = useFitting();
  const dispatch = useDispatch();
  const [kind, width] = [clothKind(fitting), chosenWidth(fitting)];
  const chosen = fitting.supplies?.cover ?? {};
  const { price, ...unpriced } = chosen;
  const change = (to: NonNullable<SuppliesEntry["cover"]>) =>
    dispatch({ does: "changeSupplies", supplies: { ...fitting.supplies, cover: to } });
  const per = unit === "in" ? "yard" : "meter";
  return (
    <div className="stack">
      <h3>{suppliesWords.fabric(chosenCloth(fitting).kind !== "none")}</h3>
      <fieldset className="stack" disabled={fitting.work.some(({ did }) => did === "coverChosen")}>
        <legend>{suppliesWords.clothKind}</legend>
        {clothKinds.map((one) => (
          <label key={one} className="tick">
            <input
              type="radio"
              name="supplyCloth"
              checked={kind === one}
              onChange={() => change({ ...chosen, cloth: one })}
            />
            {suppliesWords.cloths[one]}
          </label>
        ))}
      </fieldset>
      <fieldset className="stack">
        <legend>{suppliesWords.clothWidth}</legend>
        {clothWidthIds.map((one) => (
          <label key={one} className="tick">
            <input
              type="radio"
              name="supplyWidth"
              checked={width === one}
              onChange={() => change({ ...chosen, width: one })}
            />
            {clothWidthName(one, unit)}
          </label>
        ))}
      </fieldset>
      {cover === null ? (
        <p className="quiet">{suppliesWords.working}</p>
      ) : cover.ids.length === 0 ? (
        <p>{suppliesWords.noCloth}</p>
      ) : (
        <>
          <p>
            <strong>{clothSentence(kind, width, cover, unit)}</strong> {suppliesWords.washed}
          </p>
          {cover.rows.tooWide.length === 0 ? null : (
            <p className="caution">{clothTooWide(cover.rows.tooWide.length)}</p>
          )}
          <div className="layout-pictures">
            <Drawing
              scene={clothScene(cover.rows, clothWidths[width], ...clothPictureWords(cover, width, unit), letters)}
            />
          </div>
          <p className="quiet">{suppliesWords.clothHow(cover, write(cover.above))}</p>
        </>
      )}
      <PriceField
        label={suppliesWords.priceOf(suppliesWords.cloths[kind], suppliesWords.perWords[per])}
        draft={`cover.${per}`}
        amount={price?.per === per ? price.amount : undefined}
        onAmount={(amount) => change(amount === undefined ? unpriced : { ...unpriced, price: { amount, per } })}
      />
    </div>
  );
}
