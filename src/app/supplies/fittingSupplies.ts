import { armParts } from "../../core/arm/armParts";
import type { Oval } from "../../core/arm/oval";
import type { SoftArm } from "../../core/arm/softArm";
import { levelNames, mapLevels } from "../../core/body/vocabulary";
import type { Cloth } from "../../core/cover/cloth";
import type { LengthUnit } from "../../core/lengthText";
import { type BattingRole, battingRoles } from "../../core/material";
import { battingParts } from "../../core/pattern/battingParts";
import { type Piece, pieceBatting } from "../../core/padding/piece";
import { partFrame } from "../../core/pattern/patternPart";
import type { Plan } from "../../core/plan/plan";
import { assert } from "../../core/result";
import { battingGood, type BattingGoodId, type ClothWidthId, clothWidths } from "../../core/supplies/goods";
import { type Millimetres, mm } from "../../core/units";
import type { PlanInput } from "../../core/plan/basis";
import { waistTape } from "../../core/plan/waistTape";
import type { Fitting } from "../../document/fitting";
import { isNoted } from "../progress/isNoted";
import { coverOfStep } from "../patterns/coverOfStep";
import { chosenCloth } from "../steps/chosenCloth";
import type { CurrentStep } from "../steps/currentStep";
import type { FormFacts } from "../steps/formFacts";
import { type BattingLayout, battingLayout, type ShapeToLay } from "./battingLayout";
import { aroundPart, type CoverCloth, coverCloth } from "./coverCloth";
import { trialShapes } from "./trialStrip";

/** One batting of a fitting: the layers that are still to be cut from it, laid on what it is bought as. */
export interface BattingSupply {
  readonly role: BattingRole;
  readonly pieces: readonly Piece[];
  readonly shapes: readonly ShapeToLay[];
  readonly layout: BattingLayout;
}

/** Pieces that were cut or pinned: they take nothing more, even when they were taken off the form again. */
export const piecesDone = ({ work }: Pick<Fitting, "work">): ReadonlySet<string> =>
  new Set(
    work.flatMap((entry) => {
      if (entry.did === "cut" || entry.did === "stacked" || entry.did === "unpinned") return [entry.pieceId];
      if (entry.did === "pinned") return [entry.piece.id];
      return entry.did === "basted" ? entry.pieceIds : [];
    }),
  );

/** What is bought unless something else was chosen: the widest roll of the unit that most shops have. A judgement. */
const usualGoods: { readonly [unit in LengthUnit]: BattingGoodId } = {
  in: "roll-90-in",
  cm: "roll-150-cm",
  mm: "roll-150-cm",
};

type Bought = Pick<Fitting, "unit" | "work" | "supplies">;

export const chosenGood = ({ unit, supplies }: Pick<Fitting, "unit" | "supplies">, role: BattingRole): BattingGoodId =>
  supplies?.[role]?.good ?? usualGoods[unit];

/**
 * Each batting that pieces are still to be cut from, with the strip of the trial while none was made. Pieces bear their number in
 * the order of pinning, layers theirs from the form outwards.
 */
export function battingSupplies(plan: Pick<Plan, "pieces" | "bareForm">, fitting: Bought): readonly BattingSupply[] {
  const done = piecesDone(fitting);
  const isTried = fitting.work.some(({ did }) => did === "trial");
  return battingRoles.flatMap((role) => {
    const own = plan.pieces.filter((piece) => pieceBatting(piece) === role && !done.has(piece.id));
    const trial = isTried || role !== "building" || own.length === 0 ? [] : trialShapes(plan);
    const shapes = [...own.flatMap(shapesOf), ...trial];
    const good = battingGood(chosenGood(fitting, role));
    return shapes.length === 0
      ? []
      : [{ role, pieces: own, shapes, layout: battingLayout(shapes, good, fitting.unit) }];
  });
}

export const shapesOf = (piece: Piece): readonly ShapeToLay[] =>
  battingParts(piece).map((part, i, all) => ({
    id: part.id,
    label: all.length === 1 ? String(piece.order) : `${piece.order}.${i + 1}`,
    part,
  }));

export type CoverClothKind = Cloth["kind"];
export const clothKind = (fitting: Pick<Fitting, "work" | "unit" | "supplies">): CoverClothKind =>
  chosenCloth(fitting).cloth.kind;
export const chosenWidth = ({ supplies }: Pick<Fitting, "supplies">): ClothWidthId =>
  supplies?.cover?.width ?? "150-cm";

/** The cover and the arm for where the work stands, laid on the cloth that was chosen; it takes a moment to work out. */
export function coverSupply(current: CurrentStep, input: PlanInput, fitting: Bought): CoverCloth {
  const { kind, cloth } = chosenCloth(fitting);
  return coverCloth(coverOfStep(current, input, cloth, fitting), {
    body: input.body,
    width: clothWidths[chosenWidth(fitting)],
    cover: isNoted(fitting, "coverCut") ? "none" : kind,
    arm: isNoted(fitting, "armCut") ? null : current.facts.arm,
  });
}

/** What else is needed, by number and length (mm). */
export interface Notions {
  readonly pins: number;
  readonly bastingThread: Millimetres;
  /** For the seams of the cover and the arm. */
  readonly sewingThread: Millimetres;
  readonly hasCover: boolean;
  /** Around bust and full hip, and along every seam of the cover. */
  readonly styleTape: Millimetres;
  readonly waistTape: Millimetres | null;
  /** One tied around the person at every level line. */
  readonly markingElastic: Millimetres;
  /** How long a woven cover opens at center back; null for knit. */
  readonly opening: Millimetres | null;
  /** What the form asks for, by what it is made of. */
  readonly form: FormNotions;
  /** Besides its fabric, what the arm is still made of; null where none is, or it is cut. */
  readonly arm: ArmNotions | null;
  /** Whether fiber is still to be filled into an arm. */
  readonly isArmFilled: boolean;
}

export interface FormNotions {
  /** "unsaid" while nobody said what the form is made of. */
  readonly underCover: "needed" | "unsaid" | "none";
  readonly hasDials: boolean;
  readonly isWeighted: boolean;
}

/** The tab's cloth with its allowances, and the two cards (mm). */
export interface ArmNotions {
  readonly tab: { readonly width: Millimetres; readonly length: Millimetres };
  readonly capCard: Oval;
  readonly wristCard: Oval;
}

/** Common practice, no source: a dozen pins to each piece. */
const pinsPerPiece = 12;
/** Around each layer once, half as much again for long stitches through and knots. Common practice, no source. */
const bastingPerEdge = 1.5;
/** Upper and lower thread of a straight stitch, and of one that gives. From memory. */
const threadPerSeam: { readonly [kind in CoverClothKind]: number } = { woven: 3, knit: 5 };
/** For a knot (mm). Common practice, no source. */
const knot = 100;

export function notions(
  current: CurrentStep,
  input: PlanInput,
  fitting: Bought,
  battings: readonly BattingSupply[],
  cover: CoverCloth,
): Notions {
  const girths = mapLevels((name): number => current.replan.finished[name].girth.value);
  const cloth = clothKind(fitting);
  const shapes = battings.flatMap((one) => one.shapes);
  const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0);
  return {
    pins: pinsPerPiece * current.plan.pieces.length,
    bastingThread: mm(bastingPerEdge * sum(shapes.map(({ part }) => aroundPart(part)))),
    sewingThread: mm(threadPerSeam[cloth] * cover.sewn),
    hasCover: cover.coverCount > 0,
    styleTape: mm(girths.bust + girths.fullHip + cover.seams),
    waistTape: waistTape(current.plan, input.body).length,
    markingElastic: mm(sum(levelNames.map((name) => girths[name] + knot))),
    opening: cover.opening,
    form: formNotions(current.facts.form),
    arm: current.facts.arm === null || isNoted(fitting, "armCut") ? null : armNotions(current.facts.arm),
    isArmFilled: current.facts.arm !== null && !isNoted(fitting, "armFilled"),
  };
}

const formNotions = ({ kind, hasUnderCover }: FormFacts): FormNotions => ({
  underCover: hasUnderCover ? "needed" : kind === null ? "unsaid" : "none",
  hasDials: kind === "dials",
  isWeighted: kind === "stretch",
});

function armNotions(arm: SoftArm): ArmNotions {
  const tab = armParts(arm).find(({ name }) => name === "tab");
  assert(tab !== undefined, "every arm has a tab");
  const { width, height } = partFrame(tab.part);
  return { tab: { width: mm(width), length: mm(height) }, capCard: arm.capCard, wristCard: arm.wristCard };
}
