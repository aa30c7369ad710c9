import { readLink } from "../../app/share/shareLink";
import type { Autosave } from "../../app/storage/autosave";
import type { FittingState } from "../../app/session/store";
import type { Fitting } from "../../document/fitting";
import { goTo } from "../kit/page";
import { forget, listMayHaveChanged, tell } from "../kit/shelf/shelf";

/**
 * Opens the fitting in a link, where nothing has been done since something was opened. However slowly the
 * link opens, what somebody has changed meanwhile stays open, and she is asked.
 */
export async function receiveLink(autosave: Autosave, hash: string): Promise<void> {
  const read = await readLink(hash);
  if (!read.ok) return tell({ kind: "linkRefused", problem: read.problem.code });
  const outcome = await autosave.put(read.value, isUnchanged);
  if (outcome === "put") arrived();
  else tell({ kind: "linkWaits", fitting: read.value });
}

/** Nothing was done since the fitting was opened. */
export const isUnchanged = ({ cause }: FittingState): boolean => cause === "load" || cause === "look";

/** The answer of somebody who wants it open now; hers is kept first. */
export async function openFromLink(autosave: Autosave, fitting: Fitting): Promise<void> {
  if ((await autosave.put(fitting)) !== "put") return tell({ kind: "tableNotKept" });
  forget("linkWaits");
  arrived();
}

/** The answer of somebody who wants both. */
export async function keepFromLink(autosave: Autosave, fitting: Fitting): Promise<void> {
  const { kind } = await autosave.context.storage.add([fitting]);
  forget("linkWaits");
  tell({ kind: kind === "added" ? "linkAdded" : "linkNotAdded" });
  autosave.context.channel.send({ kind: "listChanged" });
  listMayHaveChanged();
}

function arrived(): void {
  tell({ kind: "received" });
  goTo("plan");
}
