import { type Millimetres, mm } from "../units";

/**
 * Batting and cloth as they are sold. The packet of 81 × 96 in is published (V. Rankin, Padding a Dress Form, Home Economics
 * Guide GH0325, 1979, list of supplies); every other size is from memory and differs between makers, so the person chooses.
 */
export type BattingGood =
  | { readonly kind: "roll"; readonly id: BattingGoodId; readonly soldIn: "in" | "cm"; readonly width: Millimetres }
  | {
      readonly kind: "packet";
      readonly id: BattingGoodId;
      readonly width: Millimetres;
      readonly length: Millimetres;
    };

export const battingGoodIds = [
  "roll-45-in",
  "roll-60-in",
  "roll-90-in",
  "roll-96-in",
  "roll-115-cm",
  "roll-150-cm",
  "roll-220-cm",
  "packet-45x60-in",
  "packet-72x90-in",
  "packet-81x96-in",
  "packet-90x108-in",
  "packet-120x120-in",
] as const;
export type BattingGoodId = (typeof battingGoodIds)[number];

/** The size stands in the id. */
export function battingGood(id: BattingGoodId): BattingGood {
  const [kind, size = "", soldIn] = id.split("-");
  const each = soldIn === "cm" ? 10 : 25.4;
  const [width, length] = size.split("x").map((side) => mm(Number(side) * each)) as [Millimetres, Millimetres?];
  return kind === "packet" && length !== undefined
    ? { kind: "packet", id, width, length }
    : { kind: "roll", id, soldIn: soldIn === "cm" ? "cm" : "in", width };
}

/**
 * Widths that cloth for a cover is sold in, each the narrower of what two countries call the same: 150 cm or 60 in, 115 cm or
 * 45 in. From memory.
 */
export const clothWidthIds = ["150-cm", "115-cm"] as const;
export type ClothWidthId = (typeof clothWidthIds)[number];
export const clothWidths: { readonly [id in ClothWidthId]: Millimetres } = {
  "150-cm": mm(1500),
  "115-cm": mm(45 * 25.4),
};

/** Lengths are cut in shops by the eighth of a yard or by 10 cm. Common practice, no source. */
export const cutStep = { in: mm((36 * 25.4) / 8), cm: mm(100), mm: mm(100) } as const;

/** What is asked for in a shop for a length that is needed (mm): the next step upwards, but for the last digits of a sum. */
export const boughtLength = (length: number, unit: keyof typeof cutStep): Millimetres =>
  mm(Math.ceil(Number((length / cutStep[unit]).toFixed(6))) * cutStep[unit]);
