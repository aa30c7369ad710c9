import { levelNames, mapLevels } from "../../core/body/vocabulary";
import type { Cloth } from "../../core/cover/cloth";
import type { LengthUnit } from "../../core/lengthText";
import { type BattingRole, battingRoles } from "../../core/material";
import { battingParts } from "../../core/pattern/battingParts";
import { type Piece, pieceBatting } from "../../core/padding/piece";
import { battingGood, type BattingGoodId, type ClothWidthId, clothWidths } from "../../core/supplies/goods";
import { type Millimetres, mm } from "../../core/units";
import type { PlanInput } from "../../core/plan/basis";
import { waistTape } from "../../core/plan/waistTape";
import type { Fitting } from "../../document/fitting";
import { coverOfStep } from "../patterns/coverOfStep";
import { chosenCloth } from "../steps/chosenCloth";
import type { CurrentStep } from "../steps/currentStep";
import { type BattingLayout, battingLayout, type ShapeToLay } from "./battingLayout";
import { aroundPart, type CoverCloth, coverCloth } from "./coverCloth";

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

/** Each batting that pieces are still to be cut from. Pieces bear their number in the order of pinning, layers theirs from the form outwards. */
export function battingSupplies(pieces: readonly Piece[], fitting: Bought): readonly BattingSupply[] {
  const done = piecesDone(fitting);
  return battingRoles.flatMap((role) => {
    const own = pieces.filter((piece) => pieceBatting(piece) === role && !done.has(piece.id));
    const shapes = own.flatMap(shapesOf);
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

/** The cover for where the work stands, laid on the cloth that was chosen; it takes a moment to work out. Null where there is to be none. */
export function coverSupply(current: CurrentStep, input: PlanInput, fitting: Bought): CoverCloth | null {
  const { kind, cloth } = chosenCloth(fitting);
  return kind === "none"
    ? null
    : coverCloth(coverOfStep(current, input, cloth, fitting), input.body, clothWidths[chosenWidth(fitting)]);
}

/** What else is needed, by number and length (mm). */
export interface Notions {
  readonly pins: number;
  readonly bastingThread: Millimetres;
  /** For the seams of the cover; null without one. */
  readonly sewingThread: Millimetres | null;
  /** Around bust and full hip, and along every seam of the cover if there is one. */
  readonly styleTape: Millimetres;
  readonly waistTape: Millimetres | null;
  /** One tied around the person at every level line. */
  readonly markingElastic: Millimetres;
  /** How long a woven cover opens at center back; null for knit. */
  readonly opening: Millimetres | null;
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
  cover: CoverCloth | null,
): Notions {
  const girths = mapLevels((name): number => current.replan.finished[name].girth.value);
  const cloth = clothKind(fitting);
  const shapes = battings.flatMap((one) => one.shapes);
  const sum = (lengths: readonly number[]): number => lengths.reduce((total, length) => total + length, 0);
  return {
    pins: pinsPerPiece * current.plan.pieces.length,
    bastingThread: mm(bastingPerEdge * sum(shapes.map(({ part }) => aroundPart(part)))),
    sewingThread: cover === null ? null : mm(threadPerSeam[cloth] * cover.seams),
    styleTape: mm(girths.bust + girths.fullHip + (cover?.seams ?? 0)),
    waistTape: waistTape(current.plan, input.body)?.length ?? null,
    markingElastic: mm(sum(levelNames.map((name) => girths[name] + knot))),
    opening: cloth === "woven" ? (cover?.opening ?? null) : null,
  };
}
