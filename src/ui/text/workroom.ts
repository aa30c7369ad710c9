import type { LengthUnit } from "../../core/lengthText";

/** Words of the frame round the places of work: their names, the switches, and what is said at the door. */
export const placeNames = {
  door: "Padwright",
  body: "The body",
  form: "The form",
  plan: "The plan",
  padding: "Padding",
  finishing: "Finishing",
  print: "On paper",
  wall: "On the wall",
  turning: "Turning figure",
  fittings: "Your fittings",
} as const;

export const workroomWords = {
  places: "Places of work",
  skip: "Skip to the work",
  unit: "Lengths in",
  undo: "Undo",
  redo: "Redo",
  undone: "Undone.",
  redone: "Done again.",
  print: "Print",
} as const;

export const unitNames: { readonly [unit in LengthUnit]: string } = {
  in: "inches",
  cm: "centimetres",
  mm: "millimetres",
};
export const unitMarks: { readonly [unit in LengthUnit]: string } = { in: "in", cm: "cm", mm: "mm" };

/** What stands under the name of a place: how far the work there has come. */
export const placeStates = {
  girthsMissing: (known: number, all: number): string => `${known} of ${all} girths`,
  readings: (count: number): string => (count === 1 ? "1 reading" : `${count} readings`),
  formUnknown: "not described yet",
  formMeasured: "measured",
  formSize: (size: string): string => `size ${size}`,
  formSupposed: (size: string): string => `size ${size}, supposed`,
  planWaiting: "waiting",
  planPieces: (count: number): string => (count === 0 ? "nothing to add" : count === 1 ? "1 piece" : `${count} pieces`),
  pinned: (done: number, all: number): string => `${done} of ${all} pinned`,
  allPinned: (read: number, levels: number): string =>
    read === levels ? "all pinned, every level read" : `all pinned, ${read} of ${levels} levels read`,
} as const;

export const doorWords = {
  title: "Make a dress form stand in for one body",
  lead: "Tape readings of the body and of the form go in. Out comes every piece of batting to cut, where it is pinned, and what the tape should read after each one.",
  ownStart: "Start with three girths",
  ownStartNote: "Bust, waist and full hip are enough for a first plan: about five minutes with a tape.",
  continueWith: (title: string): string => (title === "" ? "Go on with your fitting" : `Go on with ${title}`),
  demo: "Look at a made-up person’s plan",
  demoNote: "One tap. Nobody was measured for it.",
  demoReplaces: "Your own fitting goes back on the shelf first, as it is.",
  privacyTitle: "Nothing leaves this device",
  privacy:
    "The readings stay in this browser. There is no account, nothing is sent anywhere, and the tool works with the network switched off.",
  needTitle: "What you need",
  needs: [
    "A dress form smaller than the body. Padding adds; nothing takes away.",
    "A tape measure, and if you can a second pair of hands.",
    "Batting, pins counted into a dish, a bra in the person’s own size, a dust mask.",
  ],
} as const;
