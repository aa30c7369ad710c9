import type { BattingRole } from "../../../core/material";
import { cutArea } from "../../../core/padding/layerCuts";
import type { LayerCut } from "../../../core/padding/layerCut";
import { pieceBatting } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { battingNeeds, formatArea } from "../../../text/battingNeeds";
import { placeAddress } from "../../kit/place";
import { battingNeed } from "../../../text/batting";
import { cutSize } from "../../../text/pieces";
import { planningWords } from "../../../text/planning";
import { useFitting, useLengths } from "../../kit/useStore";

/** How much of each batting to have, by the pieces themselves, and the way to the list of everything else. */
export function PlanShopping({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const needs = battingNeeds(plan, useFitting());
  if (needs.length === 0) return null;
  return (
    <>
      <h3>{planningWords.shopping}</h3>
      <ul className="plain-list">
        {needs.map(({ role, name, area }) => (
          <li key={role}>
            {battingNeed(name, formatArea(area, unit))} {planningWords.largest(cutSize(largestCut(plan, role), step))}
          </li>
        ))}
      </ul>
      <p>
        <a href={placeAddress("finishing")}>{planningWords.everythingElse}</a>
      </p>
    </>
  );
}

/** The cut of a batting that takes most room: a sheet must be at least as large. Some piece is cut from it. */
function largestCut({ pieces }: Plan, role: BattingRole): LayerCut {
  return pieces
    .filter((piece) => pieceBatting(piece) === role)
    .flatMap(({ cut }) => cut)
    .reduce((most, cut) => (cutArea(cut) > cutArea(most) ? cut : most));
}
