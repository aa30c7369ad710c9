import { useRef } from "react";
import type { PadProgress } from "../../app/padProgress";
import type { Correction } from "../../core/plan/corrections";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { paddingWords } from "../text/padding";
import { AllPinned } from "./AllPinned";
import { OverAction } from "./OverAction";
import { PieceAction } from "./PieceAction";

/**
 * The next action in words, and the one big patch to press. What reads over the body comes first; a piece that was picked
 * out of the row to look at comes before even that.
 */
export interface NextActionProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly current: PlannedPiece | null;
  readonly correction: Correction | null;
  readonly isLooking: boolean;
  readonly isReadingDue: boolean;
  readonly onLook: (order: number | null) => void;
}

export function NextAction({ plan, progress, current, correction, isLooking, isReadingDue, onLook }: NextActionProps) {
  const section = useRef<HTMLElement>(null);
  const { next } = progress;
  return (
    <section className="next" ref={section} tabIndex={-1} aria-label={paddingWords.next}>
      {correction !== null ? (
        <OverAction
          plan={plan}
          progress={progress}
          correction={correction}
          onNoted={() => section.current?.focus()}
          onLeave={next === null ? null : () => onLook(next.order)}
        />
      ) : current === null ? (
        <AllPinned plan={plan} progress={progress} />
      ) : (
        <PieceAction
          plan={plan}
          progress={progress}
          piece={current}
          isLooking={isLooking}
          isReadingDue={isReadingDue}
          onLook={onLook}
        />
      )}
    </section>
  );
}
