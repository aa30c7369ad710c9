import type { StageStanding } from "../../../app/steps/makingStages";
import { finishingWords } from "../../../text/finishing";
import { stopWords } from "../../../text/stops";

/** What comes over the padding, in its order: done, left out, now, still to come. */
export function MakingRoute({ stages }: { readonly stages: readonly StageStanding[] }) {
  return (
    <ol className="making-route" aria-label={finishingWords.routeTitle}>
      {stages.map(({ stage, standing }, i) => (
        <li key={stage} className={`making-${standing}`} aria-current={standing === "now" ? "step" : undefined}>
          <span className="making-number" aria-hidden>
            {i + 1}
          </span>
          <span>{finishingWords.stages[stage]}</span>
          {standing === "done" ? <span className="unseen">{stopWords.isDone}</span> : null}
          {standing === "leftOut" || standing === "partlyLeftOut" ? (
            <span className="making-left">{finishingWords.leftOutStage[standing]}</span>
          ) : null}
        </li>
      ))}
    </ol>
  );
}
