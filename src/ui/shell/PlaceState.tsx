import type { WorkPlace } from "../kit/place";
import { usePlaceStates } from "./usePlaceStates";

/** How far the work at one place has come, under its name in the band. */
export function PlaceState({ place }: { readonly place: WorkPlace }) {
  return usePlaceStates()[place];
}
