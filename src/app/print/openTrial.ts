import { isStructure } from "../../core/padding/piece";
import type { Plan } from "../../core/plan/plan";
import type { Fitting, WorkEntry } from "../../document/fitting";

type Trial = Extract<WorkEntry, { readonly did: "trial" }>;
type TrialRead = Trial & Required<Pick<Trial, "before" | "after">>;

/** The trial that was noted with both of its readings last; nothing where it was passed over or is still to come. */
export const trialRead = (work: Fitting["work"]): TrialRead | undefined =>
  work.findLast(
    (entry): entry is TrialRead => entry.did === "trial" && entry.before !== undefined && entry.after !== undefined,
  );

/** Whether it is still open what a layer adds when the first piece is cut: then the sheets hold for several battings. */
export const openTrial = ({ pieces }: Plan, work: Fitting["work"]): boolean =>
  trialRead(work) === undefined && pieces.some(isStructure) && !work.some(({ did }) => did === "pinned");
