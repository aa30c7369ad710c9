import { useState } from "react";
import { isConfirmed, type PadProgress, tapeParts } from "../../../app/progress/padProgress";
import type { Plan } from "../../../core/plan/plan";
import { paddingWords, tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { remaining, remainingWords, standingOf } from "../../../text/remaining";
import { stopWords } from "../../../text/stops";
import { LengthFigure } from "../../kit/LengthFigure";
import { DraftNote } from "../../kit/plan/PlanWaiting";
import { useLengths } from "../../kit/useStore";
import { useWakeLock } from "../../kit/useScreen";
import { FilledSheet } from "./FilledSheet";
import { LearningPart } from "./LearningPart";
import { filledSheetWords } from "../../../text/filledSheet";
import { LateFold } from "../../kit/LateFold";
import { HeadCells } from "../../kit/HeadCells";

/** Below the stop, and closed: every reading, what the tape has shown, a sheet filled in on paper, and the screen kept awake. */
export function StopFold({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  return (
    <div className="padding-more">
      <ScreenTools />
      <LateFold summary={stopWords.more}>
        <DraftNote plan={plan} />
        <ReadingsOverview plan={plan} progress={progress} />
        <LearningPart />
      </LateFold>
      <LateFold className="filled-sheet" summary={filledSheetWords.fold}>
        <FilledSheet plan={plan} />
      </LateFold>
    </div>
  );
}

/** Keeping the screen awake. */
function ScreenTools() {
  const [wanted, setWanted] = useState(true);
  const state = useWakeLock(wanted);
  return (
    <section className="stitched padding-tools">
      {state === "unknown" ? null : (
        <label className="tick">
          <input type="checkbox" checked={wanted} onChange={(event) => setWanted(event.target.checked)} />
          <span>
            {paddingWords.awake}
            <span className="quiet small wake-state">
              {state === "on" ? paddingWords.awakeOn : state === "refused" ? paddingWords.awakeRefused : ""}
            </span>
          </span>
        </label>
      )}
    </section>
  );
}

/** Every level at a glance: wanted, now, and what is left, all round and front and back. */
function ReadingsOverview({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { step } = useLengths();
  return (
    <section className="overview stitched">
      <h2>{paddingWords.overview}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the table sideways, with keys as well. */}
      <section className="overview-scroll" tabIndex={0} aria-label={paddingWords.overview}>
        <table className="figures-table overview-table">
          <thead>
            <tr>
              <td />
              <HeadCells words={tapeParts.map((part) => tapePartNames[part])} />
            </tr>
          </thead>
          <tbody>
            {plan.levels.map(({ name, body }) => (
              <tr key={name}>
                <th scope="row">{levelWords[name]}</th>
                {tapeParts.map((part) => {
                  const now = progress.now[name][part];
                  const left = remaining(body[part].value, now.value);
                  const words = remainingWords(
                    { part, wanted: body[part].value, now: now.value, standing: standingOf(now) },
                    step,
                  );
                  const unread = isConfirmed(now) ? "" : " reading-unread";
                  return (
                    <td key={part} className={`overview-cell reading-${left.kind}${unread}`}>
                      <span className="overview-figures">
                        <LengthFigure length={now.value} step={step} estimated={!isConfirmed(now)} unitShown={false} />
                        <span className="overview-of"> {paddingWords.of} </span>
                        <LengthFigure
                          length={body[part].value}
                          step={step}
                          estimated={body[part].kind === "estimated"}
                        />
                      </span>
                      <span className="overview-left">
                        <span className="reading-mark" aria-hidden />
                        {words}
                      </span>
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
