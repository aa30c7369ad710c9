import type { Improvement } from "../../core/body/measurementFacts";

/** Words of the measuring chart and of the bench beside it, for the body and for the form. */
export const measuringWords = {
  bodyTitle: "The body",
  bodyLead: "Three girths make a plan. Every further reading turns a guess into a fact.",
  formTitle: "What the form itself measures",
  formLead: "A tape round the form beats any table. What you type here always wins.",
  measured: "measured",
  guessed: "guessed",
  fromTable: "from the table",
  draft: "not read yet",
  about: (length: string): string => `about ${length}`,
  spread: (length: string): string => `give or take ${length}`,
  empty: "not measured",
  look: "Look again",
  alone: "Alone, with a mirror",
  where: "Where the place is",
  mistake: "What goes wrong:",
  buys: "What it buys",
  next: (label: string): string => `Next: ${label}`,
  last: "Keep it",
  clear: "Take the reading away",
  enough: "Three girths are in: that is enough for a plan.",
  girthsIn: "Three girths are in. The form is what is missing now.",
  theyAre: (unit: "cm" | "in", count: number): string => {
    const name = unit === "cm" ? "centimetres" : "inches";
    return count === 1 ? `It is in ${name}` : `They are ${name}`;
  },
  reread: {
    cm: "Read as centimetres. Undo takes it back.",
    in: "Read as inches. Undo takes it back.",
  },
  toForm: "Go on to the form",
  toPlan: "See the plan",
  more: "More readings, by what they buy",
  countIn: (known: number, all: number): string => `${known} of ${all}`,
  name: "Whose fitting this is",
  nameNote: "Only for you; leave it empty if you like.",
  guessNow: (length: string, spread: string): string => `Guessed for now: about ${length}, give or take ${spread}.`,
  tableNow: (length: string): string => `The table says ${length}.`,
} as const;

/** Measurements are asked for in groups, by what they buy; the order is the order of asking. */
export const improvementGroups: {
  readonly [improvement in Improvement]: { readonly title: string; readonly buys: string };
} = {
  wholePlan: { title: "Three girths", buys: "A first plan." },
  frontAndBack: {
    title: "Front and back",
    buys: "Puts the padding where this body carries it. No other reading can tell.",
  },
  levelHeights: { title: "Heights", buys: "Puts the waist and the hips where this body has them." },
  betweenLevels: { title: "Two girths more", buys: "Shapes the ribs and the belly." },
  apexPlace: { title: "The bust", buys: "Puts the fullest point at the right height and width." },
  leftAndRight: { title: "Left and right", buys: "Pads each side for itself." },
  sectionShape: { title: "Breadths", buys: "Tells broad from deep where the girth is the same." },
  waistTilt: { title: "The tilt of the waist", buys: "Lets the waist tape run lower in front or behind." },
  shoulderMatch: { title: "Shoulders", buys: "Tells whether the form’s shoulders can serve." },
  backMatch: { title: "The back", buys: "Tells whether the form’s back can serve." },
  neckMatch: { title: "The neck", buys: "Tells whether the form’s neck can serve." },
  arm: { title: "The arm", buys: "Only for a padded arm." },
  cover: { title: "For the cover", buys: "Only for the fitted cover." },
};
