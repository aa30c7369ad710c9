import { createRoot } from "react-dom/client";
import { newFitting, unitOfLanguage } from "../app/session/newFitting";
import { type FittingStore, fittingStore } from "../app/session/store";
import { takeLink } from "../app/share/linkAddress";
import { assert } from "../core/result";
import "./shell/tokens.css";
import "./shell/base.css";
import "./shell/length.css";
import "./shell/workroom.css";
import "./shell/field.css";
import "./drawing/drawing.css";
import "./shell/pages.css";
import "./shell/print.css";
import "./shell/library.css";
import { ToolBoundary } from "./kit/rescue/PageBoundary";
import { tell } from "./kit/shelf/shelf";
import { demoAddress, openDemo } from "./kit/shelf/useDemo";
import { StoreProvider } from "./kit/useStore";
import { Workroom } from "./shell/Workroom";

/** The one place where things are joined: the store, what keeps it, and the screens. */
const store = fittingStore(newFitting(unitOfLanguage(navigator.language)));
if (window.location.hash === demoAddress) void openDemo(store);
window.addEventListener("hashchange", () => {
  if (window.location.hash === demoAddress) void openDemo(store);
});

startShelf(store);

const root = document.getElementById("app");
assert(root !== null, "the page has a place for the workroom");
createRoot(root).render(
  <StoreProvider store={store}>
    <ToolBoundary>
      <Workroom />
    </ToolBoundary>
  </StoreProvider>,
);

/**
 * Takes a shared fitting out of the address before anything else sees it, and loads the keeping once the first screen
 * is there. Where the keeping cannot be loaded the tool works on, and says that nothing is kept.
 */
function startShelf(store: FittingStore): void {
  const shared = takeLink(window);
  void import("./shell/openShelf").then(
    ({ openShelf }) => openShelf(store, shared),
    () => tell({ kind: "notLoaded" }),
  );
}
