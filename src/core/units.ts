/**
 * The quantities of the core. A length is always in millimetres, an angle in radians; a number that carries a brand
 * cannot be handed to a place that expects another. Brands are given once, where a function of the core returns.
 */
type UnitName = "mm" | "rad" | "ratio" | "mm2";

declare const unit: unique symbol;

export type Quantity<Unit extends UnitName> = number & { readonly [unit]: Unit };

export type Millimetres = Quantity<"mm">;
export type Radians = Quantity<"rad">;
export type Ratio = Quantity<"ratio">;
export type SquareMillimetres = Quantity<"mm2">;

export const mm = (value: number): Millimetres => value as Millimetres;
export const radians = (value: number): Radians => value as Radians;
export const ratio = (value: number): Ratio => value as Ratio;
export const squareMm = (value: number): SquareMillimetres => value as SquareMillimetres;
