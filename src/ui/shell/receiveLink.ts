import { readLink } from "../../app/share/shareLink";
import type { Keeping } from "../../app/storage/keeping";
import type { FittingState } from "../../app/session/store";
import type { Fitting } from "../../document/fitting";
import { goTo } from "../kit/place";
import { forget, listMayHaveChanged, tell } from "../kit/shelf/shelf";

/**
 * Opens the fitting in a link, where nothing has been done on the table since something was put there. However slowly the
 * link opens, what somebody has changed meanwhile stays on the table, and she is asked.
 */
export async function receiveLink(keeping: Keeping, hash: string): Promise<void> {
  const read = await readLink(hash);
  if (!read.ok) return tell({ kind: "linkRefused", problem: read.problem.code });
  const outcome = await keeping.put(read.value, isUnchanged);
  if (outcome === "put") arrived();
  else tell({ kind: "linkWaits", fitting: read.value });
}

/** Nothing was done since the fitting came on the table. */
export const isUnchanged = ({ cause }: FittingState): boolean => cause === "load" || cause === "look";

/** The answer of somebody who wants it on the table now; hers is kept first. */
export async function openFromLink(keeping: Keeping, fitting: Fitting): Promise<void> {
  if ((await keeping.put(fitting)) !== "put") return tell({ kind: "tableNotKept" });
  forget("linkWaits");
  arrived();
}

/** The answer of somebody who wants both. */
export async function keepFromLink(keeping: Keeping, fitting: Fitting): Promise<void> {
  const { kind } = await keeping.desk.storage.add([fitting]);
  forget("linkWaits");
  tell({ kind: kind === "added" ? "linkAdded" : "linkNotAdded" });
  keeping.desk.channel.send({ kind: "listChanged" });
  listMayHaveChanged();
}

function arrived(): void {
  tell({ kind: "received" });
  goTo("plan");
}
