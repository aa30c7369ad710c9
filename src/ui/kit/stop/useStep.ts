import { useMemo } from "react";
import { type CurrentStep, piecesNamed } from "../../../app/steps/currentStep";
import { pinnedPieces } from "../../../app/steps/route";
import { workEntry } from "../../../app/steps/workEntry";
import type { Piece } from "../../../core/padding/piece";
import type { SettledFitting } from "../../../document/fitting";
import { planWords } from "../../../text/plan";
import { type StepSaying, type StepWords, stepWords } from "../../../text/steps";
import { useDoAndSay } from "../shelf/useDone";
import { useFitting, useLengths } from "../useStore";

/** The one next step with all that a stop needs to show it. */
export interface StepAtHand extends CurrentStep {
  readonly fitting: SettledFitting;
  readonly saying: StepSaying;
  readonly words: StepWords;
  readonly pinned: readonly Piece[];
  /** What comes next is being worked out: the step is the last one still. */
  readonly isWorking: boolean;
  /** Notes the step as done, with what was read or counted; nothing while another step is being worked out. */
  readonly record: (said: string, taken?: object) => boolean;
  /** Passes over what the tape could still tell of the pieces as they are: nothing is tuned by it. */
  readonly passOver: (said: string) => void;
}

export function useStepAtHand(current: CurrentStep, isWorking: boolean): StepAtHand {
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  const doAndSay = useDoAndSay();
  return useMemo(() => {
    const { step, plan, facts } = current;
    const saying = { lengths, levels: plan.levels, pieces: piecesNamed(current, fitting), facts };
    const from = { plan, fitting, words: planWords(lengths) };
    return {
      ...current,
      fitting,
      saying,
      words: stepWords(step, saying),
      pinned: [...pinnedPieces(fitting.work).values()],
      isWorking,
      record: (said, taken) => {
        const entry = isWorking ? null : workEntry(step, from, new Date().toISOString(), taken);
        return entry !== null && doAndSay({ does: "record", entry }, said);
      },
      passOver: (said) => {
        const entry = { did: "measured", readings: {}, at: new Date().toISOString() } as const;
        if (!isWorking) doAndSay({ does: "record", entry }, said);
      },
    };
  }, [current, fitting, lengths, isWorking, doAndSay]);
}
