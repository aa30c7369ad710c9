import { type NotSaved, notSaved, type SaveOutcome } from "./fittingOutcome";
import type { Desk } from "./openFitting";
import { takePen } from "./pen";

/** Names a fitting that is not on the table. The name is part of it, so this needs its pen, and is a step to undo. */
export async function renameFitting(
  { storage, locks, channel }: Desk,
  id: string,
  title: string,
): Promise<SaveOutcome> {
  const answer = await takePen(locks, id, "ifFree");
  if (answer.kind === "elsewhere") return notSaved("changedElsewhere", "another tab has the pen");
  const loaded = await storage.load(id);
  const outcome: SaveOutcome | NotSaved =
    loaded.kind === "loaded"
      ? await storage.save({
          id,
          baseRevision: loaded.entry.revision,
          mark: storage.newId(),
          earlierMarks: [],
          fitting: { ...loaded.fitting, title },
          history: { past: [...loaded.history.past, loaded.fitting], future: [] },
        })
      : notSaved(
          loaded.kind === "newer" ? "newerRecord" : loaded.kind === "missing" ? "missing" : "failed",
          loaded.kind,
        );
  if (answer.kind === "held") answer.pen.letGo();
  if (outcome.kind === "saved") channel.send({ kind: "saved", id, revision: outcome.entry.revision });
  return outcome;
}
