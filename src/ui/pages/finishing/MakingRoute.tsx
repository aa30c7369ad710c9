import type { StepName } from "../../../app/steps/step";
import { finishingWords } from "../../../text/finishing";
import { stopWords } from "../../../text/stops";

/** The stages over the padding, each with its steps in their order. */
const stages = {
  cut: ["choose-cover", "read-between", "cut-cover", "sew-cover"],
  fit: ["fit-cover", "close-cover"],
  read: ["read-cover", "correct-cover"],
  hem: ["hem-cover"],
  lines: ["waist-tape", "mark-armhole", "style-lines"],
  arm: ["cut-arm", "sew-arm", "fill-arm", "hang-arm"],
  after: ["put-away"],
} as const satisfies { readonly [stage: string]: readonly StepName[] };
export type MakingStage = keyof typeof stages;

interface MakingRouteProps {
  /** Null while the padding is not done. */
  readonly now: StepName | null;
  readonly hasArm: boolean;
}

/** What comes over the padding, in its order: done, now, still to come. */
export function MakingRoute({ now, hasArm }: MakingRouteProps) {
  const names = (Object.keys(stages) as MakingStage[]).filter((name) => name !== "arm" || hasArm);
  const at =
    now === "done" ? names.length : names.findIndex((name) => stages[name].some((step: StepName) => step === now));
  return (
    <ol className="making-route" aria-label={finishingWords.routeTitle}>
      {names.map((name, i) => {
        const standing = now === null || i > at ? "toCome" : i === at ? "now" : "done";
        return (
          <li key={name} className={`making-${standing}`} aria-current={standing === "now" ? "step" : undefined}>
            <span className="making-number" aria-hidden>
              {i + 1}
            </span>
            <span>{finishingWords.stages[name]}</span>
            {standing === "done" ? <span className="unseen">{stopWords.isDone}</span> : null}
          </li>
        );
      })}
    </ol>
  );
}
