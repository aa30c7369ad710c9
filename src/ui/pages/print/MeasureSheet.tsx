import { memo } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { shortCautions } from "../../../text/cautions";
import { measurementTexts } from "../../../text/measurements";
import { type MeasureCardFacts, measuringPages } from "../../../text/measuringPages";
import { measuringSheetWords, printingWords } from "../../../text/printing";
import { measureSides } from "../../drawing/measuring/measureScene";
import { MeasureFigure } from "../../kit/measure/MeasureGuide";
import { SheetPage } from "../../kit/sheet/SheetPage";

/** The blank measuring sheet: every reading with its drawing, how it is taken, and room to write it for body and form. */
export const MeasureSheet = memo(function MeasureSheet() {
  const { title } = measuringSheetWords;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      {measuringPages.map(({ parts, isLast }, i) => (
        <SheetPage key={parts[0]?.cards[0]?.name} title={title} isFirst={i === 0} isLast={isLast}>
          {i === 0 ? <MeasureHead /> : null}
          {parts.map(({ heading, cards, isContinued }) => (
            <section key={heading}>
              <h3 className="sheet-sub">
                {heading}
                {isContinued ? ` (${printingWords.continued})` : ""}
              </h3>
              <div className="sheet-cards">
                {cards.map((card) => (
                  <MeasureCard key={card.name} {...card} />
                ))}
              </div>
            </section>
          ))}
        </SheetPage>
      ))}
    </section>
  );
});

function MeasureHead() {
  const { blanks, how, form } = measuringSheetWords;
  return (
    <>
      <div className="sheet-blanks">
        {blanks.map((words) => (
          <Blank key={words} words={words} />
        ))}
      </div>
      <p>
        <strong>{shortCautions("measuringBody")}</strong> {how} {form}
      </p>
    </>
  );
}

function MeasureCard({ name, size }: MeasureCardFacts) {
  const { label, what, onBody, landmark } = measurementTexts[name];
  return (
    <section className={`sheet-card measure-card measure-card-${size}`}>
      <div>
        {size === "small" ? <Sides name={name} /> : null}
        <MeasureFigure name={name} whose="body" />
      </div>
      <div className="measure-card-words">
        <h4>{label}</h4>
        <p>
          {what} {onBody} {size === "small" ? landmark : null}
        </p>
        <Room name={name} />
      </div>
    </section>
  );
}

/** Above a small drawing, in letters that can be read. */
function Sides({ name }: { readonly name: MeasurementName }) {
  const [start, end] = measureSides(name);
  return (
    <p className="measure-card-sides" aria-hidden>
      <span>{start}</span>
      <span>{end}</span>
    </p>
  );
}

/** Where the readings are written. */
function Room({ name }: { readonly name: MeasurementName }) {
  const { body, onForm } = measuringSheetWords;
  return (
    <div className="measure-card-room" data-measurement={name}>
      <Blank words={body} />
      <Blank words={onForm} />
    </div>
  );
}

const Blank = ({ words }: { readonly words: string }) => (
  <p className="sheet-blank">
    <span>{words}</span>
  </p>
);
