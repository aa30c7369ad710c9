import { stepMinutes } from "../../../app/steps/stepMinutes";
import { stopWords } from "../../../text/stops";
import { StopFrame, type StopFrameProps } from "./StopFrame";
import type { StepAtHand } from "./useStep";

type Of = "region" | "title" | "sentence" | "minutes" | "speech";
type StepFrameProps<Act extends string> = Omit<StopFrameProps<Act>, Of> &
  Partial<Pick<StopFrameProps<Act>, Of>> & { readonly at: StepAtHand };

/** The stop of a step of the work: titled, spoken and timed as the step is, unless it says otherwise. */
export function StepFrame<Act extends string>({ at: { step, words }, ...props }: StepFrameProps<Act>) {
  return (
    <StopFrame
      region={stopWords.region}
      title={words[0]}
      sentence={words[1]}
      {...(step.do === "done" ? {} : { minutes: stepMinutes(step) })}
      speech={words.join(" ").trim()}
      {...props}
    />
  );
}
