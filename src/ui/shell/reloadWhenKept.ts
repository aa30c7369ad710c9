import { type ShelfState, shelf } from "../kit/shelf/shelf";

/** Loads the page anew, and never overtakes a save: what was typed in the last moment is kept first. */
export function reloadWhenKept(reload: () => void = () => window.location.reload()): void {
  if (isAtRest(shelf.getState())) {
    reload();
    return;
  }
  const stop = shelf.subscribe((state) => {
    if (!isAtRest(state)) return;
    stop();
    reload();
  });
}

const isAtRest = ({ open }: ShelfState): boolean => open === null || restingStates.has(open.saving.kind);

const restingStates: ReadonlySet<string> = new Set(["saved", "nothingYet"]);
