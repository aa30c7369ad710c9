import { useMemo } from "react";
import type { LineAtForm } from "../../../app/progress/linesAtForm";
import { tapeStep } from "../../../core/lengthText";
import { MarkPicture } from "../../drawing/torso/MarkPicture";
import { formMatterText } from "../../../text/formMatters";
import { linesSheetWords, linesWords, markSpacing } from "../../../text/linesAtForm";
import { shownLength } from "../../../text/shownLength";
import { phoneQuery, useMediaQuery } from "../../kit/useScreen";
import { capital, classWords } from "../../../text/classView";
import type { ClassView } from "../../../app/classView/classView";

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
    title: capital(read.part(part)),
    text: read.how(part),
  }));
  const steps = doing === "prepare-form" ? prepare.steps : doing === "read-lines" ? reading : marking;
  const matters = isCovered ? [] : plan.matters.filter(({ what }) => what === "belowForm");
  return (
    <>
      <section className="class-lines" aria-label={classWords.linesPicture}>
        <MarkPicture
          plan={plan}
          lines={lines}
          level={level.name}
          step={step}
          isCovered={isCovered}
          textSize={backRow}
          isNarrow={isPhone}
        />
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

/** Letters of the picture (mm of the drawing), readable from the back row where it fills two thirds of the screen. */
const backRow = 42;
