import { useRef, useState } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import { learningWords, trialWords } from "../text/learning";
import { useDerived } from "../useDerived";
import { useFitting } from "../useStore";
import "./learning.css";
import { ImpossibleRows, standingImpossible } from "./ImpossibleRows";
import { NewsRow } from "./NewsRow";
import { NextMadeOf } from "./NextMadeOf";
import { isStanding, SurpriseRows } from "./SurpriseRows";
import { TrialBench } from "./TrialBench";
import { useAnswer } from "./useAnswer";
import { useNewsSaid } from "./useNewsSaid";

/**
 * What the tape says about the next action, in a strip above it: try a layer first, plan the rest anew, where to read
 * next. One thing at a time: what must come off takes the place of the next action, and nothing is planned around it before.
 * Nothing at all before there is something to say.
 */
export interface LearningStripProps {
  readonly progress: PadProgress;
  /** What is over and comes first. */
  readonly correction: Correction | null;
}

export function LearningStrip({ progress, correction }: LearningStripProps) {
  const fitting = useFitting();
  const { work } = fitting;
  const { impossible } = useDerived();
  const strip = useRef<HTMLElement>(null);
  const { answer, isWorking } = useAnswer("learning");
  const isComingOff = correction !== null && correction.how.kind !== "pullThin";
  useNewsSaid(answer, { isWorking, isComingOff });
  const isBare = progress.pinnedCount === 0;
  const isFirst = !work.some((entry) => entry.did === "trial" || entry.did === "measured");
  if (!isBare && isFirst) return null;

  const isDoubtful = answer !== null && isStanding(answer.replan.belief.surprises, fitting);
  const isToTell =
    (answer?.replan.belief.surprises.length ?? 0) > 0 || standingImpossible(impossible, fitting).length > 0;
  if (isComingOff && !isToTell) return null;
  const focus = () => strip.current?.focus();
  return (
    <section
      className="learning-strip"
      aria-label={learningWords.newsTitle}
      ref={strip}
      tabIndex={-1}
      aria-busy={isWorking}
    >
      {isBare ? <TrialOffer /> : null}
      {answer === null && !isFirst && isWorking ? <p className="quiet">{learningWords.working}</p> : null}
      <ImpossibleRows />
      {answer === null ? null : <SurpriseRows surprises={answer.replan.belief.surprises} />}
      {answer === null || isComingOff || isDoubtful ? null : (
        <NewsRow learned={answer} progress={progress} onDone={focus} />
      )}
      {isComingOff ? null : <NextMadeOf progress={progress} />}
    </section>
  );
}

/** The way to the trial, as long as nothing is pinned: on a padded form one layer tells less. */
function TrialOffer() {
  const { work } = useFitting();
  const [isOpen, setOpen] = useState(false);
  const wasTried = work.some((entry) => entry.did === "trial");
  return (
    <div className="learning-trial">
      <div className="learning-row">
        {wasTried ? <p>{isOpen ? "" : trialWords.off}</p> : <p className="trial-offer">{trialWords.offer}</p>}
        {wasTried ? null : <p className="trial-offer-short">{trialWords.offerShort}</p>}
        <button type="button" className="patch" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? trialWords.close : wasTried ? trialWords.again : trialWords.open}
        </button>
      </div>
      {isOpen ? <TrialBench /> : null}
    </div>
  );
}
