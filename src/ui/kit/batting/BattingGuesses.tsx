import type { BattingEntry } from "../../../document/fitting";
import { battingGuesses } from "../../../text/batting";
import { useUnit } from "../useStore";

/** The starting figures a person may pick, one tap each. */
export interface BattingGuessesProps {
  readonly legend: string;
  readonly batting: BattingEntry;
  readonly onChoose: (batting: BattingEntry) => void;
}

export function BattingGuesses({ legend, batting, onChoose }: BattingGuessesProps) {
  const unit = useUnit();
  return (
    <fieldset className="guesses">
      <legend>{legend}</legend>
      {battingGuesses.map(({ name, layer }) => (
        <button
          key={name}
          type="button"
          className="patch"
          aria-pressed={batting.name === name && Object.values(layer).some((text) => text === batting.layerThickness)}
          onClick={() => onChoose({ name, layerThickness: layer[unit] })}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
