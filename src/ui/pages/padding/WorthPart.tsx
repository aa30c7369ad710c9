import { memo, useMemo } from "react";
import type { WorthHistory } from "../../../app/progress/worthHistory";
import type { BelievedWorth } from "../../../core/calibration/believed";
import { formatLength, type LengthUnit } from "../../../core/lengthText";
import type { BattingRole } from "../../../core/material";
import { stackedWorth } from "../../../core/plan/replanFitting";
import { mm } from "../../../core/units";
import { layerSentence, learningWords, trialName } from "../../../text/learning";
import { levelWords } from "../../../text/pictures";
import { thinText } from "../../../text/thinText";
import { Drawing } from "../../drawing/Drawing";
import { type LengthWriter, lengthWriter } from "../../../text/lengthWriter";
import { type WorthPicture, type WorthReading, worthScene } from "../../drawing/worthScene";
import { useDerived } from "../../kit/useDerived";
import { useUnit } from "../../kit/useStore";
import { useAnswer } from "../../kit/useAnswer";

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

/** What one layer is believed to be worth, drawn against the readings. */
export const WorthPlot = memo(function WorthPlot({ before, now, readings, lengths }: WorthPicture) {
  const scene = useMemo(() => worthScene({ before, now, readings, lengths }), [before, now, readings, lengths]);
  return <Drawing scene={scene} />;
});

/** How much a layer adds, how sure that is, and the starting figure, in words. */
interface WorthTextProps {
  readonly worth: BelievedWorth;
  readonly role: BattingRole;
  /** Whether a tape was read over it, or the packet alone says so. */
  readonly standing: "read" | "guessed";
}

function WorthText({ worth, role, standing }: WorthTextProps) {
  const unit = useUnit();
  const { lengths } = useDerived();
  const started = role === "finishing" ? lengths?.finishingBatting : lengths?.batting;
  return (
    <>
      <p className="learning-worth">{layerSentence(worth, unit, standing)}</p>
      <p>
        {learningWords.inStack(thinText(mm(stackedWorth(worth)), unit))}{" "}
        {started ? learningWords.started(thinText(started.layerThickness, unit)) : null}
      </p>
    </>
  );
}

/** How the plot of a layer's worth writes: sixteenths beside inches, tenths of a millimetre otherwise. */
const thinWriter = (unit: LengthUnit): LengthWriter => (unit === "in" ? lengthWriter("in") : inTenths);

const tenths = (style: "withUnit" | "bare") => (length: number) => formatLength(mm(length), "0.1 mm", style);
const inTenths: LengthWriter = {
  unit: "mm",
  write: tenths("withUnit"),
  writeFine: tenths("withUnit"),
  writeBare: tenths("bare"),
};
