import { upperFirst } from "../../../text/upperFirst";
import { useMemo } from "react";
import type { LineAtForm } from "../../../app/progress/linesAtForm";
import { tapeStep } from "../../../core/lengthText";
import { Drawing } from "../../drawing/Drawing";
import { MarkPicture } from "../../drawing/torso/MarkPicture";
import { formMatterText } from "../../../text/formMatters";
import { linesSheetWords, linesWords, markSpacing } from "../../../text/linesAtForm";
import { shownLength } from "../../../text/shownLength";
import { phoneQuery, useMediaQuery } from "../../kit/useScreen";
import { classWords } from "../../../text/classView";
import type { ClassView } from "../../../app/classView/classView";
import { formScene } from "./formScene";

/** The person's lines on the form, for the back row: the picture with every distance, and what two hands do, in order. */
export function ClassLines({ view: { plan, step: now, level, unit, isCovered } }: { readonly view: ClassView }) {
  const { mark, prepare, read } = linesWords;
  const doing = now.do;
  const isPhone = useMediaQuery(phoneQuery);
  const step = tapeStep[unit];
  const lines = useMemo(
    () =>
      plan.levels.map(
        ({ name, depthBelowNape }): LineAtForm => ({
          level: name,
          depth: depthBelowNape.value,
          isMarked: false,
          read: {},
        }),
      ),
    [plan],
  );
  const marking = [
    { title: mark.pointer.title, text: linesSheetWords.pointer },
    { title: mark.turn.title, text: mark.turn.text(shownLength(markSpacing[unit], step)) },
    { title: mark.tape.title, text: mark.tape.text },
  ];
  const reading = (["girth", "frontArc", "breadth"] as const).map((part) => ({
    title: upperFirst(read.part(part)),
    text: read.how(part),
  }));
  const steps = doing === "prepare-form" ? prepare.steps : doing === "read-lines" ? reading : marking;
  const matters = isCovered ? [] : plan.matters.filter(({ what }) => what === "belowForm");
  return (
    <>
      <section className="class-lines" aria-label={classWords.linesPicture}>
        {doing === "prepare-form" ? (
          <BareForm plan={plan} unit={unit} />
        ) : (
          <MarkPicture
            plan={plan}
            lines={lines}
            level={level.name}
            step={step}
            isCovered={isCovered}
            textSize={doing === "read-lines" ? backRowLower : backRow}
            isNarrow={isPhone}
          />
        )}
      </section>
      <ol className="class-lines-steps">
        {steps.map(({ title, text }) => (
          <li key={title}>
            <strong>{title}</strong> {text}
          </li>
        ))}
        {matters.map((matter) => (
          <li key={matter.level}>{formMatterText(matter, step)}</li>
        ))}
      </ol>
    </>
  );
}

/** Before anything is marked: the form as it was bought, from the front and from its left side. */
function BareForm({ plan, unit }: Pick<ClassView, "plan" | "unit">) {
  const scenes = useMemo(
    () =>
      (["front", "side"] as const).map((view) =>
        formScene({ plan, view, now: 0, unit, isPersonCovered: true, isNamed: false }),
      ),
    [plan, unit],
  );
  return (
    <div className="class-bare">
      {scenes.map((scene) => (
        <Drawing key={scene.title} scene={scene} />
      ))}
    </div>
  );
}

/** Letters of the picture (mm of the drawing), readable from the back row where it fills two thirds of the screen. */
const backRow = 42;
/** The same where the picture is lower, for the fields under it. */
const backRowLower = 48;
