import type { ArmPartName } from "../../core/arm/armParts";
import type { SoftArm } from "../../core/arm/softArm";
import type { BuildAbove } from "../../core/above/buildAbove";
import { levelNames } from "../../core/body/vocabulary";
import type { Cloth } from "../../core/cover/cloth";
import { coverParts } from "../../core/cover/coverParts";
import type { CoverPanelName } from "../../core/cover/coverPanels";
import { usualAllowances } from "../../core/cover/cuttingLine";
import type { FittedCover } from "../../core/cover/fittedCover";
import { battingParts } from "../../core/pattern/battingParts";
import { type Piece, pieceBatting } from "../../core/padding/piece";
import type { PlannedLevel } from "../../core/plan/plan";
import { assert } from "../../core/result";
import type { SettledFitting } from "../../document/fitting";
import { armWish, fittingArm, type FittingArm } from "../arm/fittingArm";
import { fittingBuilds } from "../above/fittingBuilds";
import type { Derived } from "../session/derived";
import { type CurrentStep, piecesNamed } from "../steps/currentStep";
import { coverOfStep } from "./coverOfStep";
import { patternFile, type PatternFile } from "./patternFile";
import type { TitledPart } from "./titledPart";

export interface FittingPatterns {
  readonly file: PatternFile;
  readonly parts: readonly TitledPart[];
  /** The arm whose parts are among them; or why none is. */
  readonly arm: FittingArm;
}

type PartWords = Pick<TitledPart, "title" | "says">;

/** What is written on each part, said by whoever asks for them. */
export interface PatternTitles {
  readonly layer: (piece: Piece, layer: number, levels: readonly PlannedLevel[], batting: string) => PartWords;
  readonly panel: (name: CoverPanelName, cover: FittedCover) => PartWords;
  readonly armPart: (name: ArmPartName, arm: SoftArm) => PartWords;
  readonly above: (build: BuildAbove, layer: number, batting: string) => PartWords;
}

/** What can be cut by patterns, in the order of the work; what stands above the bust goes with the batting. */
export const patternGroups = ["batting", "cover", "arm"] as const;
export type PatternGroup = (typeof patternGroups)[number];

/** What cover and arm are cut from, whether there is to be a cover, and what is left out of it all. */
export interface PatternWish {
  readonly leftOut?: ReadonlySet<PatternGroup>;
  readonly cloth: Cloth;
  readonly hasCover: boolean;
}

/** Everything of a fitting that is cut, as it stands now, with an arm if it was measured; null while there is no plan. */
export function fittingPatterns(
  derived: Pick<Derived, "step" | "input" | "lengths">,
  fitting: SettledFitting,
  { cloth, hasCover, leftOut = new Set() }: PatternWish,
  titles: PatternTitles,
): FittingPatterns | null {
  const current = derived.step();
  if (current === null) return null;
  assert(derived.input !== null, "a step has a plan, and a plan what it is made from");
  const arm = fittingArm(derived.input.body, cloth, armWish(fitting));
  const cover = coverOfStep(current, derived.input, cloth, fitting);
  const { plan, replan } = current;
  const builds = fittingBuilds({ plan, layer: replan.calibration.building.layer }, derived, fitting);
  const groups: { readonly [group in PatternGroup]: () => readonly TitledPart[] } = {
    batting: () => [
      ...battingPatterns(current, fitting, titles.layer),
      ...builds.flatMap((build) => abovePatterns(build, fitting.batting.name, titles.above)),
    ],
    cover: () => (hasCover ? coverPatterns(cover, titles.panel) : []),
    arm: () => armPatterns(arm, titles.armPart),
  };
  const parts = patternGroups.flatMap((group) => (leftOut.has(group) ? [] : groups[group]()));
  const girths = Object.fromEntries(levelNames.map((name) => [name, cover.girths[name]?.girth ?? 0]));
  return { file: patternFile(parts, girths, cloth.kind === "knit" ? cloth.stretch : 0), parts, arm };
}

const coverPatterns = (cover: FittedCover, words: PatternTitles["panel"]): readonly TitledPart[] =>
  coverParts(cover, usualAllowances).map((part, i) => ({
    part,
    ...words((cover.panels[i] as (typeof cover.panels)[number]).name, cover),
  }));

/** One arm, the left one; nothing while it was not measured or its measurements contradict one another. */
const armPatterns = (made: FittingArm, words: PatternTitles["armPart"]): readonly TitledPart[] =>
  made.kind === "arm" ? made.parts.map(({ name, part }) => ({ part, ...words(name, made.arm) })) : [];

/** What the plan still has and what was pinned, each piece once. */
function battingPatterns(
  current: CurrentStep,
  fitting: SettledFitting,
  words: PatternTitles["layer"],
): readonly TitledPart[] {
  const { plan, replan } = current;
  const named = piecesNamed({ plan: { ...plan, pieces: [] }, replan }, fitting);
  const pieces = new Map([...replan.plan.pieces, ...named].map((piece) => [piece.id, piece]));
  return [...pieces.values()].flatMap((piece) => {
    const isFinishing = pieceBatting(piece) === "finishing";
    const batting = (isFinishing ? fitting.finishingBatting?.name : undefined) ?? fitting.batting.name;
    return battingParts(piece).map(
      (part): TitledPart => ({ part, ...words(piece, layerNumber(part.id), plan.levels, batting) }),
    );
  });
}

/** Every layer that is built above the bust. */
const abovePatterns = (build: BuildAbove, batting: string, words: PatternTitles["above"]): readonly TitledPart[] =>
  build.act.what === "layers" ? build.act.layers.map((part, i) => ({ part, ...words(build, i + 1, batting) })) : [];

const layerNumber = (partId: string): number => Number(partId.slice(partId.lastIndexOf("-") + 1));
