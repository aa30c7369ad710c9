import "./stop.css";
import type { Plan } from "../../../core/plan/plan";
import { placeAddress } from "../../place";
import { linesWords } from "../../text/linesAtForm";
import { useLengths } from "../../useStore";

/** What the address names to reach the work on the bare form. */
export const linesThing = "lines";

/** Until the bare form was measured on the person's lines the plan is a draft: what it may miss by, and the way to the lines. */
export function DraftNote({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  return (
    <section className="draft-note">
      <p>{linesWords.draft.note(write(plan.mayMiss))}</p>
      <a className="patch patch-main" href={placeAddress("padding", linesThing)}>
        {linesWords.draft.back}
      </a>
    </section>
  );
}
