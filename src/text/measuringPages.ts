import { type CardPage, cardPages } from "../app/print/cardPages";
import { sheetGroups } from "../app/progress/measureGroups";
import { measurementFacts } from "../core/body/measurementFacts";
import type { MeasurementName } from "../core/body/vocabulary";
import { measurementTexts } from "./measurements";
import { improvementGroups } from "./measuring";

/** One reading on the measuring sheet: those that decide most have the large drawing with its words. */
export interface MeasureCardFacts {
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
const cardEdges = 60;
const lineHeight = 11.5;
const lettersAcross = 41;

const sizeOf = (name: MeasurementName): MeasureCardFacts["size"] =>
  measurementFacts[name].need === "required" || measurementFacts[name].reading === "FrontArc" ? "large" : "small";

/** The pages of the blank measuring sheet: the needed girths first, then what brings most, then the rest by what they buy. */
export const measuringPages: readonly CardPage<MeasureCardFacts>[] = cardPages(
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
