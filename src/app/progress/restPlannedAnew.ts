import type { Fitting } from "../../document/fitting";
import { isBare } from "./isBare";

/**
 * The body, the form or a batting has changed under pieces that are pinned already, as when a person is measured again
 * months later. The pieces stay where they are, and the log says that the rest is planned anew from there: the plan
 * then asks for the change alone, where a plan for the bare form would take old pieces for its own. Nothing is added
 * while nothing is pinned, or where the rest was planned anew since the last piece went on or came off.
 */
export function restPlannedAnew(before: Fitting, after: Fitting): Fitting {
  const isChanged = planned(before) !== planned(after);
  return isChanged && isUnderWay(after) ? { ...after, work: [...after.work, { did: "replanned" }] } : after;
}

/** Everything the first plan is made of, as one text; in which order it was typed plays no part. */
const planned = ({ body, form, batting, finishingBatting }: Fitting): string =>
  JSON.stringify([body, form, thickness(batting), thickness(finishingBatting)].map(inOrder));

const thickness = (batting: Fitting["finishingBatting"]): object => ({ ...batting, name: "" });

const inOrder = (entries: object): readonly string[] =>
  Object.entries(entries)
    .map(([name, entry]) => `${name} ${String(entry)}`)
    .toSorted();

function isUnderWay({ work }: Fitting): boolean {
  const last = work.findLast(({ did }) => did === "pinned" || did === "unpinned" || did === "replanned");
  return !isBare(work) && last?.did !== "replanned";
}
