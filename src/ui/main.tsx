import { createRoot } from "react-dom/client";
import { fittingStore } from "../app/session/store";
import { assert } from "../core/result";
import "./shell/tokens.css";
import "./shell/base.css";
import "./shell/length.css";
import "./shell/workroom.css";
import "./shell/field.css";
import "./drawing/drawing.css";
import "./shell/places.css";
import "./shell/print.css";
import "./shell/library.css";
import { startShelf } from "./shell/startShelf";
import { newFitting, unitOfLanguage } from "../app/session/newFitting";
import { ToolBoundary } from "./kit/rescue/PageBoundary";
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
