import type { FittingArm } from "../app/arm/fittingArm";
import type { ArmPartName } from "../core/arm/armParts";
import type { ArmProblem, ArmReading, ArmReadingName } from "../core/arm/armReadings";
import { usualPlate } from "../core/arm/armCap";
import type { ArmWish, SoftArm } from "../core/arm/softArm";
import { type LengthStep, type LengthUnit, lengthSteps } from "../core/lengthText";
import type { ArmLineName } from "../core/pattern/patternPart";
import type { Millimetres } from "../core/units";
import type { CautionPlace } from "./cautions";
import { measurementInSentence } from "./measurements";
import { shownLength } from "./shownLength";
import { writtenLength } from "./writtenLength";

/** Words of the soft arm: its parts, how it is cut, sewn, filled and hung, and what is missing for one. */
export const armLineWords: { readonly [line in ArmLineName]: string } = {
  upperArm: "upper arm",
  elbow: "elbow",
  wrist: "wrist",
};

export const armPartLabels: { readonly [name in ArmPartName]: string } = {
  upper: "upper",
  under: "under",
  whole: "arm",
  capDisc: "cap disc",
  wristDisc: "wrist disc",
  tab: "tab",
  capCard: "card for the cap",
  wristCard: "card for the wrist",
};

const sides = { left: "left arm", right: "right arm" } as const;

const partTitles: { readonly [name in ArmPartName]: string } = {
  ...armPartLabels,
  upper: "upper piece",
  under: "under piece",
  whole: "in one piece",
};

/** What is written on a part of an arm: which it is, what it is cut from, and where it goes. */
export const armPartWords = (
  name: ArmPartName,
  arm: SoftArm,
): { readonly title: string; readonly says: readonly string[] } => ({
  title: `Soft ${sides[arm.wish.side]}, ${partTitles[name]}`,
  says: partSays(name, arm),
});

function partSays(name: ArmPartName, arm: SoftArm): readonly string[] {
  const other = arm.wish.side === "left" ? sides.right : sides.left;
  const lines = "Cut along the solid line, sew along the dashed one.";
  const turned = `For a ${other}, turn every part over.`;
  switch (name) {
    case "upper":
    case "under":
      return [
        cutFrom(arm),
        lines,
        "Two notches side by side mark the back. The other piece is its mirror image already: right sides meet.",
        turned,
      ];
    case "whole":
      return [cutFrom(arm), lines, "Two notches side by side mark the back. Sew the two darts first.", turned];
    case "capDisc":
      return [
        "Cut 1 from the same fabric.",
        "It closes the arm at the shoulder. It stays soft until the arm is turned.",
        ...(arm.capEase > 0 ? [`The cap is ${percent(arm.capEase)} longer: gather it in.`] : []),
      ];
    case "wristDisc":
      return ["Cut 1 from the same fabric.", "It closes the arm last."];
    case "tab":
      return ["Cut 1 from firm woven fabric.", "One short end goes into the top of the cap seam."];
    case "capCard":
      return ["Cut 1 from firm card, along the line.", "It goes behind the cap disc after the arm is turned."];
    case "wristCard":
      return ["Cut 1 from firm card, along the line.", "It goes behind the wrist disc."];
  }
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

const cutFrom = ({ cloth }: SoftArm): string =>
  cloth.kind === "knit"
    ? `Cut 1 from knit, right side up. The filling pulls it by ${percent(cloth.stretch)} to the arm’s size.`
    : "Cut 1 from woven fabric, right side up, the grain line along the lengthwise grain.";

export const armStepNames = ["cut", "sew", "fill", "hang"] as const;
export type ArmStepName = (typeof armStepNames)[number];

/** One step of making an arm: its headline, what is done in order, and the place of its cautions. */
export interface ArmStepText {
  readonly title: string;
  readonly lines: readonly string[];
  readonly cautions: CautionPlace | null;
}

/** Hung on a cover, or through the padding on what thread holds to there. */
export type ArmHeld = { readonly on: "cover" } | { readonly on: "padding"; readonly into: string };

export function armStepText(
  name: ArmStepName,
  arm: SoftArm,
  step: LengthStep,
  held: ArmHeld = { on: "cover" },
): ArmStepText {
  const { unit } = lengthSteps[step];
  switch (name) {
    case "cut":
      return { title: "Cut the arm.", lines: cutLines(arm, step), cautions: "cuttingFabric" };
    case "sew":
      return { title: "Sew the arm.", lines: sewLines(arm, unit), cautions: "sewing" };
    case "fill":
      return { title: "Fill the arm.", lines: fillLines(arm, step), cautions: "fillingArm" };
    case "hang":
      return { title: "Hang the arm by its tab.", lines: hangLines(held), cautions: null };
  }
}

const cutLines = (arm: SoftArm, step: LengthStep): readonly string[] => {
  const { wish, cloth } = arm;
  return [
    wish.cut === "twoPieces"
      ? "Cut the upper piece, the under piece, the cap disc and the wrist disc from one fabric, all right side up. The under piece is drawn as a mirror image, so that right sides meet."
      : "Cut the arm, the cap disc and the wrist disc from one fabric, all right side up.",
    ...(cloth.kind === "knit" ? ["The knit stretches most across the arm: lay the grain line along the ribs."] : []),
    `This is the ${sides[wish.side]}. For the other arm, turn every part over.`,
    "Mark the notches and the dotted lines for upper arm and elbow.",
    "Cut the tab from firm woven fabric, and both cards from firm card.",
    ...capMatters(arm, step),
  ];
};

/** What the cap is cut for, where that is not what was chosen or measured. */
export function capMatters({ wish, capRefused }: SoftArm, step: LengthStep): readonly string[] {
  switch (capRefused) {
    case "plateUnread":
      return [
        "The cap has an oval of its own: to gather it onto the form’s armhole, measure height and width of that armhole on the form.",
      ];
    case "plateSmall":
      return ["The cap has an oval of its own: this arm is too large around to be gathered onto the form’s armhole."];
    case "plateLarge":
      return [
        "The cap has an oval of its own: the form’s armhole is too large for this arm’s cap to be gathered onto it.",
      ];
    case null:
      return wish.plate.height === null
        ? [
            `Nobody measured the armhole of the form, so the cap is cut for one that is ${shownLength(usualPlate, step)} high (a judgement).`,
          ]
        : [];
  }
}

/** How an arm is made, as it is chosen. */
export const armChoiceWords = {
  cut: "The arm is cut from",
  cuts: {
    twoPieces: "two pieces, with seams along the front and the back",
    onePiece: "one piece, with a seam along the front and two darts at the elbow",
  } satisfies { readonly [cut in ArmWish["cut"]]: string },
  cap: "Its cap",
  caps: {
    ownOval: "ends in an oval of its own, edge on edge",
    gathered: "is gathered onto an oval as large as the form’s armhole, by 5 % (common practice, no source)",
  } satisfies { readonly [cap in ArmWish["cap"]]: string },
} as const;

const sewLines = ({ wish, cloth, capEase }: SoftArm, unit: LengthUnit): readonly string[] => [
  ...(cloth.kind === "knit" ? ["Use a stretch stitch."] : []),
  ...(wish.cut === "twoPieces"
    ? [
        "Lay upper and under piece right sides together and match the notches: two side by side mark the back. Sew the front seam and the back seam; leave cap and wrist open.",
      ]
    : [
        "Sew both darts from the front edge to nothing at the back line.",
        "Lay the front edges right sides together and match the notches. Sew the front seam; leave cap and wrist open.",
      ]),
  "Clip the allowance at the bend of the elbow.",
  `Fold the tab lengthwise, right sides together, sew it along its long edge and turn it. Cut four ties, ${unit === "in" ? "8 in" : "20 cm"} long.`,
  ...(capEase > 0
    ? [
        `The cap is ${percent(capEase)} longer than the disc. Run a gathering thread along its edge within the allowance, and draw it in between the notches until it lies smooth.`,
      ]
    : []),
  "Pin the cap disc into the cap, right sides together, its top at the notch in the upper cap. Catch the tab in the seam at the top and one tie at each side notch. Sew the upper half of the seam only, with no card behind the disc yet.",
  "Turn the arm through the wrist. Slide the card in behind the cap disc, and sew the under half of the cap seam by hand. Take every pin out and count.",
];

function fillLines({ girths }: SoftArm, step: LengthStep): readonly string[] {
  const read = (line: ArmLineName) => `${armLineWords[line]} ${shownLength(girths[line], step)}`;
  return [
    "Fill it from the wrist in handfuls, each pulled apart first. Push them up into the cap, then fill downward, firm and even.",
    `Measure all around while it fills: ${read("upperArm")}, ${read("elbow")}, ${read("wrist")}.`,
    lengthSteps[step].unit === "in"
      ? "About 5 to 9 oz of loose fiber, estimated from memory."
      : "About 150 to 250 g of loose fiber, estimated from memory.",
    "Lay the card behind the wrist disc and sew the disc in by hand.",
  ];
}

const hangLines = (held: ArmHeld): readonly string[] => [
  held.on === "cover"
    ? "Sew one tie each to the cover at the front and the back of the armhole."
    : `Sew one tie each at the front and the back of the armhole, through the padding into ${held.into}: batting alone tears.`,
  "Lay the cap disc against the armhole, the elbow bending to the front, and the tab over the shoulder.",
  held.on === "cover"
    ? "Fasten the tab to the cover with hook-and-loop tape, sewn to both."
    : `Fasten the tab with hook-and-loop tape: one half sewn to the tab, the other over the shoulder, through the padding into ${held.into}.`,
  "Tie the ties, front and back. No pin stays under a sleeve.",
  "Untie it to slip a sleeve over it, and take it off when it is not needed.",
];

/** What is to be measured before there can be an arm. */
export const armUnreadText = (missing: readonly ArmReadingName[]): string =>
  `For a soft arm, measure: ${missing.map((name) => measurementInSentence(name)).join(", ")}. None of them is estimated.`;

/** What cannot be of one arm: what was read, what was expected, and what to do. */
export function armProblemText({ code, names, got, expected }: ArmProblem, step: LengthStep): string {
  const [first = "", second = ""] = names.map(measurementInSentence);
  const length = (value: Millimetres) => writtenLength(value, step);
  const { least, most } = expected;
  const reads = `The person’s ${first} reads ${length(got)}`;
  switch (code) {
    case "elbowBesideUpperArm":
    case "wristBesideElbow":
      return `${reads}; beside that ${second} it can be ${length(least)} to ${length(most)}. Measure both again.`;
    case "elbowPlace":
      return `${reads}; beside that ${second} it can be ${length(least)} to ${length(most)}. Measure both again from the shoulder tip.`;
    case "lengthBesideGirth":
      return `${reads}; beside that ${second} it must be ${length(least)} at least. Check the unit, and measure both again.`;
  }
}

/** Why no arm is among what is cut although one was measured; nothing where there is nothing to mend. */
export const armNotes = (arm: FittingArm | ArmReading, step: LengthStep): readonly string[] =>
  arm.kind === "contradicting"
    ? arm.problems.map((problem) => `No arm is among the parts. ${armProblemText(problem, step)}`)
    : [];

/** The words of the two pictures of an arm. */
export const armPictureWords = {
  pattern: "A soft arm, laid flat",
  patternText: (arm: SoftArm, step: LengthStep): string =>
    `The parts of a soft ${sides[arm.wish.side]}: ${arm.wish.cut === "twoPieces" ? "the upper piece and the under piece, its mirror image with a cap that dips" : "one piece with a dart on each front edge"}, the cap disc, the wrist disc and the tab. All around, filled: upper arm ${shownLength(arm.girths.upperArm, step)}, elbow ${shownLength(arm.girths.elbow, step)}, wrist ${shownLength(arm.girths.wrist, step)}.`,
  hangs: "The arm hangs by its tab",
  hangsText:
    "A filled arm lies with its cap against the armhole of the form. Its tab is fastened over the shoulder, and two ties hold it at the armhole.",
  allAround: "all around",
  front: "front",
  back: "back",
} as const;
