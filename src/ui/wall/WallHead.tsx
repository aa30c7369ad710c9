import { tapeStep } from "../../core/lengthText";
import { hasCupPads } from "../padding/hasCupPads";
import { shortCautions } from "../text/cautions";
import { linesWords } from "../text/linesAtForm";
import { pinSentence, placeSentence } from "../text/pieces";
import { shownLength } from "../text/shownLength";
import { wallWords } from "../text/wall";
import type { WallPerson } from "./wallPeople";
import type { WallView } from "./wallView";

/** At the top of the wall: which piece has just gone on, where it lies, and whose plan this is. */
export interface WallHeadProps {
  readonly person: WallPerson;
  readonly whose: "own" | "madeUp";
  readonly view: WallView;
}

export function WallHead({ person, whose, view }: WallHeadProps) {
  const { plan, scene, step, piece, isCovered } = view;
  const all = plan.pieces.length;
  const ownWords = isCovered ? wallWords.ownCovered : wallWords.own;
  return (
    <header className="wall-head">
      <h1 className="wall-action">
        {piece !== null ? pinSentence(piece) : scene === "lines" ? wallWords.markLines : wallWords.bareForm}
      </h1>
      <p className="wall-whose">
        <span className="wall-count">{wallWords.piece(step, all)}</span>
        {whose === "own" ? ownWords : wallWords.madeUp(person.name)}
      </p>
      <p className="wall-where">{whereWords(view)}</p>
      <ol className="wall-pins" aria-hidden>
        {plan.pieces.map(({ id, order }) => (
          <li key={id} className="wall-pin" data-state={order < step ? "on" : order === step ? "now" : "waits"} />
        ))}
      </ol>
    </header>
  );
}

/** Where the piece lies; on the bare form, what comes before the first piece. Covered, no length is told. */
function whereWords({ plan, scene, piece, unit, isCovered }: WallView): string {
  if (piece !== null) {
    const isSided = piece.zone !== "front" && piece.zone !== "back" && piece.zone !== "around";
    const place = isCovered ? "" : placeSentence(piece, plan.levels, tapeStep[unit]);
    const care = [shortCautions("laterPiece")];
    return [place, ...(isSided ? [wallWords.wearersSide] : []), ...care].filter((words) => words !== "").join(" ");
  }
  if (scene === "lines") return `${linesWords.prepare.sentence} ${wallWords.braHint} ${shortCautions("firstPiece")}`;
  if (plan.pieces.length === 0) return wallWords.nothing;
  const draft =
    plan.basis === "lines"
      ? ""
      : isCovered
        ? wallWords.draft
        : wallWords.draftOf(shownLength(plan.mayMiss, tapeStep[unit]));
  return [draft, hasCupPads(plan) ? wallWords.braHint : "", shortCautions("firstPiece")]
    .filter((words) => words !== "")
    .join(" ");
}
