import { apexToApexEstimate } from "../../core/body/estimates";
import { levelNames } from "../../core/body/vocabulary";
import type { Cloth } from "../../core/cover/cloth";
import { coverGround } from "../../core/cover/coverGround";
import { coverMatters } from "../../core/cover/coverMatters";
import { coverParts } from "../../core/cover/coverParts";
import type { CoverPanelName } from "../../core/cover/coverPanels";
import { usualAllowances } from "../../core/cover/cuttingLine";
import { type FittedCover, fittedCover } from "../../core/cover/fittedCover";
import { battingParts } from "../../core/pattern/battingParts";
import { type Piece, pieceBatting } from "../../core/padding/piece";
import type { PlanInput } from "../../core/plan/basis";
import type { PlannedLevel } from "../../core/plan/plan";
import { assert } from "../../core/result";
import type { SettledFitting } from "../../document/fitting";
import type { Derived } from "../session/derived";
import { type CurrentStep, piecesNamed } from "../steps/currentStep";
import { patternFile, type PatternFile } from "./patternFile";
import type { TitledPart } from "./titledPart";

export interface FittingPatterns {
  readonly file: PatternFile;
  readonly parts: readonly TitledPart[];
}

type PartWords = Pick<TitledPart, "title" | "says">;

/** What is written on each part, said by whoever asks for them. */
export interface PatternTitles {
  readonly layer: (piece: Piece, layer: number, levels: readonly PlannedLevel[], batting: string) => PartWords;
  readonly panel: (name: CoverPanelName, cover: FittedCover) => PartWords;
}

/** Everything of a fitting that is cut, as it stands now; null while there is no plan. */
export function fittingPatterns(
  derived: Pick<Derived, "step" | "input">,
  fitting: SettledFitting,
  cloth: Cloth,
  titles: PatternTitles,
): FittingPatterns | null {
  const current = derived.step();
  if (current === null) return null;
  assert(derived.input !== null, "a step has a plan, and a plan what it is made from");
  const cover = coverOfStep(current, derived.input, cloth);
  const parts = [
    ...battingPatterns(current, fitting, titles.layer),
    ...coverParts(cover, usualAllowances).map(
      (part, i): TitledPart => ({
        part,
        ...titles.panel((cover.panels[i] as (typeof cover.panels)[number]).name, cover),
      }),
    ),
  ];
  const girths = Object.fromEntries(levelNames.map((name) => [name, cover.girths[name]?.girth ?? 0]));
  return { file: patternFile(parts, girths, cloth.kind === "knit" ? cloth.stretch : 0), parts };
}

/** The cover for what the tape reads over the padding, or will read; with one more seam in front where the cloth must not ease so much. */
export function coverOfStep({ plan, replan }: CurrentStep, { body, form }: PlanInput, cloth: Cloth): FittedCover {
  const ground = coverGround(plan.levels, plan.pieces, {
    apexToApex: body.apexToApex ?? apexToApexEstimate(body.bustGirth ?? 0).value,
    lowerEdge: form.lowerEdgeBelowNape ?? null,
    read: plan.levels.map(({ name, depthBelowNape }) => ({
      name,
      depthBelowNape: depthBelowNape.value,
      girth: replan.finished[name].girth.value,
      front: replan.finished[name].frontArc.value,
    })),
  });
  const cover = fittedCover(ground, cloth);
  const isSeamAsked = coverMatters(cover).some(({ kind }) => kind === "sideFrontSeam");
  return isSeamAsked ? fittedCover({ ...ground, hasSideFrontSeams: true }, cloth) : cover;
}

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

const layerNumber = (partId: string): number => Number(partId.slice(partId.lastIndexOf("-") + 1));
