import { notSaved, type SaveOutcome } from "./fittingOutcome";
import type { StorageContext } from "./openFitting";
import { takeWriteLock } from "./writeLock";

/** Names a fitting that is not open. The name is part of it, so this needs its write lock, and is a step to undo. */
export async function renameFitting(context: StorageContext, id: string, title: string): Promise<SaveOutcome> {
  const lock = await takeWriteLock(context.locks, id, { ifAvailable: true });
  if (lock === null) return notSaved("changedElsewhere", "another tab has the write lock");
  const outcome = await renamed(context, id, title);
  lock.letGo();
  if (outcome.kind === "saved") context.channel.send({ kind: "saved", id, revision: outcome.entry.revision });
  return outcome;
}

async function renamed({ storage }: StorageContext, id: string, title: string): Promise<SaveOutcome> {
  const loaded = await storage.load(id);
  if (loaded.kind === "newer") return notSaved("newerRecord", loaded.kind);
  if (loaded.kind !== "loaded") return notSaved(loaded.kind === "missing" ? "missing" : "failed", loaded.kind);
  const { entry, fitting, history } = loaded;
  return storage.save({
    id,
    baseRevision: entry.revision,
    mark: storage.newId(),
    earlierMarks: [],
    fitting: { ...fitting, title },
    history: { past: [...history.past, fitting], future: [] },
  });
}
