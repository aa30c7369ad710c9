import { type ReactNode, useMemo } from "react";
import type { LineAtForm } from "../../../app/linesAtForm";
import type { LevelName } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { type Millimetres, mm } from "../../../core/units";
import { Drawing } from "../../drawing/Drawing";
import { formTorso } from "../../drawing/torso/planTorso";
import { levelLineNames, linesWords } from "../../text/linesAtForm";
import { levelWords } from "../../text/pictures";
import { useDerived } from "../../useDerived";
import { useDispatch, useLengths } from "../../useStore";
import { markScene } from "./markScene";
import { HandSteps, StopFrame } from "./StopFrame";

/** One of the person's level lines to be marked on the form: where it lies, and how two hands find it. */
export interface LineStopProps {
  readonly plan: Plan;
  readonly lines: readonly LineAtForm[];
  readonly level: LevelName;
  readonly later: ReactNode;
}

export function MarkStop({ plan, lines, level, later }: LineStopProps) {
  const dispatch = useDispatch();
  const { write } = useLengths();
  const { mark, region, trail } = linesWords;
  const depth = lines.find((item) => item.level === level)?.depth ?? mm(0);
  const isEstimated = plan.levels.some(({ name, drop }) => name === level && drop.kind === "estimated");
  const line = levelLineNames[level];
  const { lengths } = useDerived();
  const napeHeight = lengths?.form.measured.napeHeight ?? null;
  return (
    <StopFrame
      region={region}
      trail={trail}
      act="mark"
      kind="working"
      title={mark.title(line)}
      sentence={`${mark.below(write(depth))}${isEstimated ? ` ${mark.estimated}` : ""}`}
      picture={<MarkPicture plan={plan} lines={lines} level={level} />}
      ways={later}
      slab={{
        words: mark.done(line),
        press: () => dispatch({ does: "markLine", level, depth, at: new Date().toISOString() }),
        isReady: true,
      }}
    >
      <MarkSteps depth={depth} napeHeight={napeHeight} />
    </StopFrame>
  );
}

interface MarkStepsProps {
  readonly depth: Millimetres;
  /** The form's nape above the floor, where it was measured. */
  readonly napeHeight: Millimetres | null;
}

function MarkSteps({ depth, napeHeight }: MarkStepsProps) {
  const { unit, write } = useLengths();
  const { mark } = linesWords;
  const below = write(depth);
  const pointer =
    napeHeight === null
      ? mark.pointer.unknown(below)
      : mark.pointer.known(write(napeHeight), below, write(mm(napeHeight - depth)));
  return (
    <>
      <HandSteps
        steps={[
          { title: mark.pointer.title, text: pointer },
          { title: mark.turn.title, text: mark.turn.text(write(markSpacing[unit])) },
          { title: mark.tape.title, text: mark.tape.text },
        ]}
      />
      <p className="quiet small">{mark.shell}</p>
    </>
  );
}

/** Marks this far apart make a line that a tape follows. Common practice, no source. */
const markSpacing = { in: mm(76.2), cm: mm(80), mm: mm(80) } as const;

function MarkPicture({ plan, lines, level }: Pick<LineStopProps, "plan" | "lines" | "level">) {
  const { write } = useLengths();
  const shape = useMemo(() => formTorso(plan.levels), [plan]);
  const { mark } = linesWords;
  const line = levelLineNames[level];
  const scene = useMemo(() => {
    const distances = Object.fromEntries(lines.map((item) => [item.level, write(item.depth)])) as {
      readonly [name in LevelName]: string;
    };
    return markScene({
      shape,
      now: level,
      marked: lines.filter(({ isMarked }) => isMarked).map((item) => item.level),
      distances,
      words: {
        title: mark.picture(line),
        description: mark.pictureText(line, distances[level]),
        front: mark.front,
        leftSide: mark.leftSide,
        nape: mark.nape,
        levels: levelWords,
      },
    });
  }, [shape, lines, level, line, write]);
  return <Drawing scene={scene} />;
}
