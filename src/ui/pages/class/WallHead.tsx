import { shortCautions } from "../../../text/cautions";
import { wallWords } from "../../../text/wall";
import type { WallPerson } from "./wallPeople";
import { wallSaid } from "./wallSaid";
import type { WallView } from "./wallView";

/** At the top of the wall: what is done now, how far the job has come, and whose plan this is. */
export interface WallHeadProps {
  readonly person: WallPerson;
  readonly whose: "own" | "madeUp";
  readonly view: WallView;
}

export function WallHead({ person, whose, view }: WallHeadProps) {
  const { plan, step, place, count, pinned, isCovered } = view;
  const { headline, rest } = wallSaid(view, step);
  const ownWords = isCovered ? wallWords.ownCovered : wallWords.own;
  const isSided = step.piece !== null && /left|right/i.test(step.piece.zone);
  return (
    <header className="wall-head">
      <p className="wall-whose">
        <span className="wall-count">{wallWords.step(place, count)}</span>
        {whose === "own" ? ownWords : wallWords.madeUp(person.name)}
      </p>
      <ol className="wall-pins" aria-hidden>
        {plan.pieces.map(({ id, order }) => (
          <li
            key={id}
            className="wall-pin"
            data-state={id === step.piece?.id ? "now" : order <= pinned ? "on" : "waits"}
          />
        ))}
      </ol>
      <h1 className="wall-action">{headline}</h1>
      <p className="wall-where">
        {[rest, isSided ? wallWords.wearersSide : "", careOf(view)].filter((words) => words !== "").join(" ")}
      </p>
    </header>
  );
}

/** The caution belongs to the step where the hand is. */
function careOf({ step }: WallView): string {
  switch (step.do) {
    case "prepare-form":
      return shortCautions("handlingForm");
    case "cut":
      return shortCautions("cutting");
    case "baste":
      return shortCautions("securing");
    default:
      return "";
  }
}
