import type { BattingEntry } from "../../document/fitting";
import { battingGuesses } from "../text/batting";

/** The guesses a person may start from, one tap each. */
export interface BattingGuessesProps {
  readonly legend: string;
  readonly batting: BattingEntry;
  readonly onChoose: (batting: BattingEntry) => void;
}

export function BattingGuesses({ legend, batting, onChoose }: BattingGuessesProps) {
  return (
    <fieldset className="guesses">
      <legend>{legend}</legend>
      {battingGuesses.map(({ name, layer }) => (
        <button
          key={name}
          type="button"
          className="patch"
          aria-pressed={batting.name === name && batting.layerThickness === layer}
          onClick={() => onChoose({ name, layerThickness: layer })}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
