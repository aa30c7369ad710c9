import { isBare } from "../../../app/progress/isBare";
import type { Plan } from "../../../core/plan/plan";
import { placeAddress } from "../place";
import { linesWords } from "../../../text/linesAtForm";
import { useFitting, useLengths } from "../useStore";
import "./draftNote.css";

/** What the address names to reach the work on the bare form. */
export const linesThing = "lines";

/**
 * Until the bare form was measured on the person's lines the plan is a draft: what it may miss by, and the way to the lines;
 * once a piece lies on the form, how the work makes up for it.
 */
export function DraftNote({ plan }: { readonly plan: Plan }) {
  const { write } = useLengths();
  const { work } = useFitting();
  if (plan.basis !== "draft") return null;
  const { note, makesFirm, begun, back } = linesWords.draft;
  const isOpen = isBare(work);
  return (
    <section className="draft-note">
      <p>
        <strong>{note(write(plan.mayMiss))}</strong> {isOpen ? makesFirm : begun}
      </p>
      {isOpen ? (
        <a className="patch patch-main" href={placeAddress("padding", linesThing)}>
          {back}
        </a>
      ) : null}
    </section>
  );
}
