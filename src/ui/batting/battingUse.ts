import type { BattingRole } from "../../core/material";
import { cutArea } from "../../core/padding/cutSize";
import type { Plan } from "../../core/plan/plan";
import { squareMm, type SquareMillimetres } from "../../core/units";

/** How much of each batting a plan asks for, laid flat (mm²). */
export function battingUse({ pieces }: Plan): { readonly [role in BattingRole]: SquareMillimetres } {
  const areaOf = (role: BattingRole): SquareMillimetres =>
    squareMm(
      pieces.filter(({ batting }) => batting === role).reduce((area, { cut, plies }) => area + cutArea(cut, plies), 0),
    );
  return { building: areaOf("building"), finishing: areaOf("finishing") };
}

/** With what lies between the pieces on the sheet. Common practice, no source: a quarter more than the pieces. */
export const withWaste = (area: SquareMillimetres): SquareMillimetres => squareMm(area * 1.25);

/** The one batting every piece is cut from; null where both are used, or none. */
export function onlyBatting({ pieces }: Plan): BattingRole | null {
  const [first] = pieces;
  return first !== undefined && pieces.every(({ batting }) => batting === first.batting) ? first.batting : null;
}
