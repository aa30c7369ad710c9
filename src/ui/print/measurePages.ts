import { measurementFacts } from "../../core/body/measurementFacts";
import type { MeasurementName } from "../../core/body/vocabulary";
import { measureGroups } from "../measure/measureGroups";
import { improvementGroups } from "../text/measuring";
import { type CardPage, cardPages } from "./cardPages";

/** One reading on the measuring sheet: those that decide most have the large drawing with its words. */
export interface MeasureCardFacts {
  readonly name: MeasurementName;
  readonly size: "large" | "small";
}

/** Points: 64 and 40 mm, with the gap below. */
const largeCard = 188;
const smallCard = 120;

const sizeOf = (name: MeasurementName): MeasureCardFacts["size"] =>
  measurementFacts[name].need === "required" || measurementFacts[name].reading === "FrontArc" ? "large" : "small";

/** The pages of the blank measuring sheet: the needed girths first, then the arcs, then the rest by what they buy. */
export const measurePages: readonly CardPage<MeasureCardFacts>[] = cardPages(
  measureGroups
    .filter(({ names }) => names.length > 0)
    .map(({ improves, names }) => {
      const { title, buys } = improvementGroups[improves];
      return {
        heading: `${title}. ${buys}`,
        cards: names.map((name): MeasureCardFacts => ({ name, size: sizeOf(name) })),
      };
    }),
  { heightOf: ({ size }) => (size === "large" ? largeCard : smallCard), first: 625, later: 680, heading: 26 },
);
