import type { Keeping } from "../../../app/storage/keeping";
import { forget, tell } from "./shelf";

/** Tells which fittings are lost, if any are, and stops telling it once they are back. */
export async function lookForGone(keeping: Keeping): Promise<void> {
  const fittings = await keeping.lost();
  if (fittings === null) return;
  if (fittings.length > 0) tell({ kind: "gone", fittings });
  else forget("gone");
}
