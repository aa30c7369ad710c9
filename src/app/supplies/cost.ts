import type { Price, SuppliesEntry } from "../../document/suppliesSchema";
import { type BattingLayout, lengthOfRoll } from "./battingLayout";
import type { BattingSupply } from "./fittingSupplies";

/** One yard is 914.4 mm by the international yard and pound agreement of 1959. */
export const yardMm = 914.4;

const perLength = { yard: yardMm, meter: 1000 } as const;

/** What a length of cloth costs; null where the price is for something else. */
export const costOfLength = (price: Price | undefined, lengthMm: number): number | null =>
  price === undefined || price.per === "packet" ? null : (price.amount * lengthMm) / perLength[price.per];

/** What the batting of a layout costs; null where no price was typed, or one for something else than it is sold by. */
export function costOfLayout(price: Price | undefined, layout: BattingLayout): number | null {
  if (price === undefined) return null;
  if (layout.good.kind === "roll") return costOfLength(price, lengthOfRoll(layout));
  return price.per === "packet" ? price.amount * layout.sheets.length : null;
}

/** The sum of what prices were typed for, and whether some of what is bought has none; null where nothing has one. */
export interface Cost {
  readonly sum: number;
  readonly isWhole: boolean;
}

export function costOf(
  supplies: SuppliesEntry | undefined,
  battings: readonly Pick<BattingSupply, "role" | "layout">[],
  clothLengthMm: number | null,
): Cost | null {
  const each = [
    ...battings.map(({ role, layout }) => costOfLayout(supplies?.[role]?.price, layout)),
    ...(clothLengthMm === null ? [] : [costOfLength(supplies?.cover?.price, clothLengthMm)]),
    supplies?.notions ?? null,
  ];
  const known = each.filter((cost) => cost !== null);
  return known.length === 0
    ? null
    : { sum: known.reduce((sum, cost) => sum + cost, 0), isWhole: known.length === each.length };
}
