import { isConfirmed, type PadProgress } from "../../app/progress/padProgress";
import { type FormStanding, formStanding } from "../../app/session/formStanding";
import { levelNames, requiredMeasurementNames } from "../../core/body/vocabulary";
import { placeStates } from "../../text/workroom";
import type { WorkPlace } from "../kit/place";
import { useDerived } from "../kit/useDerived";
import { useFitting } from "../kit/useStore";

/** How far the work at one place has come, under its name in the band. */
export function PlaceState({ place }: { readonly place: WorkPlace }) {
  return usePlaceStates()[place];
}

/** How far the work at each place has come, in two or three words. */
function usePlaceStates(): { readonly [place in WorkPlace]: string } {
  const fitting = useFitting();
  const { body } = fitting;
  const { planning, progress } = useDerived();
  const known = requiredMeasurementNames.filter((name) => body[name] !== undefined).length;
  const all = requiredMeasurementNames.length;
  const plan = planning.kind === "planned" ? planning.plan : null;
  return {
    body: known < all ? placeStates.girthsMissing(known, all) : placeStates.readings(Object.keys(body).length),
    form: formState(formStanding(fitting, planning)),
    plan: plan ? placeStates.planPieces(plan.pieces.length, plan.basis === "draft") : placeStates.planWaiting,
    padding: progress === null ? "" : paddingState(progress),
    finishing: "",
  };
}

function formState(standing: FormStanding): string {
  switch (standing.kind) {
    case "measured":
      return placeStates.formMeasured;
    case "chosen":
      return placeStates.formSize(standing.size);
    case "supposed":
      return placeStates.formSupposed(standing.size);
    case "unknown":
      return placeStates.formUnknown;
  }
}

/** A level whose tape was not read since its last piece is only expected to be right, however many pieces are on. */
function paddingState({ pieces, pinnedCount, now }: PadProgress): string {
  if (pieces.length === 0) return "";
  if (pinnedCount < pieces.length) return placeStates.pinned(pinnedCount, pieces.length);
  const read = levelNames.filter((level) => isConfirmed(now[level].girth)).length;
  return placeStates.allPinned(read, levelNames.length);
}
