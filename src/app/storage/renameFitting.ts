import { notSaved, type SaveOutcome } from "./fittingOutcome";
import type { Desk } from "./openFitting";
import { takePen } from "./pen";

/** Names a fitting that is not on the table. The name is part of it, so this needs its pen, and is a step to undo. */
export async function renameFitting(desk: Desk, id: string, title: string): Promise<SaveOutcome> {
  const pen = await takePen(desk.locks, id, { ifAvailable: true });
  if (pen === null) return notSaved("changedElsewhere", "another tab has the pen");
  const outcome = await renamed(desk, id, title);
  pen.letGo();
  if (outcome.kind === "saved") desk.channel.send({ kind: "saved", id, revision: outcome.entry.revision });
  return outcome;
}

async function renamed({ storage }: Desk, id: string, title: string): Promise<SaveOutcome> {
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
