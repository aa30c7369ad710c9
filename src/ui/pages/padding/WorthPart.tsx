import { useMemo } from "react";
import type { WorthHistory } from "../../../app/progress/worthHistory";
import type { BelievedWorth } from "../../../core/calibration/believed";
import type { BattingRole } from "../../../core/material";
import { WorthPlot } from "../../drawing/WorthPlot";
import type { WorthReading } from "../../drawing/worthScene";
import { learningWords, trialName } from "../../../text/learning";
import { levelWords } from "../../../text/pictures";
import { useUnit } from "../../kit/useStore";
import { thinWriter } from "./thinLengths";
import { useAnswer } from "../../kit/useAnswer";
import { WorthText } from "./WorthText";

/** The worth of a layer of one batting: in words, and drawn reading by reading. */
export function WorthPart({ role, isNamed }: { readonly role: BattingRole; readonly isNamed: boolean }) {
  const { answer: learned, isWorking } = useAnswer("learning");
  const { answer: history } = useAnswer("worth");
  const now = learned?.replan.belief[role] ?? history?.before[role];
  return (
    <div className="worth" aria-busy={isWorking}>
      <div className="worth-words">
        <h3>
          {learned === null ? learningWords.mayBe : learningWords.is}
          {isNamed ? `: ${learningWords[role]}` : null}
        </h3>
        {now === undefined ? (
          <p className="quiet">{learningWords.working}</p>
        ) : (
          <WorthText worth={now} role={role} standing={learned === null ? "guessed" : "read"} />
        )}
        <p className="quiet">
          {learned === null ? learningWords.nothingRead : learningWords.readings(learned.readingCount)}
        </p>
      </div>
      {history && history.after.length > 0 ? <History history={history} role={role} /> : null}
    </div>
  );
}

function History({ history, role }: { readonly history: WorthHistory; readonly role: BattingRole }) {
  const unit = useUnit();
  const picture = useMemo(() => {
    const readings = history.after.map(
      ({ what, worths }): WorthReading => ({
        name: what === "trial" ? trialName : levelWords[what],
        ...span(worths[role]),
      }),
    );
    const last = history.after[history.after.length - 1]?.worths ?? history.before;
    return { before: span(history.before[role]), now: span(last[role]), readings };
  }, [history, role]);
  return (
    <div className="worth-plot">
      <WorthPlot {...picture} lengths={thinWriter(unit)} />
    </div>
  );
}

const span = ({ layer, least, most }: BelievedWorth) => ({ middle: layer, low: least, high: most });
