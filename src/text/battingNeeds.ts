import type { LengthUnit } from "../core/lengthText";
import { type BattingRole, battingRoles } from "../core/material";
import { cutArea } from "../core/padding/layerCuts";
import { pieceBatting } from "../core/padding/piece";
import type { Plan } from "../core/plan/plan";
import { type SquareMillimetres, squareMm } from "../core/units";
import type { Fitting } from "../document/fitting";
import { battingWords, twoBattingNames } from "./batting";
import { unbroken } from "./shownLength";

/** How much of each batting the pieces of a plan take, laid flat (mm²). */
function battingUse({ pieces }: Plan): { readonly [role in BattingRole]: SquareMillimetres } {
  const areaOf = (role: BattingRole): SquareMillimetres =>
    squareMm(
      pieces
        .filter((piece) => pieceBatting(piece) === role)
        .flatMap(({ cut }) => cut)
        .reduce((area, cut) => area + cutArea(cut), 0),
    );
  return { building: areaOf("building"), finishing: areaOf("finishing") };
}

/** With what lies between the pieces on the sheet. Common practice, no source: a quarter more than the pieces. */
const withWaste = (area: SquareMillimetres): SquareMillimetres => squareMm(area * 1.25);

/** One batting a plan takes: what it is called and how much of it to have (mm²). */
interface BattingNeed {
  readonly role: BattingRole;
  readonly name: string;
  readonly area: SquareMillimetres;
}

/** The battings a plan is cut from, with what lies between the pieces; none that no piece is cut from. */
export function battingNeeds(
  plan: Plan,
  { batting, finishingBatting }: Pick<Fitting, "batting" | "finishingBatting">,
): readonly BattingNeed[] {
  const use = battingUse(plan);
  const names = finishingBatting && twoBattingNames(batting.name, finishingBatting.name);
  return battingRoles
    .filter((role) => plan.pieces.some((piece) => pieceBatting(piece) === role))
    .map((role) => ({
      role,
      name: (names?.[role] ?? batting.name) || battingWords.usual,
      area: withWaste(use[role]),
    }));
}

/** The one batting every piece is cut from; null where both are used, or none. */
export function onlyBatting({ pieces }: Plan): BattingRole | null {
  const [first, ...others] = pieces.map(pieceBatting);
  return first !== undefined && others.every((batting) => batting === first) ? first : null;
}

/** An area of batting as it is bought: square yards where lengths are in inches, else square metres; to a tenth, upwards. */
export function formatArea(area: SquareMillimetres, unit: LengthUnit): string {
  const perUnit = unit === "in" ? squareYardMm2 : squareMetreMm2;
  const amount = Math.ceil((area / perUnit) * 10) / 10;
  return unbroken(`${amount} ${unit === "in" ? "sq yd" : "m²"}`);
}

/** One yard is 914.4 mm by the international yard and pound agreement of 1959. */
const squareYardMm2 = 914.4 ** 2;
const squareMetreMm2 = 1e6;
