import type { Keeping } from "../../app/storage/keeping";
import { forget, shelf, tell } from "./shelf";

/**
 * Tells which fittings are lost, if any are. The one being worked in is not lost as long as it is on the screen: it is
 * kept again at once, which is told by itself.
 */
export async function lookForGone(keeping: Keeping): Promise<void> {
  const { storage } = keeping.desk;
  const compared = await storage.gone();
  if (compared.kind !== "compared") return;
  const { open } = shelf.getState();
  const openId = open?.access === "writing" ? keeping.openId() : null;
  const fittings = compared.gone.filter(({ id }) => id !== openId);
  if (fittings.length < compared.gone.length) keeping.keepNow();
  if (fittings.length > 0) tell({ kind: "gone", fittings });
  else forget("gone");
  // What an older release kept is noted by name once it has been listed, which nobody waits for.
  if (!compared.isAllKnown) void storage.list();
}
