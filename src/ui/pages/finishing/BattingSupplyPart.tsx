import { type BattingSupply, chosenGood } from "../../../app/supplies/fittingSupplies";
import { battingGoodIds } from "../../../core/supplies/goods";
import type { BoughtBatting } from "../../../document/suppliesSchema";
import { cutSize, numberedName } from "../../../text/pieces";
import { battingToHave, goodName, goodsOffered, leftWords, suppliesWords } from "../../../text/supplies";
import { LayoutPicture } from "../../kit/supplies/LayoutPicture";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { PriceField } from "./PriceField";

/** One batting: how much of what to buy, its layout, what is left over, and another roll or packet to try. */
export function BattingSupplyPart({ supply, name }: { readonly supply: BattingSupply; readonly name: string }) {
  const { unit, step } = useLengths();
  const fitting = useFitting();
  const dispatch = useDispatch();
  const { role, layout, pieces } = supply;
  const good = chosenGood(fitting, role);
  const bought = fitting.supplies?.[role] ?? {};
  const change = (to: BoughtBatting) =>
    dispatch({ does: "changeSupplies", supplies: { ...fitting.supplies, [role]: to } });
  const per = layout.good.kind === "packet" ? "packet" : unit === "in" ? "yard" : "meter";
  const { price } = bought;
  const { price: _, ...unpriced } = bought;
  const tooLarge = layout.tooLarge.flatMap(({ part }) => {
    if (part.of === "trial") return [suppliesWords.trialStrip];
    const piece = pieces.find(({ id }) => id === part.of);
    const cut = piece?.cut[Number(part.id.slice(part.id.lastIndexOf("-") + 1)) - 1];
    return piece === undefined || cut === undefined ? [] : [`${numberedName(piece)} (${cutSize(cut, step)})`];
  });
  return (
    <div className="stack">
      {layout.sheets.length === 0 ? null : (
        <p>
          <strong>{battingToHave(name, layout, unit)}</strong> {leftWords(layout, step)}
        </p>
      )}
      {tooLarge.length === 0 ? null : <p className="caution">{suppliesWords.tooLarge(tooLarge)}</p>}
      <label className="choice">
        {suppliesWords.boughtAs}
        <select
          className="line-input"
          value={good}
          onChange={({ target }) => {
            const chosen = battingGoodIds.find((id) => id === target.value);
            if (chosen !== undefined) change({ ...bought, good: chosen });
          }}
        >
          {goodsOffered(battingGoodIds, unit, good).map((id) => (
            <option key={id} value={id}>
              {goodName(id)}
            </option>
          ))}
        </select>
      </label>
      <LayoutPicture layout={layout} name={name} />
      {layout.sheets.length === 0 ? null : (
        <PriceField
          label={suppliesWords.priceOf(name, suppliesWords.perWords[per])}
          draft={`${role}.${per}`}
          amount={price?.per === per ? price.amount : undefined}
          onAmount={(amount) => change(amount === undefined ? unpriced : { ...unpriced, price: { amount, per } })}
        />
      )}
    </div>
  );
}
