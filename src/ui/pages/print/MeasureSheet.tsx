import { memo } from "react";
import { sheetGroups } from "../../../app/progress/measureGroups";
import { measurementFacts } from "../../../core/body/measurementFacts";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { shortCautions } from "../../../text/cautions";
import { measurementTexts } from "../../../text/measurements";
import { improvementGroups } from "../../../text/measuring";
import { measuringSheetWords, printingWords } from "../../../text/printing";
import { measureSides } from "../../drawing/measuring/measureScene";
import { MeasureFigure } from "../../kit/measure/MeasureGuide";
import { SheetPage } from "../../kit/sheet/SheetPage";
import { type CardPage, cardPages } from "../../kit/sheet/sheetPages";

/** The blank measuring sheet: every reading with its drawing, how it is taken, and room to write it for body and form. */
export const MeasureSheet = memo(function MeasureSheet() {
  const { title } = measuringSheetWords;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets" tabIndex={0} aria-label={title}>
      {measurePages.map(({ parts, isLast }, i) => (
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

/** One reading on the measuring sheet: those that decide most have the large drawing with its words. */
interface MeasureCardFacts {
  readonly name: MeasurementName;
  readonly size: "large" | "small";
}

/** Points: 67 and 41.5 mm, with the gap below; a small card with many words is higher. */
const largeCard = 196;
const smallCard = 122;

function smallHeight(name: MeasurementName): number {
  const { what, onBody, landmark } = measurementTexts[name];
  return Math.max(
    smallCard,
    cardEdges + lineHeight * Math.ceil((what.length + onBody.length + landmark.length) / lettersAcross),
  );
}

/** Name, room to write, edges and the gap below. */
const cardEdges = 50;
const lineHeight = 9.8;
const lettersAcross = 46;

const sizeOf = (name: MeasurementName): MeasureCardFacts["size"] =>
  measurementFacts[name].need === "required" || measurementFacts[name].reading === "FrontArc" ? "large" : "small";

/** The pages of the blank measuring sheet: the needed girths first, then what brings most, then the rest by what they buy. */
export const measurePages: readonly CardPage<MeasureCardFacts>[] = cardPages(
  sheetGroups.map(({ improves, names }) => {
    const { title, buys } = improvementGroups[improves];
    return {
      heading: `${title}. ${buys}`,
      cards: names.map((name): MeasureCardFacts => ({ name, size: sizeOf(name) })),
    };
  }),
  {
    heightOf: ({ name, size }) => (size === "large" ? largeCard : smallHeight(name)),
    first: 640,
    later: 680,
    heading: 22,
  },
);
