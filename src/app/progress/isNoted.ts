import type { Fitting, Making } from "../../document/fitting";

/** Whether the log tells of something over the padding, made or left out: nothing of it is bought or chosen any more. */
export const isNoted = ({ work }: Pick<Fitting, "work">, what: Making): boolean =>
  work.some((entry) => entry.did === "made" && entry.what === what);
