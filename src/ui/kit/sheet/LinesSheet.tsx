import { useMemo } from "react";
import { linesAtForm } from "../../../app/progress/linesAtForm";
import { askedParts } from "../../../core/form/linePart";
import type { Plan } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { MarkPicture } from "../../drawing/torso/MarkPicture";
import { formTorso } from "../../drawing/torso/torsoShape";
import { readLineScene } from "../../drawing/torso/readLineScene";
import { formMatterText } from "../../../text/formMatters";
import { linesSheetWords, linesWords, markSpacing } from "../../../text/linesAtForm";
import { printingWords } from "../../../text/printing";
import { onTarget } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { lineWords } from "../../../text/pictures";
import { useFitting, useLengths } from "../useStore";
import { type LinesProps, LinesTable } from "./LinesTable";
import { SheetPage, usePrintedName } from "./SheetPage";

/**
 * The sheet of the person's lines: how they are marked on the bare form, how far each lies below the nape, what the tape reads
 * on the person there, and room for what it reads of the bare form.
 */
export function LinesSheet({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { lines } = useMemo(() => linesAtForm(plan, fitting), [plan, fitting]);
  const title = linesSheetWords.title(usePrintedName());
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      <SheetPage title={title} isFirst isLast>
        <LinesHead plan={plan} />
        <LinesHow plan={plan} lines={lines} />
        <LinesTable plan={plan} lines={lines} />
        <LineWays plan={plan} />
        {plan.basis === "draft" ? null : <p>{linesSheetWords.after}</p>}
      </SheetPage>
    </section>
  );
}

function LinesHead({ plan }: { readonly plan: Plan }) {
  const { step, write } = useLengths();
  const { draftNote, linesFirst, withoutPower } = printingWords;
  // One more layer all around is what the tuning layers of both halves add.
  const layer = plan.pieces[0]?.layers[0]?.thickness ?? 0;
  return (
    <>
      {plan.basis === "draft" ? (
        <>
          <p>
            <strong>{linesFirst(draftNote(write(plan.mayMiss)))}</strong>
          </p>
          {layer === 0 ? null : <p>{withoutPower(write(onTarget), write(mm(2 * Math.PI * layer)))}</p>}
        </>
      ) : (
        <p>{linesSheetWords.isFirm}</p>
      )}
      {plan.matters.map((matter) => (
        <p key={`${matter.level}${matter.what}`}>
          <strong>{formMatterText(matter, step)}</strong>
        </p>
      ))}
    </>
  );
}

/** The form made ready, and how two hands mark a line, beside the picture with every line. */
function LinesHow({ plan, lines }: LinesProps) {
  const { unit, step, write } = useLengths();
  const { prepare, mark } = linesWords;
  const marking = [
    { title: mark.pointer.title, text: linesSheetWords.pointer },
    { title: mark.turn.title, text: mark.turn.text(write(markSpacing[unit])) },
    { title: mark.tape.title, text: `${mark.tape.text} ${mark.shell}` },
  ];
  const level = lines.find(({ isMarked }) => !isMarked)?.level ?? "waist";
  return (
    <div className="lines-how">
      <div className="lines-picture">
        <MarkPicture plan={plan} lines={lines} level={level} step={step} textSize={paperText} />
      </div>
      <ol className="lines-steps">
        {[...prepare.steps, ...marking].map(({ title, text }) => (
          <li key={title}>
            <strong>{title}.</strong> {text}
          </li>
        ))}
      </ol>
    </div>
  );
}

/** Letters of the picture on paper (mm of the drawing): ten points where it is half a page wide. */
const paperText = 43;

/** The three readings of a line, each with its picture: on the waistline, as on every other. */
function LineWays({ plan }: { readonly plan: Plan }) {
  const shape = useMemo(() => formTorso(plan.levels), [plan]);
  const { read } = linesWords;
  return (
    <div className="lines-ways">
      {askedParts.map((part) => (
        <figure key={part}>
          <Drawing
            scene={readLineScene({
              shape,
              level: "waist",
              part,
              title: read.title(part, lineWords.waist),
              description: read.how(part),
            })}
          />
          <figcaption>
            <strong>{linesSheetWords.ways[part]}</strong> {read.how(part)}
          </figcaption>
        </figure>
      ))}
    </div>
  );
}
