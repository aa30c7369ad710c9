import type { Fitting } from "../../document/fitting";

/** Where in the log the padding was last changed, or before its first entry; a cover over it was off then. */
export const lastChange = (work: Fitting["work"]): number =>
  work.findLastIndex(({ did }) => did === "pinned" || did === "unpinned" || did === "trimmed");
