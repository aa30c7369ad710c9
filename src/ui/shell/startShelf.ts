import { takeLink } from "../../app/share/linkAddress";
import type { FittingStore } from "../../app/session/store";
import { tell } from "../kit/shelf/shelf";

/**
 * Takes a shared fitting out of the address before anything else sees it, and loads the keeping once the first screen
 * is there. Where the keeping cannot be loaded the tool works on, and says that nothing is kept.
 */
export function startShelf(store: FittingStore): void {
  const shared = takeLink(window);
  void import("./openShelf").then(
    ({ openShelf }) => openShelf(store, shared),
    () => tell({ kind: "notLoaded" }),
  );
}
