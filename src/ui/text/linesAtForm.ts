import type { LevelName } from "../../core/body/vocabulary";
import type { LinePart } from "../../app/linesAtForm";

/** Words of the work on the bare form: made ready, the person's level lines marked on it, and read there. */
export const levelLineNames: { readonly [level in LevelName]: string } = {
  bust: "bust line",
  underbust: "underbust line",
  waist: "waistline",
  highHip: "high hip line",
  fullHip: "full hip line",
};

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
    how: "The measuring tape lies level on the upper edge of the style tape. It touches all around and does not dent.",
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
};

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
      text: (step: string): string => `Set a marking pin at the pointer every ${step}, all around.`,
    },
    tape: {
      title: "Lay the style tape",
      text: "Its upper edge runs along the pins. Pin it down, then take the marking pins out and count them.",
    },
    shell: "On a hard form: removable pencil or dots instead of pins.",
    done: (line: string): string => `The ${line} is marked`,
    estimated: "This height is estimated. A measured one makes the line the person’s own.",
    front: "front",
    leftSide: "left side",
    nape: "nape",
    picture: (line: string): string => `Marking the ${line}`,
    pictureText: (line: string, distance: string): string =>
      `The form from the front and from its left side. A pointer on an upright stick touches it at the ${line}, ${distance} below the nape.`,
  },
  read: {
    part: (part: LinePart): string => parts[part].name,
    title: (part: LinePart, line: string): string => parts[part].measure(line),
    how: (part: LinePart): string => parts[part].how,
    estimated: (length: string): string => `${length} is estimated until you measure it.`,
    save: (length: string, next: string | null): string => `Save ${length}${next === null ? "" : `, then ${next}`}`,
    saveNothing: "Type what the tape reads",
    skip: "Leave it out",
    kept: (line: string, part: LinePart, length: string): string => `The ${line}, ${parts[part].name}: ${length}.`,
    field: (line: string, part: LinePart): string => `${line}, ${parts[part].name}`,
    next: (line: string, part: LinePart, isSameLine: boolean): string =>
      isSameLine ? parts[part].name : `the ${line}`,
  },
  draft: {
    offer: "Not now: look at the draft plan",
    back: "Mark the lines and measure the bare form",
    note: (length: string): string =>
      `This plan is a draft: measurements may come out up to ${length} off (nine in ten are within that). Marking the person’s lines on the form and measuring it there makes it firm.`,
  },
} as const;
