import { cleanup, renderHook } from "@testing-library/react";
import type { ReactNode } from "react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { newFitting } from "../../src/app/session/newFitting";
import { fittingStore } from "../../src/app/session/store";
import { libraryWords } from "../../src/text/library";
import { goTo } from "../../src/ui/kit/page";
import { useOpening } from "../../src/ui/kit/shelf/useOpening";
import { StoreProvider } from "../../src/ui/kit/useStore";

/** Where one is after a kept fitting was opened, when opening took its time. The second was seen to fail with a way that always leads on. */
beforeEach(() => goTo("fittings"));
afterEach(cleanup);

function opening() {
  let answer: (outcome: "open" | "missing") => void = () => {};
  const open = () =>
    new Promise<"open" | "missing">((resolve) => {
      answer = resolve;
    });
  const store = fittingStore(newFitting("in"));
  const wrapper = ({ children }: { readonly children: ReactNode }) => (
    <StoreProvider store={store}>{children}</StoreProvider>
  );
  const { result } = renderHook(() => useOpening({ open }), { wrapper });
  const opened = result.current("odile-0001");
  return async (outcome: "open" | "missing") => {
    answer(outcome);
    return await opened;
  };
}

test("it leads to where the work of the fitting stands", async () => {
  const isOpened = opening();
  expect(await isOpened("open")).toBeNull();
  expect(window.location.hash).toBe("#person");
});

test("whoever went elsewhere meanwhile stays there", async () => {
  const isOpened = opening();
  goTo("form");
  expect(await isOpened("open")).toBeNull();
  expect(window.location.hash).toBe("#form");
});

test("one that cannot be opened leads nowhere and is told", async () => {
  const isOpened = opening();
  expect(await isOpened("missing")).toBe(libraryWords.cannotOpen);
  expect(window.location.hash).toBe("#fittings");
});
