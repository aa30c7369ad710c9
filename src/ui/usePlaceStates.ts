import { requiredMeasurementNames } from "../core/body/vocabulary";
import type { WorkPlace } from "./place";
import { placeStates } from "./text/workroom";
import { useDerived } from "./useDerived";
import { useFitting } from "./useStore";

/** How far the work at each place has come, in two or three words. */
export function usePlaceStates(): { readonly [place in WorkPlace]: string } {
  const { body, form } = useFitting();
  const { planning, progress } = useDerived();
  const known = requiredMeasurementNames.filter((name) => body[name] !== undefined).length;
  const all = requiredMeasurementNames.length;
  const plan = planning.kind === "planned" ? planning.plan : null;
  return {
    body: known < all ? placeStates.girthsMissing(known, all) : placeStates.readings(Object.keys(body).length),
    form: formState(form, planning.kind === "planned" ? planning.size : null),
    plan: plan ? placeStates.planPieces(plan.pieces.length) : placeStates.planWaiting,
    padding:
      progress && progress.pieces.length > 0 ? placeStates.pinned(progress.pinnedCount, progress.pieces.length) : "",
    finishing: "",
  };
}

function formState(form: ReturnType<typeof useFitting>["form"], chosenSize: string | null): string {
  if (requiredMeasurementNames.every((name) => form[name] !== undefined)) return placeStates.formMeasured;
  const size = form.size ?? chosenSize;
  return size === null ? placeStates.formUnknown : placeStates.formSize(String(size));
}
