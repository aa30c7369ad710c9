import { upperFirst } from "./upperFirst";
import { handLengths, tiltTold } from "../app/steps/handLengths";
import type { StepFacts } from "../app/steps/stepFacts";
import type { MakingStepName } from "../app/steps/makingSteps";
import type { CoverOff, Step, StepName } from "../app/steps/step";
import { armStepNames, armStepText } from "./arm";
import type { CoverCloth } from "../document/fittingLimits";
import type { LengthStep } from "../core/lengthText";
import { mm } from "../core/units";
import { levelNames } from "../core/body/vocabulary";
import { heldBy } from "./formKinds";
import { levelList } from "./learning";
import { dateText } from "./moment";
import { levelWords } from "./pictures";
import { shownLength } from "./shownLength";

/** Steps over the finished padding: those that make something, and the three that choose and read for the cover. */
export type AfterPaddingName = MakingStepName | "choose-cover" | "read-between" | "read-cover";

interface MakingSaying {
  readonly lengths: LengthStep;
  /** Left out where no fitting is at hand; then the sentences name no lengths. */
  readonly facts?: StepFacts;
}

type Words = readonly [act: string, how: string];

const { fitted, seam, hem } = handLengths.allowance;

/** Steps that say the same for everybody. Common practice, no source. */
const always = {
  "choose-cover": [
    "Choose what the cover is made of.",
    "Knit cut from panels, knit pinned tight as it is, woven fabric, or no cover. Try a knit first: mark two spots, pull, and measure.",
  ],
  "read-between": [
    "Measure between the level lines, if you can.",
    "The cover then fits there as well: all around, and the front from side seam to side seam.",
  ],
  "sew-cover": [
    "Sew the seams that carry the shape.",
    "Center front and the princess seams, notch on notch. The sides and center back stay open.",
  ],
  "hem-cover": [
    "Hem the cover.",
    "Turn it under the lower edge of the form. Sew it there by hand, or run a drawstring through the hem and tie it.",
  ],
} as const satisfies { readonly [name in AfterPaddingName]?: Words };
type NamesLengths = Exclude<AfterPaddingName, keyof typeof always>;

/** The act and how it is done, with the lengths of the fitting. */
export function makingWords(step: Step & { readonly do: AfterPaddingName }, { facts, lengths }: MakingSaying): Words {
  const { do: name } = step;
  if (name in always) return always[name as keyof typeof always];
  const write = (length: number) => shownLength(mm(length), lengths);
  switch (name as NamesLengths) {
    case "cut-cover":
      return [
        "Cut the cover panels.",
        `Print the patterns at true size, and cut each panel along the solid line; above the bust line leave the fabric uncut. The allowances are ${write(fitted)} at the sides and at center back, ${write(hem)} at the hem, ${write(seam)} elsewhere.`,
      ];
    case "fit-cover":
      return fitWords(facts);
    case "close-cover":
      return closeWords(facts, write);
    case "read-cover":
      return readCoverWords(step);
    case "correct-cover":
      return correctWords(step.off, write);
    case "waist-tape":
      return waistTapeWords(facts, write);
    case "style-lines":
      return [
        "Mark the lines that the clothes follow.",
        hasCover(facts)
          ? `Style tape along ${styleLines(facts, write)}, center front and center back, the princess seams, the neck and the armholes. ${hemWords(facts)}`
          : `Sew style tape along ${styleLines(facts, write)}, center front and center back, the princess lines, the neck and the armholes, through whatever lies outermost: sticky tape does not hold on batting. ${hemWords(facts)}`,
      ];
    case "cut-arm":
    case "sew-arm":
    case "fill-arm":
    case "hang-arm":
      return armWords(name as ArmStep, facts, lengths);
    case "put-away":
      return [
        "Pull a dust bag over the form until it is needed.",
        `Stand it out of sunlight. Lift it by the base, never by the padding. ${measureAgain(facts)}`,
      ];
  }
}

const hasCover = (facts: StepFacts | undefined): boolean => facts?.cloth !== "none";

/** A closed cover that was opened for batting has its sides sewn already. */
function closeWords(facts: StepFacts | undefined, write: (length: number) => string): Words {
  const opening = `by hand${facts?.cloth === "woven" ? ", with a zipper or with lacing" : ""}`;
  return facts?.isReopened === true
    ? [
        "Close the cover again.",
        `Smooth it over the new batting from the waist, and pin center back edge to edge. Where the edges do not meet, let the side seams out a little. Close it ${opening}; take the pins out and count them.${facts.isSewnIn ? " Sew the waist tape through it into the padding again." : ""}`,
      ]
    : [
        "Sew the sides, and close the back.",
        `Mark along the pins, take them out and count them. Take the cover off, sew the sides, trim to ${write(fitted)}, turn it, and pull it on again. Close center back ${opening}.`,
      ];
}

const fitWords = (facts: StepFacts | undefined): Words =>
  facts?.cloth === "pulledKnit"
    ? [
        "Pull the knit on and pin it tight.",
        `${tie(facts)} Wrong side out, seams at the sides and at center back: waist, bust, hips and shoulders first, then between, then once more around, tighter.`,
      ]
    : [
        "Pin the cover at both sides.",
        `${tie(facts)} Pull it on wrong side out, center back pinned closed. Pinch the sides from the waist down, then up; pull the hem down before each pin.`,
      ];

/** One reading is asked for by its own name. */
function readCoverWords({ names, levels }: Pick<Step, "names" | "levels">): Words {
  const level = levelWords[levels[0] ?? "waist"];
  const [only] = names;
  const how = "Over the cover: it reads a little less than over the padding.";
  if (only !== undefined && names.length === 1)
    return only.endsWith("Girth")
      ? [`Measure the ${level}, all around.`, how]
      : [`Measure the front ${level}.`, `From side seam to side seam. ${how}`];
  return [
    `Measure ${levelList(levels, levelNames.length)} over the cover.`,
    "All around, and the front from side seam to side seam.",
  ];
}

const tie = (facts: StepFacts | undefined): string =>
  facts?.isTied === true
    ? "Tie narrow elastic at the underbust line and at the waist."
    : "Tie narrow elastic at the waist.";

/** What is over comes off at both sides; what is short is let out, and beyond that filled. */
function correctWords(off: readonly CoverOff[], write: (length: number) => string): Words {
  const each = off.map(
    ({ level, over }) =>
      `${over > 0 ? "take in" : "let out"} ${write(Math.abs(over))} in all at the ${levelWords[level]}`,
  );
  const isShort = off.some(({ over }) => over < 0);
  return [
    "Correct the cover at the sides.",
    `Unpick the side seams there. ${upperFirst(each.join("; "))}: a quarter of it on every edge of both side seams. Sew them again, pins out and counted.${isShort ? " Where that is not enough, lay a thin piece of batting beneath." : ""}`,
  ];
}

/** Asked where the waist tape goes on. */
export const sewnInTick = "It stands so far off: sewn into the padding";

function waistTapeWords(facts: StepFacts | undefined, write: (length: number) => string): Words {
  const tape = facts?.waistTape ?? null;
  if (tape === null) return ["Sew on the waist tape.", "At the waist, its ends one over the other at center back."];
  const { height, length, tilt } = tape;
  const at =
    height.kind === "alongBack"
      ? `${write(height.value)} below the nape along the padding`
      : `about ${write(height.value)} straight down from the nape (estimated)`;
  const tilted =
    tilt === null || Math.abs(tilt.front - tilt.back) < 3
      ? ""
      : ` In front it lies ${write(Math.abs(tilt.front - tilt.back))} ${tilt.front < tilt.back ? "lower" : "higher"} than in back${tape.tiltAdds < tiltTold ? "" : `: along that tilt a tape reads about ${write(tape.tiltAdds)} more than level`}.`;
  const sewn = hasCover(facts)
    ? `Long stitches along the upper edge, through the cover alone; where a straight edge from shoulder blades to seat stands ${write(handLengths.sewnInFrom)} or more off the waist, into the padding.`
    : "Long stitches along the upper edge, through the outermost layer of batting alone.";
  return [
    "Sew on the waist tape.",
    `Cut it ${write(length)} long. Its ends meet at center back, ${at}, one over the other by ${write(25.4)}.${tilted} ${sewn}`,
  ];
}

/** A hem is measured from the floor, which is true once the form stands as high as the person. */
const hemWords = (facts: StepFacts | undefined): string =>
  facts?.isFloorKnown === true
    ? "For hems, set the form’s waist as high above the floor as the person’s."
    : "For hems, measure the person’s waist to the floor, and set the form to it.";

const styleLines = (facts: StepFacts | undefined, write: (length: number) => string): string =>
  (facts?.tapes ?? []).map(({ line, length }) => `the ${levelWords[line]} (${write(length)})`).join(" and ") ||
  "the bust and the full hip";

type ArmStep = "cut-arm" | "sew-arm" | "fill-arm" | "hang-arm";

function armWords(name: ArmStep, facts: StepFacts | undefined, lengths: LengthStep): Words {
  const text = armStep(name, facts, lengths);
  return text === null ? ["Make the arm.", "From the patterns at true size."] : [text.title, text.lines.join(" ")];
}

/** A step of the arm with all it says; null without an arm. */
export function armStep(
  step: StepName,
  facts: StepFacts | undefined,
  lengths: LengthStep,
): ReturnType<typeof armStepText> | null {
  const arm = facts?.arm ?? null;
  const name = armStepNames.find((one) => step === `${one}-arm`);
  if (arm === null || facts === undefined || name === undefined) return null;
  return armStepText(
    name,
    arm,
    lengths,
    hasCover(facts) ? { on: "cover" } : { on: "padding", into: heldBy(facts.form) },
  );
}

const measureAgain = (facts: StepFacts | undefined): string =>
  facts?.measureAgain == null
    ? "Measure the person again in three months, or when a garment disagrees."
    : `Measure the person again on ${dateText(facts.measureAgain)}, or when a garment disagrees.`;

/** What the button says. */
export const makingDone: { readonly [name in AfterPaddingName]: string } = {
  "choose-cover": "Go on with this",
  "read-between": "Save these measurements",
  "cut-cover": "All panels are cut",
  "sew-cover": "These seams are sewn",
  "fit-cover": "Both sides are pinned",
  "close-cover": "Sewn, on again and closed",
  "read-cover": "",
  "correct-cover": "The cover is corrected",
  "hem-cover": "The hem is sewn",
  "waist-tape": "The waist tape is on",
  "style-lines": "The lines are marked",
  "cut-arm": "The arm is cut",
  "sew-arm": "The arm is sewn",
  "fill-arm": "It reads as it should",
  "hang-arm": "The arm hangs",
  "put-away": "The bag is over it",
};

interface Hand {
  readonly title: string;
  readonly text: string;
}
type Hands = { readonly [name in AfterPaddingName]?: readonly Hand[] };

/** What the button says instead where a cover that was closed before is closed once more. */
export const closedAgain = "Closed again";

/** What the hands do, in their order. */
export const makingHands = (
  name: AfterPaddingName,
  { cloth, isReopened }: Pick<StepFacts, "cloth" | "isReopened">,
): readonly Hand[] =>
  (isReopened ? handsReopened[name] : undefined) ??
  (cloth === "none" ? handsUncovered[name] : undefined) ??
  hands[name] ??
  [];

/** Common practice, no source, like all three. */
const handsReopened: Hands = {
  "close-cover": [
    { title: "At the waist first", text: "Then up and down, edge to edge." },
    { title: "Pins out", text: "Each as it is passed. Count them: as many as went in." },
  ],
};

const handsUncovered: Hands = {
  "style-lines": [
    { title: "Level lines", text: "Upper edge of the tape on the line." },
    { title: "Princess lines", text: "Over the apex in front, over the shoulder blade in back." },
    { title: "Neck and armhole", text: "Stand the tape on edge around the curve." },
  ],
  "put-away": [
    { title: "Count once more", text: "Pins and needles back in their dish and cushion." },
    { title: "When the body changes", text: "Add or take out a layer, and baste it." },
    { title: "At the end", text: "Sort out pins and wire first; batting goes where local rules send polyester." },
  ],
};

const hands: Hands = {
  "cut-cover": [
    { title: "Measure the squares", text: "Both test squares on the first page, before anything is cut." },
    {
      title: "Grain along the arrow",
      text: "Wash the fabric first. Mark notches in the allowance; never snip across the seam line.",
    },
    {
      title: "Trace above the bust",
      text: "Leave fabric above the bust line; shoulder and armhole are traced on the form.",
    },
  ],
  "sew-cover": [
    { title: "From the notches out", text: "Level line on level line. Both edges of a seam are equally long." },
    { title: "Stretch stitch", text: "On a knit. Press the seams now, not on the form." },
  ],
  "fit-cover": [
    { title: "Pins along the form", text: "As far apart as a hand is wide, both sides alike, counted in." },
    { title: "Tight enough", text: "When hardly any fabric can be pinched up at center front." },
    { title: "Sides differ?", text: "Fit it right side out: wrong side out swaps left and right." },
  ],
  "close-cover": [
    { title: "Mark, then pins out", text: "A washable line along the pins. Count them: as many as went in." },
  ],
  "correct-cover": [
    { title: "The same on both sides", text: "Center lines and apexes stay where they are." },
    { title: "Run out smoothly", text: "Nothing at the next level line that is on target." },
  ],
  "hem-cover": [
    { title: "Smooth it down", text: "From the waist, all around, before the first stitch." },
    { title: "Never through a hard form", text: "A drawstring holds there as well." },
  ],
  "waist-tape": [
    { title: "Center back first", text: "Then around, level or tilted as it says." },
    { title: "Along the upper edge", text: "That edge is the waist." },
  ],
  "style-lines": [
    { title: "Level lines", text: "Upper edge of the tape on the line." },
    { title: "Princess seams", text: "Over the apex in front, over the shoulder blade in back." },
    { title: "Neck and armhole", text: "Stand the tape on edge around the curve." },
  ],
  "put-away": [
    { title: "Count once more", text: "Pins and needles back in their dish and cushion." },
    { title: "When the body changes", text: "Open center back, add or take out a layer, close it again." },
    { title: "At the end", text: "Sort out pins and wire first; batting goes where local rules send polyester." },
  ],
};

export const coverChoice = {
  legend: "The cover",
  cloths: {
    knit: "Knit, cut from eight panels: it follows the form best",
    pulledKnit: "Knit, pinned tight as it is: quick, and it presses the batting a little",
    woven: "Woven fabric, cut from eight panels: smooth and firm",
    none: "No cover for now",
  } satisfies { readonly [cloth in CoverCloth]: string },
  test: {
    title: "Try the knit first",
    how: (length: string): string =>
      `Mark ${length} across and ${length} along. Pull across as hard as the cover will pull, and measure both.`,
    marked: "Marked, at rest",
    across: "Across, pulled",
    along: "Along, meanwhile",
    optional: "May be left empty: then it is cut to be pulled by a tenth, which most knits give.",
    begun: "All three lengths together tell how the knit behaves: fill in the others, or empty all three.",
    cannot: "A pulled knit is longer across than its marks, and not longer along. Look at the three once more.",
    gives: (percent: number): string =>
      percent < 5
        ? "This knit hardly gives. Choose woven fabric, or another knit."
        : `Cut to be pulled by ${String(percent)} %, at most half of what it gives.`,
  },
} as const;

export const betweenWords = {
  below: (line: string, distance: string): string => `${distance} below the ${line}`,
  girth: "all around",
  front: "front, side seam to side seam",
  kinds: {
    measured: "The cover is cut for these heights as well.",
    guessed: "Between the level lines the cover is estimated, and may miss there by the width of a thumb.",
  },
  skip: "Leave these out",
  noFront: "Front and all around belong together, and the front is less: measure both, or leave both empty.",
} as const;

/** What is said beside the slab: which length to expect. */
export const makingThen = {
  arm: "Upper arm, filled",
  waistTape: "Waist tape, cut",
} as const;
