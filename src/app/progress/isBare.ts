import type { Fitting } from "../../document/fitting";

/** Whether the bare form can still be read: nothing is pinned. */
export const isBare = (work: Fitting["work"]): boolean => {
  const on = new Set<string>();
  for (const entry of work) {
    if (entry.did === "pinned") on.add(entry.piece.id);
    if (entry.did === "unpinned") on.delete(entry.pieceId);
  }
  return on.size === 0;
};
