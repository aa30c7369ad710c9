import type { Improvement } from "../core/body/measurementFacts";

/** Words of the measuring chart and of the bench beside it, for the body and for the form. */
export const measuringWords = {
  bodyTitle: "The person",
  bodyLead: "Bust, waist and full hip make a first plan. Every other measurement makes it closer.",
  formTitle: "What the form itself measures",
  formLead: "The form’s own measurements are better than any size chart. What you type here always wins.",
  measured: "measured",
  guessed: "estimated",
  fromTable: "from the size chart",
  draft: "not measured yet",
  about: (length: string): string => `about ${length}`,
  standardDeviation: (length: string): string => `give or take ${length}`,
  empty: "not measured",
  look: "Please check",
  alone: "Alone, with a mirror",
  where: "Where the place is",
  mistake: "What goes wrong:",
  buys: "What it improves",
  next: (label: string): string => `Next: ${label}`,
  last: "Save it",
  clear: "Clear the measurement",
  enough: "Bust, waist and full hip are in: that is enough for a plan, still a draft.",
  girthsIn: "Bust, waist and full hip are in. Next comes the form.",
  theyAre: (unit: "cm" | "in", count: number): string => {
    const name = unit === "cm" ? "centimeters" : "inches";
    return count === 1 ? `It is in ${name}` : `They are ${name}`;
  },
  reread: {
    cm: "Taken as centimeters. Undo brings it back.",
    in: "Taken as inches. Undo brings it back.",
  },
  toForm: "Go on to the form",
  toPlan: "See the plan",
  more: "More measurements, by what they improve",
  countIn: (known: number, all: number): string => `${known} of ${all}`,
  name: "Whose fitting this is",
  guessNow: (length: string, deviation: string): string =>
    `Estimated for now: about ${length}, give or take ${deviation}.`,
  tableNow: (length: string): string => `The size chart gives ${length}.`,
} as const;

/** Measurements are asked for in groups, by what they improve; the order is the order of asking. */
export const improvementGroups: {
  readonly [improvement in Improvement]: { readonly title: string; readonly buys: string };
} = {
  wholePlan: { title: "The first three", buys: "A first plan." },
  frontAndBack: { title: "Front and back", buys: "Places the front and the back padding; nothing else can." },
  linePlaces: {
    title: "Where the lines lie",
    buys: "Places every line on the form. A line 1/2 in off can be 1 in off around.",
  },
  levelHeights: { title: "Lengths over the body", buys: "Puts the waist and hip lines at the person’s heights." },
  betweenLevels: { title: "More all around", buys: "Shapes the padding under the bust and over the hip bones." },
  apexPlace: { title: "The bust", buys: "Puts the fullest point at the right height and width." },
  leftAndRight: { title: "Left and right", buys: "Pads each side for itself." },
  sectionShape: {
    title: "Widths straight across",
    buys: "Places the padding toward the sides, or the front and back.",
  },
  waistTilt: { title: "The tilt of the waist", buys: "Lets the waist tape run lower in front or in back." },
  upperChest: { title: "The upper chest", buys: "Builds what lies between the bust and the shoulders." },
  shoulderMatch: { title: "Shoulders", buys: "Builds each shoulder up, or shows that the form’s cannot serve." },
  backMatch: { title: "The back", buys: "Builds the upper back, or shows that the form’s cannot serve." },
  neckMatch: { title: "The neck", buys: "Builds the neck out, or shows that the form’s cannot serve." },
  arm: { title: "The arm", buys: "Only for a padded arm." },
  cover: { title: "For the cover", buys: "Only for the fitted cover." },
};
