import { createRoot } from "react-dom/client";
import { fittingStore } from "../app/store";
import { assert } from "../core/result";
import "./tokens.css";
import "./base.css";
import "./length.css";
import "./workroom.css";
import "./field/field.css";
import "./drawing/drawing.css";
import "./places.css";
import "./print/print.css";
import "./library/library.css";
import { startShelf } from "./library/startShelf";
import { newFitting, unitOfLanguage } from "./newFitting";
import { ToolBoundary } from "./rescue/PageBoundary";
import { demoAddress, openDemo } from "./useDemo";
import { StoreProvider } from "./useStore";
import { Workroom } from "./Workroom";

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
