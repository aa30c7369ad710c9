import { memo, useMemo } from "react";
import type { ThicknessHistory } from "../../../app/progress/thicknessHistory";
import type { PosteriorThickness } from "../../../core/calibration/calibration";
import type { LengthUnit } from "../../../core/lengthText";
import type { BattingRole } from "../../../core/material";
import { stackedThickness } from "../../../core/plan/replanFitting";
import { mm } from "../../../core/units";
import { layerSentence, learningWords, trialName } from "../../../text/learning";
import { levelWords } from "../../../text/pictures";
import { thinText } from "../../../text/thinText";
import { Drawing } from "../../drawing/Drawing";
import { type LengthWriter, lengthWriter } from "../../../text/lengthWriter";
import { type ThicknessPicture, type ThicknessReading, thicknessScene } from "../../drawing/thicknessScene";
import { useDerived } from "../../kit/useDerived";
import { useUnit } from "../../kit/useStore";
import { useAnswer } from "../../kit/useAnswer";
import { writtenLength } from "../../../text/writtenLength";

/** What a layer of one batting adds: in words, and drawn reading by reading. */
export function ThicknessPart({ role, isNamed }: { readonly role: BattingRole; readonly isNamed: boolean }) {
  const { answer: learned, isWorking } = useAnswer("learning");
  const { answer: history } = useAnswer("thicknessHistory");
  const now = learned?.replan.calibration[role] ?? history?.before[role];
  return (
    <div className="layer-thickness" aria-busy={isWorking}>
      <div className="layer-thickness-words">
        <h3>
          {learned === null ? learningWords.mayBe : learningWords.is}
          {isNamed ? `: ${learningWords[role]}` : null}
        </h3>
        {now === undefined ? (
          <p className="quiet">{learningWords.working}</p>
        ) : (
          <ThicknessText thickness={now} role={role} standing={learned === null ? "guessed" : "read"} />
        )}
        <p className="quiet">
          {learned === null ? learningWords.nothingRead : learningWords.readings(learned.readingCount)}
        </p>
      </div>
      {history && history.after.length > 0 ? <History history={history} role={role} /> : null}
    </div>
  );
}

function History({ history, role }: { readonly history: ThicknessHistory; readonly role: BattingRole }) {
  const unit = useUnit();
  const picture = useMemo(() => {
    const readings = history.after.map(
      ({ what, thicknesses }): ThicknessReading => ({
        name: what === "trial" ? trialName : levelWords[what],
        ...span(thicknesses[role]),
      }),
    );
    const last = history.after[history.after.length - 1]?.thicknesses ?? history.before;
    return { before: span(history.before[role]), now: span(last[role]), readings };
  }, [history, role]);
  return (
    <div className="layer-thickness-plot">
      <ThicknessPlot {...picture} lengths={thinWriter(unit)} />
    </div>
  );
}

const span = ({ layer, least, most }: PosteriorThickness) => ({ middle: layer, low: least, high: most });

/** What one layer is taken to add, drawn against the readings. */
export const ThicknessPlot = memo(function ThicknessPlot({ before, now, readings, lengths }: ThicknessPicture) {
  const scene = useMemo(() => thicknessScene({ before, now, readings, lengths }), [before, now, readings, lengths]);
  return <Drawing scene={scene} />;
});

/** How much a layer adds, how sure that is, and the starting figure, in words. */
interface ThicknessTextProps {
  readonly thickness: PosteriorThickness;
  readonly role: BattingRole;
  /** Whether a tape was read over it, or the packet alone says so. */
  readonly standing: "read" | "guessed";
}

function ThicknessText({ thickness, role, standing }: ThicknessTextProps) {
  const unit = useUnit();
  const { lengths } = useDerived();
  const started = role === "finishing" ? lengths?.finishingBatting : lengths?.batting;
  return (
    <>
      <p className="learning-thickness">{layerSentence(thickness, unit, standing)}</p>
      <p>
        {learningWords.inStack(thinText(mm(stackedThickness(thickness)), unit))}{" "}
        {started ? learningWords.started(thinText(started.layerThickness, unit)) : null}
      </p>
    </>
  );
}

/** How the plot of a layer's thickness writes: sixteenths beside inches, tenths of a millimetre otherwise. */
const thinWriter = (unit: LengthUnit): LengthWriter => (unit === "in" ? lengthWriter("in") : inTenths);

const tenths = (style: "withUnit" | "bare") => (length: number) => writtenLength(mm(length), "0.1 mm", style);
const inTenths: LengthWriter = {
  unit: "mm",
  write: tenths("withUnit"),
  writeFine: tenths("withUnit"),
  writeBare: tenths("bare"),
};
