import { battingGood, type BattingGoodId, boughtLength, type ClothWidthId } from "../../core/supplies/goods";
import { type Millimetres, mm } from "../../core/units";
import type { LengthUnit } from "../../core/lengthText";
import type { SettledFitting } from "../../document/fitting";
import { derivation } from "../session/derived";
import { type BattingLayout, battingLayout, type ShapeToLay } from "./battingLayout";
import {
  battingSupplies,
  clothKind,
  chosenGood,
  chosenWidth,
  type CoverClothKind,
  coverSupply,
  notions,
  type Notions,
} from "./fittingSupplies";

/** What one fitting of a class still takes, before everything is laid together. */
export interface ShareOfClass {
  readonly battings: readonly {
    /** As it is called, without what differs only by capitals or spaces. */
    readonly name: string;
    readonly good: BattingGoodId;
    readonly shapes: readonly ShapeToLay[];
  }[];
  /** Of what the cover and the arm are cut from; null where neither is. */
  readonly cloth: {
    readonly kind: CoverClothKind;
    readonly width: ClothWidthId;
    readonly lengthMm: number;
    readonly hasCover: boolean;
    readonly hasArm: boolean;
  } | null;
  readonly notions: Notions;
}

/** Works one fitting out from the beginning, which takes as long as a plan does; null where it cannot be planned. Its pieces bear its letter. */
export function shareOfClass(fitting: SettledFitting, letter: string): ShareOfClass | null {
  const derived = derivation()(fitting);
  const current = derived.step();
  if (current === null || derived.input === null) return null;
  const battings = battingSupplies(current.plan, fitting);
  const cover = coverSupply(current, derived.input, fitting);
  return {
    battings: battings.map(({ role, shapes }) => ({
      name: ((role === "finishing" ? fitting.finishingBatting?.name : undefined) ?? fitting.batting.name).trim(),
      good: chosenGood(fitting, role),
      shapes: shapes.map((shape) => ({ ...shape, label: `${letter}${shape.label}` })),
    })),
    cloth:
      cover.ids.length === 0
        ? null
        : {
            kind: clothKind(fitting),
            width: chosenWidth(fitting),
            lengthMm: cover.rows.length,
            hasCover: cover.coverCount > 0,
            hasArm: cover.armCount > 0,
          },
    notions: notions(current, derived.input, fitting, battings, cover),
  };
}

export interface ClassSupplies {
  readonly battings: readonly { readonly name: string; readonly layout: BattingLayout }[];
  readonly cloths: readonly {
    readonly kind: CoverClothKind;
    readonly width: ClothWidthId;
    readonly covers: number;
    readonly arms: number;
    /** Each fitting's length is bought for itself. */
    readonly length: Millimetres;
  }[];
  readonly pins: number;
  readonly bastingThread: Millimetres;
  readonly sewingThread: Millimetres;
  readonly styleTape: Millimetres;
  readonly waistTape: Millimetres;
  readonly markingElastic: Millimetres;
  readonly openings: readonly Millimetres[];
  /** How many forms need an under-cover, have dials to tape, stand on a base to weight. */
  readonly underCovers: number;
  readonly dialed: number;
  readonly weighted: number;
  /** How many arms are still to be cut, and to be filled. */
  readonly armsCut: number;
  readonly armsFilled: number;
}

/**
 * Everything that several fittings take together: layers of the same batting from the same roll or packet are laid together, so
 * that what one leaves the next one uses.
 */
export function classSupplies(shares: readonly ShareOfClass[], unit: LengthUnit): ClassSupplies {
  const sum = (of: (share: ShareOfClass) => number): Millimetres =>
    mm(shares.reduce((total, share) => total + of(share), 0));
  const count = (is: (notions: Notions) => boolean): number => shares.filter((share) => is(share.notions)).length;
  const battings = grouped(
    shares.flatMap((share) => share.battings),
    ({ name, good }) => `${name.toLowerCase()} ${good}`,
  );
  const cloths = grouped(
    shares.flatMap(({ cloth }) => cloth ?? []),
    ({ kind, width }) => `${kind} ${width}`,
  );
  return {
    battings: battings.map(([first, ...others]) => ({
      name: first.name,
      layout: battingLayout(
        [first, ...others].flatMap(({ shapes }) => shapes),
        battingGood(first.good),
        unit,
      ),
    })),
    cloths: cloths.map(([first, ...others]) => ({
      kind: first.kind,
      width: first.width,
      covers: [first, ...others].filter(({ hasCover }) => hasCover).length,
      arms: [first, ...others].filter(({ hasArm }) => hasArm).length,
      length: mm([first, ...others].reduce((total, { lengthMm }) => total + boughtLength(lengthMm, unit), 0)),
    })),
    pins: sum((share) => share.notions.pins),
    bastingThread: sum((share) => share.notions.bastingThread),
    sewingThread: sum((share) => share.notions.sewingThread),
    styleTape: sum((share) => share.notions.styleTape),
    waistTape: sum((share) => share.notions.waistTape ?? 0),
    markingElastic: sum((share) => share.notions.markingElastic),
    openings: shares.flatMap((share) => share.notions.opening ?? []),
    underCovers: count(({ form }) => form.underCover === "needed"),
    dialed: count(({ form }) => form.hasDials),
    weighted: count(({ form }) => form.isWeighted),
    armsCut: count(({ arm }) => arm !== null),
    armsFilled: count(({ isArmFilled }) => isArmFilled),
  };
}

type Some<Item> = readonly [Item, ...Item[]];

function grouped<Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly Some<Item>[] {
  const groups = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}
