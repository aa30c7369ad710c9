/**
 * Does work once the frame that is being made is out, so that what a person does now is shown before it. All that waits
 * for one frame is done together; the answer calls it off. A page that is put aside makes no frames: there the work waits
 * until it is looked at again.
 */
export function afterFrame(work: () => void): () => void {
  const turns = next ?? startWaiting();
  // A wrapper of its own, so that the same work may wait twice.
  const turn = () => work();
  turns.add(turn);
  return () => turns.delete(turn);
}

/** What is painted and put on the screen beside this thread is not held up by the work that waited. */
const paintingMs = 20;

/** What waits for the frame that is being made. */
let next: Set<() => void> | null = null;

function startWaiting(): Set<() => void> {
  const turns = new Set<() => void>();
  next = turns;
  requestAnimationFrame(() => {
    next = null;
    setTimeout(() => {
      for (const turn of turns) turn();
    }, paintingMs);
  });
  return turns;
}
