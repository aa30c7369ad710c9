import { takeHomeWords } from "../../../text/library";
import { keyHelp, keyHelpWords, wallControls } from "../../../text/wall";
import { WallPanel } from "./WallPanel";

/** All keys in one list, and the switch that puts the letter keys out of action for those whom they hinder. */
export interface WallHelpProps {
  readonly lettersWork: boolean;
  readonly onLetters: (work: boolean) => void;
  /** Shows the made-up person as a link and a code; null while the own fitting stands on the wall. */
  readonly onTakeHome: (() => void) | null;
  readonly onClose: () => void;
}

export function WallHelp({ lettersWork, onLetters, onTakeHome, onClose }: WallHelpProps) {
  return (
    <WallPanel id="wall-help-title" title={keyHelpWords.title} onClose={onClose}>
      <dl className="wall-help-keys">
        {[...keyHelp, takeHomeWords].map(({ keys, does }) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <div className="row">
        <label className="tick">
          <input type="checkbox" checked={lettersWork} onChange={(event) => onLetters(event.target.checked)} />
          {keyHelpWords.letters}
        </label>
        {onTakeHome && (
          <button type="button" className="patch" onClick={onTakeHome}>
            {takeHomeWords.control}
          </button>
        )}
        <button type="button" className="patch" onClick={onClose}>
          {wallControls.closeKeys}
        </button>
      </div>
      <p className="quiet">{keyHelpWords.private}</p>
    </WallPanel>
  );
}
