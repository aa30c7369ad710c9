import { isNought } from "./shownLength";
import type { LinePart } from "../core/form/linePart";
import type { LineChange } from "../core/plan/lineChange";
import { type Millimetres, mm } from "../core/units";
import { lineWords } from "./pictures";

/** Words of the work on the bare form: made ready, the person's level lines marked on it, and read there. */
const parts: {
  readonly [part in LinePart]: {
    readonly name: string;
    readonly measure: (line: string) => string;
    readonly how: string;
  };
} = {
  girth: {
    name: "all around",
    measure: (line) => `Measure the bare form on the ${line}, all around.`,
    how: "Level, along the upper edge of the style tape. The measuring tape touches all around and does not dent.",
  },
  frontArc: {
    name: "front, side seam to side seam",
    measure: (line) => `Measure the front on the ${line}, side seam to side seam.`,
    how: "From the form’s left side seam across the front to its right side seam, on the same line.",
  },
  breadth: {
    name: "width straight across",
    measure: (line) => `Measure the width straight across on the ${line}.`,
    how: "Hold a book flat against each side, spine in, on the line. Measure straight from one to the other.",
  },
  depth: {
    name: "depth front to back",
    measure: (line) => `Measure the depth front to back on the ${line}.`,
    how: "Hold a book flat in front and one in back, spine in, on the line. Measure straight from one to the other.",
  },
};

const shortNames: { readonly [part in LinePart]: string } = {
  girth: "around",
  frontArc: "front",
  breadth: "width",
  depth: "front to back",
};

type Write = (length: Millimetres) => string;

export const linesWords = {
  region: "Before the first piece",
  trail: { prepare: "Prepare", mark: "Mark", read: "Measure" },
  prepare: {
    title: "Make the form ready.",
    sentence: "Everything after this is measured over what the form wears now.",
    steps: [
      {
        title: "Lock the base",
        text: "Weight it as well: a padded form is top-heavy. Two people lift a heavy form.",
      },
      {
        title: "Put the bra on, if one is worn",
        text: "The one the clothes will be worn over, or one of the same fit. Pin a tuck in the band; it stays on.",
      },
      {
        title: "Stand it plumb",
        text: "Turn it once around: hem and shoulders stay at one height. Every dial stays as it is from now on.",
      },
    ],
    done: "The form is ready",
    heightsFirst:
      "Some of the person’s heights are estimated, and a line at an estimated height is not yet the person’s. Measure them above the floor first, if you can.",
    toHeights: "Measure the heights",
    nape: {
      label: "The form’s nape above the floor",
      why: "Then each line has its height for the pointer, and there is nothing to subtract. Any floor serves, a table as well.",
    },
  },
  mark: {
    title: (line: string): string => `Mark the person’s ${line}.`,
    below: (distance: string): string => `On the form, ${distance} straight down from its nape, level with the floor.`,
    pointer: {
      title: "Set a pointer",
      known: (nape: string, below: string, height: string): string =>
        `The form’s nape is ${nape} above the floor; less ${below} is ${height}. Fix a clamp or a flag of tape at that height on an upright stick.`,
      unknown: (below: string): string =>
        `Measure the form’s nape above the floor and take ${below} away. Fix a clamp or a flag of tape at that height on an upright stick.`,
    },
    turn: {
      title: "Turn the form past it",
      text: (step: string): string =>
        `Count the marking pins into the form: one every ${step}, at the pointer, all around.`,
    },
    tape: {
      title: "Lay the style tape",
      text: "Its upper edge runs along the pins. Pin it down, then take the marking pins out and count them.",
    },
    shell: "On a hard form: removable pencil or dots instead of pins.",
    done: (line: string): string => `The ${line} is marked`,
    estimated: "This height is estimated.",
    measureIt: "Measure it on the person",
    front: "front",
    leftSide: "left side",
    nape: "nape",
    picture: (line: string): string => `Marking the ${line}`,
    pictureText: (line: string, distance: string): string =>
      `The form from the front and from its left side. A pointer on an upright stick touches it at the ${line}, ${distance} below the nape.`,
    pictureCovered: (line: string): string =>
      `The form from the front and from its left side. A pointer on an upright stick touches it at the ${line}.`,
  },
  read: {
    part: (part: LinePart): string => parts[part].name,
    short: shortNames,
    title: (part: LinePart, line: string): string => parts[part].measure(line),
    how: (part: LinePart): string => parts[part].how,
    estimated: (length: string): string => `${length} is estimated until you measure it.`,
    save: (length: string, next: string | null): string => `Save ${length}${next === null ? "" : `, then ${next}`}`,
    saveNothing: "Type what the tape reads",
    skip: "Leave it out",
    passOver: "Leave the rest out",
    optional: "if you like",
    measured: "measured",
    lines: "The person’s lines",
    kept: (line: string, part: LinePart, length: string): string => `The ${line}, ${parts[part].name}: ${length}.`,
    field: (line: string, part: LinePart): string => `${line}, ${parts[part].name}`,
    next: (line: string, part: LinePart, isSameLine: boolean): string =>
      isSameLine ? `the ${shortNames[part]}` : `the ${line}`,
  },
  /** What a reading changed in the plan, the first sentence as the headline. */
  changed: ({ level, counted, toAdd, pieces, mayMiss, isFirmNow }: LineChange, write: Write): readonly string[] => [
    isFirmNow ? "Every line is measured: the plan is no draft any more." : "The plan is updated.",
    `At the ${lineWords[level]} it ${addsWords(toAdd.before, toAdd.after, counted, write)}`,
    pieces.after === pieces.before
      ? `${piecesWords(pieces.after)}, as before.`
      : `${piecesWords(pieces.after)} instead of ${pieces.before}.`,
    write(mayMiss.after) === write(mayMiss.before)
      ? `It may be up to ${write(mayMiss.after)} off.`
      : `It may be up to ${write(mayMiss.after)} off, instead of ${write(mayMiss.before)}.`,
  ],
  finished: {
    title: "The bare form is measured.",
    stillDraft: "Some lines are not measured yet.",
    sentence: (length: string): string =>
      `The first measurements over the padding may come out up to ${length} off; nine in ten are within that.`,
    next: (pieces: number): string =>
      pieces === 0
        ? "The tape reads on this form as on the person: there is nothing to pin."
        : `The plan for this form has ${piecesWords(pieces).toLowerCase()}. The trial layer and the first piece come next.`,
    again: "Measure what was left out",
    toPlan: "See the plan",
    goOn: "Go on to the first piece",
  },
  draft: {
    offer: "Not now: look at the draft plan",
    back: "Mark the lines and measure the bare form",
    first: "First: mark the person’s lines",
    note: (length: string): string =>
      `This plan is a draft: measurements may come out up to ${length} off (nine in ten are within that).`,
    makesFirm: "Marking the person’s lines on the form and measuring it there makes it firm.",
    begun: "Measure each line after every piece, and update the remaining pieces: that makes up for it.",
  },
} as const;

/** Words of the sheet on which the lines and the bare form's measurements are written. */
export const linesSheetWords = {
  title: (name: string): string => (name === "" ? "Level lines on the form" : `Level lines on the form, for ${name}`),
  isFirm: "The bare form is measured on the person’s lines, and the plan uses it.",
  pointer:
    "For each line: the form’s nape above the floor, less the line’s distance below the nape. Fix a clamp or a flag of tape at that height on an upright stick.",
  after:
    "Then type what the tape reads on the bare form under Padding, at the lines: the plan is updated with each measurement, and the pieces printed before that are out of date.",
  head: {
    line: "Level line",
    below: "below the nape",
    height: "above the floor",
    marked: "marked",
    person: "Person",
    form: "Bare form",
    parts: {
      girth: "around",
      frontArc: "front, side seam to side seam",
      breadth: "width straight across",
      depth: "depth front to back, if you like",
    } satisfies { readonly [part in LinePart]: string },
  },
  ways: {
    girth: "Around.",
    frontArc: "Front.",
    breadth: "Width straight across.",
    depth: "Depth front to back.",
  } satisfies { readonly [part in LinePart]: string },
} as const;

/** Marks this far apart make a line that a tape follows. Common practice, no source. */
export const markSpacing = { in: mm(76.2), cm: mm(80), mm: mm(80) } as const;

const piecesWords = (count: number): string => (count === 1 ? "One piece" : `${count} pieces`);

function addsWords(before: Millimetres, after: Millimetres, counted: LineChange["counted"], write: Write): string {
  const where = counted === "girth" ? "all around" : "in front";
  const [was, is] = [before, after].map((length) => (isNought(write(length)) ? "nothing" : write(length)));
  return was === is ? `adds ${is} ${where}, as before.` : `now adds ${is} ${where}, instead of ${was}.`;
}
