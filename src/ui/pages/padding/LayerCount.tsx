import { mostLayersAbove } from "../../../document/fittingLimits";
import { readAboveWords } from "../../../text/above";

interface LayerCountProps {
  readonly label: string;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

/** Hands stop a layer early, or need one more: how many really lie there. */
export const LayerCount = ({ label, count, onCount }: LayerCountProps) => (
  <fieldset className="layer-count">
    <legend>{label}</legend>
    <button type="button" className="patch" disabled={count === 0} onClick={() => onCount(count - 1)}>
      <span aria-hidden="true">−</span>
      <span className="unseen">{readAboveWords.fewer}</span>
    </button>
    <output>{count}</output>
    <button type="button" className="patch" disabled={count === mostLayersAbove} onClick={() => onCount(count + 1)}>
      <span aria-hidden="true">+</span>
      <span className="unseen">{readAboveWords.more}</span>
    </button>
  </fieldset>
);
