import type { LengthUnit } from "../core/lengthText";

/** Words of the frame around the pages: their names, the switches, and what stands on the first one. */
/** The name of the tool. */
export const toolName = "Padwright";

export const pageNames = {
  home: "Home",
  body: "The person",
  form: "The form",
  plan: "The plan",
  padding: "Padding",
  finishing: "Finishing",
  print: "Print",
  class: "Class view",
  remote: "Remote",
  view3d: "3-D view",
  fittings: "Fittings",
} as const;

export const workroomWords = {
  places: "Pages",
  skip: "Skip to the work",
  unit: "Lengths in",
  undo: "Undo",
  redo: "Redo",
  undone: "Undone.",
  redone: "Redone.",
  print: "Print",
} as const;

export const unitNames: { readonly [unit in LengthUnit]: string } = {
  in: "inches",
  cm: "centimeters",
  mm: "millimeters",
};
export const unitMarks: { readonly [unit in LengthUnit]: string } = { in: "in", cm: "cm", mm: "mm" };

/** What stands under the name of a place: how far the work there has come. */
export const pageStates = {
  girthsMissing: (known: number, all: number): string => `${known} of the first ${all}`,
  readings: (count: number): string => `${count} measured`,
  formUnknown: "not described yet",
  formMeasured: "measured",
  formSize: (size: string): string => `size ${size}`,
  formSupposed: (size: string): string => `size ${size}, estimated`,
  planWaiting: "waiting",
  planPieces: (count: number, isDraft: boolean): string => {
    const pieces = count === 0 ? "nothing to add" : count === 1 ? "1 piece" : `${count} pieces`;
    return isDraft ? `${pieces}, draft` : pieces;
  },
  pinned: (done: number, all: number): string => `${done} of ${all} pinned`,
  allPinned: (read: number, levels: number): string =>
    read === levels ? "all pinned, every line measured" : `all pinned, ${read} of ${levels} lines measured`,
} as const;

/** What a sample person is called; only the name of one ends like this. */
export const sampleTitle = (title: string): string => title;

export const homeWords = {
  title: "Make a dress form stand in for one body",
  lead: "Measure the person and the form. You get every piece of batting to cut, where it is pinned, and what the tape should read after each one.",
  ownStart: "Start with bust, waist and hip",
  ownStartNote: "Bust, waist and full hip are enough for a first plan: about five minutes with a tape.",
  continueWith: (title: string): string => (title === "" ? "Continue your fitting" : `Continue ${title}`),
  demo: "See a sample person’s plan",
  demoNote: "One tap. The person is invented.",
  demoReplaces: "Your own fitting is saved first, as it is.",
  privacyTitle: "Nothing leaves this device",
  privacy:
    "The measurements stay in this browser. There is no account, nothing is sent anywhere, and the tool works with the network switched off. A browser can lose what it keeps: save your fitting to a file now and then.",
  needTitle: "What you need",
  needs: [
    "A dress form smaller than the person. Padding only adds.",
    "A tape measure and, if you can, a helper.",
    "Batting, pins counted into a dish, a bra in the person’s own size, a dust mask.",
  ],
} as const;
