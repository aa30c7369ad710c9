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
  /** Null without a cover. */
  readonly cloth: { readonly kind: CoverClothKind; readonly width: ClothWidthId; readonly lengthMm: number } | null;
  readonly notions: Notions;
}

/** Works one fitting out from the beginning, which takes as long as a plan does; null where it cannot be planned. */
export function shareOfClass(fitting: SettledFitting, place: number): ShareOfClass | null {
  const derived = derivation()(fitting);
  const current = derived.step();
  if (current === null || derived.input === null) return null;
  const battings = battingSupplies(current.plan.pieces, fitting);
  const cover = coverSupply(current, derived.input, fitting);
  return {
    battings: battings.map(({ role, shapes }) => ({
      name: ((role === "finishing" ? fitting.finishingBatting?.name : undefined) ?? fitting.batting.name).trim(),
      good: chosenGood(fitting, role),
      shapes: shapes.map((shape) => ({ ...shape, label: `${letter(place)}${shape.label}` })),
    })),
    cloth:
      cover === null ? null : { kind: clothKind(fitting), width: chosenWidth(fitting), lengthMm: cover.rows.length },
    notions: notions(current, derived.input, fitting, battings, cover),
  };
}

/** A letter for each person of a class, on the pictures of what is laid together: A to Z, then AA. */
export const letter = (place: number): string =>
  place < 26 ? String.fromCharCode(65 + place) : `${letter(Math.floor(place / 26) - 1)}${letter(place % 26)}`;

export interface ClassSupplies {
  readonly battings: readonly { readonly name: string; readonly layout: BattingLayout }[];
  readonly cloths: readonly {
    readonly kind: CoverClothKind;
    readonly width: ClothWidthId;
    readonly covers: number;
    /** Each cover's length is bought for itself. */
    readonly length: Millimetres;
  }[];
  readonly pins: number;
  readonly bastingThread: Millimetres;
  readonly sewingThread: Millimetres;
  readonly styleTape: Millimetres;
  readonly waistTape: Millimetres;
  readonly markingElastic: Millimetres;
  readonly openings: readonly Millimetres[];
}

/**
 * Everything that several fittings take together: layers of the same batting from the same roll or packet are laid together, so
 * that what one leaves the next one uses.
 */
export function classSupplies(shares: readonly ShareOfClass[], unit: LengthUnit): ClassSupplies {
  const sum = (of: (share: ShareOfClass) => number): Millimetres =>
    mm(shares.reduce((total, share) => total + of(share), 0));
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
      covers: 1 + others.length,
      length: mm([first, ...others].reduce((total, { lengthMm }) => total + boughtLength(lengthMm, unit), 0)),
    })),
    pins: sum((share) => share.notions.pins),
    bastingThread: sum((share) => share.notions.bastingThread),
    sewingThread: sum((share) => share.notions.sewingThread ?? 0),
    styleTape: sum((share) => share.notions.styleTape),
    waistTape: sum((share) => share.notions.waistTape ?? 0),
    markingElastic: sum((share) => share.notions.markingElastic),
    openings: shares.flatMap((share) => share.notions.opening ?? []),
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
