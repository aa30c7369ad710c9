import { act, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { expect, test, vi } from "vitest";
import demoFile from "../../shared/demo-fitting.json";
import { fittingStore } from "../../src/app/session/store";
import { assert } from "../../src/core/result";
import type { Fitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { Announcer } from "../../src/ui/kit/Announcer";
import { PaddingPage } from "../../src/ui/pages/padding/PaddingPage";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { type StopScreen, walkStops } from "../tools/stopWalk";

// A whole job is some dozens of plans.
vi.setConfig({ testTimeout: 240_000 });

const demo = readFitting(demoFile);
assert(demo.ok, "the demo fitting can be read");
const patience = { timeout: 30_000 };
const slab = () => {
  const button = document.querySelector<HTMLButtonElement>(".stop-slab");
  assert(button !== null, "every stop has its slab");
  return button;
};
const heading = () => screen.queryByRole("heading", { level: 1 })?.textContent ?? "";
const withoutTime = (work: Fitting["work"]) => work.map(({ at: _, ...entry }: { readonly at?: unknown }) => entry);

/** The screen as it is drawn here; a press counts only once the step is settled, as under a slow worker. */
const drawn: StopScreen = {
  headline: (words) => waitFor(() => expect(heading()).toBe(words), patience),
  slab: async () => void fireEvent.click(slab()),
  type: async (text) => {
    fireEvent.change(screen.getAllByRole("textbox")[0] as HTMLElement, { target: { value: text } });
    await waitFor(() => expect(slab().disabled).toBe(false), patience);
  },
  press: async (name) => void fireEvent.click(screen.getByRole("button", { name })),
};

test("a whole job through the screen: each headline is the next step of the same fitting, each press notes its record", async () => {
  const start: Fitting = { ...demo.value, form: { ...demo.value.form, readAtBodyLines: true } };
  const store = fittingStore(start);
  render(
    <StoreProvider store={store}>
      <Announcer>
        <PaddingPage />
      </Announcer>
    </StoreProvider>,
  );
  const { steps, taps, last } = await walkStops(start, drawn, (_, expected) => expected + 1);
  expect(steps.at(-1)).toBe("done");
  expect(steps).toEqual(expect.arrayContaining(["cut", "stack", "pin", "carry-lines", "read", "baste", "look"]));
  expect(withoutTime(store.getState().fitting.work)).toEqual(withoutTime(last.work));
  const firstPin = taps.findIndex(({ step }) => step === "pin");
  expect(taps.slice(0, firstPin + 1).reduce((sum, { count }) => sum + count, 0)).toBeLessThanOrEqual(6);
  const pieces = new Set(taps.flatMap(({ piece }) => piece ?? []));
  for (const piece of pieces) expect(taps.filter((tap) => tap.piece === piece).length).toBeLessThanOrEqual(3);
  act(() => store.undo());
  await waitFor(() => expect(heading()).toMatch(/^Look at the form/), patience);
});
