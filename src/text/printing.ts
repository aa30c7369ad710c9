import { shortCautions } from "./cautions";
import { type TapePartName, tapePartNames } from "./padding";
import { layerCount } from "./pieces";
import { listed } from "./planning";

/** Words on paper, and of the place where it is printed from. */
export const printingWords = {
  title: "Print",
  lead: "Every step of the work in its order, and the cut drawings beside it: everything needed with the power off. Letter or A4, black and white.",
  waiting: "There is no plan yet, so there is nothing to pad by. The blank measuring sheet can be printed now.",
  toReadings: "Go to measuring",
  print: "Print",
  which: "Which sheets",
  nameless: "Without the name: no page says whose it is",
  sheets: {
    lines: {
      name: "Level lines on the form",
      buys: "Where each of the person’s lines goes, and room for what the bare form measures there.",
    },
    padding: { name: "The padding sheet", buys: "Every step, the figure, places, measurements, room to write." },
    smallCutting: { name: "Small cut drawings", buys: "Every piece with its sizes, about eight to a page." },
    supplies: { name: "Supplies", buys: "What to buy, and how the pieces lie on the batting and the fabric." },
    session: {
      name: "Session plan",
      buys: "For a class: every step with its minutes, where to stop, boxes to tick, room for the days.",
    },
    measuring: {
      name: "A blank measuring sheet",
      buys: "A drawing and room for every measurement, the needed ones first.",
    },
    cutting: { name: "Cut drawings", buys: "Larger, with where each piece goes, and a test square." },
  },
  needsPlan: "needs a plan",
  noneChosen: "Choose a sheet to see it here as it prints.",
  sheetTitle: (name: string): string => (name === "" ? "Padding sheet" : `Padding sheet for ${name}`),
  batting: (batting: string): string => `Batting: ${batting}.`,
  finishing: (batting: string): string => `To finish: ${batting}.`,
  /** What the plan counts a layer as, and whether it comes from the tape. */
  layerAdds: (layer: string, readings: number): string =>
    readings === 0
      ? `One layer may add about ${layer} under the tape, a starting figure.`
      : `One layer adds about ${layer} under the tape, from ${readings === 1 ? "one measurement" : `${readings} measurements`}.`,
  unused: "None of it is needed.",
  count: (pieces: number, shapes: number): string =>
    `${pieces === 1 ? "One piece" : `${pieces} pieces`}, ${shapes === 1 ? "one shape" : `${shapes} shapes`} to cut.`,
  measureHead: {
    level: "Level line",
    body: "Person",
    form: "Bare form",
    parts: { girth: "around", frontArc: "front", backArc: "back" },
  },
  guessNote: "≈ stands before an estimate: measure it if you can.",
  parts: {
    before: "Before the first piece",
    structure: "Structure, in the order of pinning",
    tuning: "Tuning layers: cut last, by what the tape reads over the structure",
    ending: "When every line is on target",
    making: "Over the padding",
  },
  draftNote: (length: string): string =>
    `This plan is a draft: measurements may come out up to ${length} off, in one fitting of ten by more.`,
  draft: (note: string): string =>
    `${note} Mark the lines and measure the bare form first: the sheet of the level lines says how. Then print this sheet again.`,
  draftBegun: (note: string): string => `${note} Measure each line after every piece: that makes up for it.`,
  /** The first thing on the first page of a draft. */
  linesFirst: (note: string): string =>
    `Do this page first, before anything is cut. ${note} Mark these lines on the bare form, measure it there, type it in under Padding, and print the other pages again: their pieces change with it.`,
  withoutPower: (around: string, made: string): string =>
    `If nothing can be typed or printed: where a line reads within ${around} of what the padding sheet counts on, go on. Where it reads less, by up to ${made}, the tuning layers make it good, with a second one where their table says two. Where it reads more, stop: padding that is planned too thick does not come off again on paper.`,
  linesOverleaf: (around: string): string =>
    `Write them on the sheet of the level lines before you cut anything. If a line reads more than ${around} otherwise than the bare form above, type them in and print this sheet again.`,
  wearers: "Left and right are the wearer’s.",
  /** The trial, and the table by which the work goes on whatever its strip told. */
  trial: {
    strip: (turn: string): string =>
      `The strip is three lengths, up to ${turn} each: one for each turn, trimmed where its ends meet. Read the tape twice before, and twice with the strip on; of two readings take the middle.`,
    cells: {
      open: ["before", "again", "over the strip", "again", "gained"],
      noted: ["before", "over the strip", "gained"],
    },
    waiting: "This plan does not count on that yet: update the remaining pieces under Padding, and print it again.",
    how: "What the strip gained says how many layers each piece gets. Mark its column: the tuning tables ask for the same letter. Without a trial it is C, as drawn. Fewer layers than drawn: leave out the smallest, next to the form. More: cut the outermost once more.",
    gained: "Strip gained",
    between: (from: string, to: string): string => `${from} to ${to}`,
    beyond: (least: string, most: string): string =>
      `Under ${least}, or over ${most}: stop, this sheet does not hold. Try once more; if it stays so, type the readings in under Padding, update the pieces, and print it again.`,
    wrap: "Each further layer of a wrap is longer than the one beneath it by a third of what the strip gained. Lay every layer of a wrap around, and trim it where its edges meet.",
  },
  readyMade: "ready-made",
  across: (diameter: string): string => `${diameter} across`,
  layers: (sizes: readonly string[]): string =>
    `Width × height of each layer, from the form outward: ${sizes.join("; ")}. Widths at the lines: its cut drawings.`,
  lines: (sizes: readonly string[]): string =>
    `Width × height: ${sizes.join("; ")}. Widths at the lines: its cut drawing.`,
  readHead: {
    line: "Line",
    girth: "all around",
    frontArc: "front",
    back: "back",
    expect: "expect",
    expectRead: "expect, it reads",
    reads: "it reads",
    end: "in the end",
    short: "short",
  },
  /** A height between two level lines, in few letters. */
  below: (level: string, distance: string): string => `${distance} below the ${level}`,
  structureRead:
    "Short: “in the end” less “it reads”. In back: what is short all around less what is short in front. Where the front is over, nothing is short there, and that much more is short in back.",
  finalRead: (tolerance: string): string =>
    `Within ${tolerance} is on target: leave it. Over by more: take what is over off the shortage you wrote down, and narrow the tuning layer there to the width for that. Short by more: add it, and cut the layer anew. At most twice; then leave it.`,
  tuning: (half: "front" | "back", isOpen: boolean): string =>
    `First look up how wide to cut it at each line, half to each side of the center line: by what the ${half} is short there${isOpen ? ", in the row of the trial’s letter" : ""}. If everything reads as expected, it is as wide as drawn.`,
  tuningShort: "short by",
  /** The row of one column of the trial's table. */
  tuningColumn: (letter: string): string => `${letter}: short by`,
  tuningNone: "–",
  tuningBeyond: "two",
  tuningLegend: (narrowest: string, tolerance: string): string =>
    `Join the widths with straight edges. Change the top edge by as much as the line nearest to it, the lower edge likewise; the height stays. A figure between two columns lies between their widths. Nothing short, less than the first column, or –: ${narrowest} wide. Two: as wide as the last figure before it; slip it in, measure that line again, and if more than ${tolerance} is still short, slip in a second one by what is short then.`,
  /** Between which pieces a tuning layer lies. */
  tuningLies: (wrap: string | null, panels: readonly string[]): string =>
    panels.length > 0
      ? `It lies ${wrap === null ? "" : `over ${wrap}, `}under the outermost layer of ${listed(panels)}. Where it is itself outermost, sew the lines through it.`
      : wrap === null
        ? "It lies on the form itself."
        : `It lies under the outermost layer of ${wrap}.`,
  itRead: (readings: string): string => `It read: ${readings}.`,
  isPinned: "pinned",
  /** `waist 32 1/4, front 17 1/4`: in the unit of the sheet. */
  readAt: (level: string, parts: readonly (readonly [part: TapePartName, length: string])[]): string =>
    `${level} ${parts.map(([part, length]) => (part === "girth" ? length : `${tapePartNames[part]} ${length}`)).join(", ")}`,
  continued: "continued",
  overleaf: "Continued on the next page.",
  limits: (hasSeams: boolean): string =>
    `Read this first: what padding cannot do${hasSeams ? ", and where the side seams are marked" : ""}`,
  pinsIn: "Pins in",
  pinsOut: "pins out",
  none: "There is nothing to pin: on this form the tape already reads as on the person.",
  noneShort: "There is nothing to pin on this form: padding only adds, and what is said above stays.",
} as const;

/** The columns of the trial's table; the middle one is what is drawn. */
export const trialColumnNames = ["A", "B", "C", "D", "E"] as const;

/** Words of the blank measuring sheet. */
export const measuringSheetWords = {
  title: "Measuring sheet",
  blanks: ["For", "Date", "Unit", "Measured by"],
  how: "If a bra will be worn, it is on. Tie a narrow elastic at the waist. The tape is snug when it stays up by itself and a finger still slides under it. Left and right are the wearer’s.",
  form: "On the bare form lay the tape the same way.",
  body: "Person",
  onForm: "Form",
} as const;

/** Words of the sheets of cut drawings. */
export const cuttingSheetWords = {
  title: (name: string): string => (name === "" ? "Cut drawings" : `Cut drawings for ${name}`),
  small: (name: string): string => (name === "" ? "Small cut drawings" : `Small cut drawings for ${name}`),
  howMany: (layers: number, batting: string | null, edge: string): string =>
    `Cut ${layerCount(layers)}${batting === null ? "" : ` from ${batting}`}; ${edge}.`,
  square: (length: string): string =>
    `Print at 100 %. If the square does not measure ${length} each way, this printer changes sizes.`,
  how: [
    "The drawings are smaller than true size. Draw each level line as far below the top edge as is written, along the padding it lies on, which is a little more than straight down. Mark each width on its line, evenly to both sides of the center line unless both are written, add both ends, join the marks, and cut. Beside the ends stands where they come to lie on the form.",
    "The top edge is up and the wearer’s left is on the right: of a front piece you see the outer side, of a back piece the side that lies on the form.",
    "Short strokes mark the edge to feather: pull fibers away with the fingers, never cut it thin with a blade.",
    "A strip is cut with straight edges; the widths at its lines are those with the darts taken in. A dart is so wide × so long; each way means above and below the line. Where one dart reaches the next line, both are one long dart, so wide at each of its lines. Cut it out and join its edges with loose stitches, edge to edge. Spread the darts evenly, as drawn; one may lie at a side seam.",
    shortCautions("cutting"),
  ],
} as const;
