import { plannedChanges } from "../../../app/steps/planAnew";
import { stepMinutes } from "../../../app/steps/stepMinutes";
import { changeWords, doneWords, planAnewStop, planTrail, stopWords } from "../../../text/stops";
import { learningWords } from "../../../text/learning";
import { StopFrame } from "./StopFrame";
import type { StepAtHand } from "./useStep";
import { WorkPictureOf } from "./WorkPictureOf";

/** Before the remaining pieces are updated: which of them stay, which change, which are new or not needed any more. */
export function PlanAnewStop({ at }: { readonly at: StepAtHand }) {
  const { step, plan, replan, pinned, words, record, fitting } = at;
  const changes = plannedChanges(at, fitting);
  const moving = changes.filter(({ fate }) => fate === "isNew" || fate === "changes").map(({ piece }) => piece);
  return (
    <StopFrame
      region={stopWords.region}
      trail={planTrail}
      act="plan-anew"
      kind="working"
      title={words[0]}
      speech={words.join(" ").trim()}
      sentence={words[1]}
      minutes={stepMinutes(step)}
      picture={
        <WorkPictureOf
          plan={plan}
          on={pinned}
          now={moving.length > 0 ? moving : replan.plan.pieces}
          doing="plan"
          title={words[0]}
        />
      }
      slab={{ words: doneWords(step), press: () => record(learningWords.replanned), isReady: true }}
      ways={null}
    >
      <p>{planAnewStop.pinned(pinned.length)}</p>
      {changes.length === 0 ? (
        <p>{planAnewStop.none}</p>
      ) : (
        <ul className="changes" aria-label={planAnewStop.list}>
          {changes.map((change) => {
            const [name, fate] = changeWords(change);
            return (
              <li key={`${change.piece.id} ${change.fate}`} className={`change change-${change.fate}`}>
                <strong>{name}</strong> <span>{fate}</span>
              </li>
            );
          })}
        </ul>
      )}
    </StopFrame>
  );
}
