import { isTrialNews } from "../../../app/steps/outlook";
import { isStructure } from "../../../core/padding/piece";
import { trialRead } from "../../../app/print/openTrial";
import { trialLengths } from "../../../app/supplies/trialStrip";
import type { Plan } from "../../../core/plan/plan";
import { mm } from "../../../core/units";
import { entryLength, type Entry } from "../../../document/fitting";
import { printingWords } from "../../../text/printing";
import { writtenLength } from "../../../text/writtenLength";
import { useDerived } from "../useDerived";
import { useFitting, useLengths } from "../useStore";
import { TrialTable } from "./TrialTable";
import { WriteCells } from "./WriteCells";

/** The trial on paper: room for its readings and the table that is gone by then; once it was noted, what was read. */
export function TrialRoom({ plan }: { readonly plan: Plan }) {
  const { work, unit } = useFitting();
  const { step, write } = useLengths();
  const { cells, strip, waiting } = printingWords.trial;
  const replan = useDerived().step()?.replan;
  const read = trialRead(work);
  const figure = (entry: Entry | undefined) => {
    const length = entry === undefined ? undefined : entryLength(entry, unit);
    return length?.ok === true ? length.value : undefined;
  };
  if (read !== undefined) {
    const [before, after] = [figure(read.before), figure(read.after)];
    const known = [before, after, before === undefined || after === undefined ? undefined : mm(after - before)];
    const figures = known.map((length) => (length === undefined ? undefined : writtenLength(length, step, "bare")));
    return (
      <>
        <WriteCells cells={cells.noted.map((word, i) => [word, figures[i]] as const)} />
        {replan !== undefined && isTrialNews({ structure: plan.pieces.filter(isStructure), replan }, { work }) ? (
          <p>
            <strong>{waiting}</strong>
          </p>
        ) : null}
      </>
    );
  }
  return (
    <>
      <p>{strip(write(mm(Math.max(...trialLengths(plan)))))}</p>
      <WriteCells cells={cells.open.map((word) => [word] as const)} />
      <TrialTable plan={plan} />
    </>
  );
}
