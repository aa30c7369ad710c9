import { learningWords } from "../text/learning";

/** A reading that is not used: why, what to do, and the press that lets go of it. */
export interface RefusedRowProps {
  readonly sentence: string;
  readonly todo: string;
  readonly onIgnore: () => void;
}

export function RefusedRow({ sentence, todo, onIgnore }: RefusedRowProps) {
  return (
    <div className="learning-row">
      <p className="learning-line">
        {sentence} <span className="learning-do">{todo}</span>
      </p>
      <button type="button" className="patch" onClick={onIgnore}>
        {learningWords.leaveOut}
      </button>
    </div>
  );
}
