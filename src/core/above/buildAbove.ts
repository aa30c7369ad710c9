import type { LengthName } from "../body/vocabulary";
import type { PatternPart } from "../pattern/patternPart";
import type { Millimetres } from "../units";

/** What is built or marked above the bust line, in the order of the work: the larger shapes first, what lies over them last. */
export const buildKinds = ["upperBack", "upperChest", "chestFill", "shoulderHeight", "shoulderLength", "neck"] as const;
export type BuildKind = (typeof buildKinds)[number];
export type BuildSide = "left" | "right" | "both";

/** What the tape is asked above the bust. The back of the upper chest is its girth less its front. */
export type AboveReadingName = LengthName | "upperChestBackArc";

/** A reading without which nothing is built, and whose tape has to read it. */
export interface UnreadAbove {
  readonly whose: "body" | "form";
  readonly name: LengthName | "bustBelowNape" | "waistBelowNape";
}

/**
 * What the tape reads of the form as it stands before the build, what it reads after, and what it reads of the person (mm). It
 * stays `short` where layers are whole or another reading allows no more, and `formLarger` where the form has too much, which
 * padding never takes away; null where it agrees within half of a layer and within `homeTape`, or within `tapeAgreement`.
 */
export interface AboveReading {
  readonly name: AboveReadingName;
  readonly before: Millimetres;
  readonly after: Millimetres;
  readonly person: Millimetres;
  readonly stays: { readonly sense: "short" | "formLarger"; readonly amount: Millimetres } | null;
}

/** What the tape can be asked over layers above the bust. */
export const askedAbove = [
  "napeToWaist",
  "upperBackWidth",
  "upperChestGirth",
  "upperChestFrontArc",
  "leftShoulderToApex",
  "rightShoulderToApex",
  "acrossChest",
  "leftShoulderDrop",
  "rightShoulderDrop",
  "neckGirth",
] as const satisfies readonly LengthName[];
export type AskedAbove = (typeof askedAbove)[number];

/** A build is one stack of layers, or has one in front and one in back. */
export const stackParts = ["whole", "front", "back"] as const;
export type StackPart = (typeof stackParts)[number];
export type MadeLayers = { readonly [part in StackPart]?: number };

/** Layers that lie on each other, and what one more would do. It is cut like the outermost. */
export interface AboveStack {
  readonly part: StackPart;
  readonly layers: number;
  /** By how much one layer more changes a reading (mm); negative where the tape reads less for it. */
  readonly oneMore: { readonly [name in AboveReadingName]?: number };
}

/**
 * What is done. `unread`: nothing, for want of these readings; it is begun where others of the same build were taken. `layers`: flat parts to cut from batting, from the form outwards, the smallest first, each edge feathered so far
 * (mm); `asks` is what the tape can be asked once they lie there. `markInward` and `extend`: the armhole line is marked that far in on the cover, or a stiffened piece reaches that far
 * out. `noRoom`: the lines lie too close together for a layer. `none`: it agrees already, or the form is larger.
 */
export type BuildAct =
  | { readonly what: "unread"; readonly missing: readonly UnreadAbove[]; readonly isBegun: boolean }
  | { readonly what: "none" | "noRoom" }
  | { readonly what: "markInward" | "extend"; readonly amount: Millimetres }
  | ({ readonly what: "layers"; readonly layers: readonly PatternPart[]; readonly feather: Millimetres } & Stacked);

interface Stacked {
  readonly stacks: readonly AboveStack[];
  readonly asks: readonly AskedAbove[];
}

/** One build above the bust with its own readings and pieces. Sides are the wearer's. */
export interface BuildAbove {
  readonly id: string;
  readonly kind: BuildKind;
  readonly side: BuildSide;
  readonly act: BuildAct;
  /** Empty where nothing is built for want of a reading. */
  readonly readings: readonly AboveReading[];
}

/** Whether hands have something to do. */
export const isToDo = ({ act }: Pick<BuildAbove, "act">): boolean =>
  act.what === "layers" || act.what === "markInward" || act.what === "extend";
