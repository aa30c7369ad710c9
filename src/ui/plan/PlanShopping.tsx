import { type BattingRole, battingRoles } from "../../core/material";
import { cutArea } from "../../core/padding/cutSize";
import type { Plan } from "../../core/plan/plan";
import { formatArea } from "../area";
import { battingUse, withWaste } from "../batting/battingUse";
import { placeAddress } from "../place";
import { battingWords, twoBattingNames } from "../text/batting";
import { cutSize } from "../text/pieces";
import { planningWords } from "../text/planning";
import { useFitting, useLengths } from "../useStore";

/** How much of each batting to have, by the pieces themselves, and the way to the list of everything else. */
export function PlanShopping({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const { batting, finishingBatting } = useFitting();
  const use = battingUse(plan);
  const names = finishingBatting && twoBattingNames(batting.name, finishingBatting.name);
  const needed = battingRoles.flatMap((role) => {
    const largest = largestCut(plan, role);
    return largest === null ? [] : [{ role, largest }];
  });
  if (needed.length === 0) return null;
  return (
    <>
      <h3>{planningWords.shopping}</h3>
      <ul className="plain-list">
        {needed.map(({ role, largest }) => (
          <li key={role}>
            {planningWords.buy(
              (names?.[role] ?? batting.name) || battingWords.usual,
              formatArea(withWaste(use[role]), unit),
              cutSize(largest, step),
            )}
          </li>
        ))}
      </ul>
      <p>
        <a href={placeAddress("finishing")}>{planningWords.everythingElse}</a>
      </p>
    </>
  );
}

/** The cut that takes most room: a sheet must be at least as large. */
function largestCut({ pieces }: Plan, role: BattingRole): Plan["pieces"][number]["cut"] | null {
  const cuts = pieces.filter(({ batting }) => batting === role).map(({ cut }) => cut);
  return cuts.reduce<(typeof cuts)[number] | null>(
    (most, cut) => (most === null || cutArea(cut, 1) > cutArea(most, 1) ? cut : most),
    null,
  );
}
