import { isConfirmed, type PadProgress } from "../../app/progress/padProgress";
import { type FormStanding, formStanding } from "../../app/session/formStanding";
import { levelNames, requiredMeasurementNames } from "../../core/body/vocabulary";
import { pageStates } from "../../text/workroom";
import type { WorkPage } from "../kit/page";
import { useDerived } from "../kit/useDerived";
import { useFitting } from "../kit/useStore";

/** How far the work at one place has come, under its name in the band. */
export function PageState({ page }: { readonly page: WorkPage }) {
  return usePageStates()[page];
}

/** How far the work at each place has come, in two or three words. */
function usePageStates(): { readonly [page in WorkPage]: string } {
  const fitting = useFitting();
  const { body } = fitting;
  const { planning, progress } = useDerived();
  const known = requiredMeasurementNames.filter((name) => body[name] !== undefined).length;
  const all = requiredMeasurementNames.length;
  const plan = planning.kind === "planned" ? planning.plan : null;
  return {
    body: known < all ? pageStates.girthsMissing(known, all) : pageStates.readings(Object.keys(body).length),
    form: formState(formStanding(fitting, planning)),
    plan: plan ? pageStates.planPieces(plan.pieces.length, plan.basis === "draft") : pageStates.planWaiting,
    padding: progress === null ? "" : paddingState(progress),
    finishing: "",
  };
}

function formState(standing: FormStanding): string {
  switch (standing.kind) {
    case "measured":
      return pageStates.formMeasured;
    case "chosen":
      return pageStates.formSize(standing.size);
    case "supposed":
      return pageStates.formSupposed(standing.size);
    case "unknown":
      return pageStates.formUnknown;
  }
}

/** A level whose tape was not read since its last piece is only expected to be right, however many pieces are on. */
function paddingState({ pieces, pinnedCount, now }: PadProgress): string {
  if (pieces.length === 0) return "";
  if (pinnedCount < pieces.length) return pageStates.pinned(pinnedCount, pieces.length);
  const read = levelNames.filter((level) => isConfirmed(now[level].girth)).length;
  return pageStates.allPinned(read, levelNames.length);
}
