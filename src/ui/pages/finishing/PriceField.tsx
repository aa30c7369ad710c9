import { useId } from "react";
import { suppliesWords } from "../../../text/supplies";
import { useDispatch, useDraft } from "../../kit/useStore";

interface PriceFieldProps {
  readonly label: string;
  /** Where the text is kept while it is no number yet. */
  readonly draft: string;
  readonly amount: number | undefined;
  readonly onAmount: (amount: number | undefined) => void;
}

/** A price, if somebody wants to type one: read when the field is left; what cannot be read stays, with a sentence. */
export function PriceField({ label, draft, amount, onAmount }: PriceFieldProps) {
  const id = useId();
  const dispatch = useDispatch();
  const key = `price.${draft}`;
  const typed = useDraft("other", key);
  const text = typed ?? (amount === undefined ? "" : String(amount));
  const isWrong = typed !== undefined && typed.trim() !== "" && priceOf(typed) === null;
  const keep = (kept: string | null) => dispatch({ does: "draft", of: "other", key, text: kept });
  const commit = () => {
    if (typed === undefined) return;
    const price = priceOf(typed);
    if (price === null && typed.trim() !== "") return;
    keep(null);
    onAmount(price ?? undefined);
  };
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className="line-input"
        inputMode="decimal"
        autoComplete="off"
        maxLength={20}
        value={text}
        aria-invalid={isWrong}
        aria-describedby={`${id}-note`}
        onChange={({ target }) => keep(target.value)}
        onBlur={commit}
        onKeyDown={({ key }) => key === "Enter" && commit()}
      />
      <span id={`${id}-note`} className={isWrong ? "field-note field-problem" : "field-note"}>
        {isWrong ? suppliesWords.notPrice(typed) : ""}
      </span>
    </div>
  );
}

/** A plain number with a point or a comma, up to a million. */
function priceOf(text: string): number | null {
  const typed = text.trim();
  return /^\d{1,6}([.,]\d{1,4})?$/.test(typed) ? Number(typed.replace(",", ".")) : null;
}
