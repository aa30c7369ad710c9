import { fireEvent, render, screen, waitFor } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import type { Command } from "../../src/app/session/commands";
import { fittingStore } from "../../src/app/session/store";
import { LearningPart } from "../../src/ui/pages/padding/LearningPart";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { sampleForm } from "../support/sample";

const at = "2026-01-02T03:04:05.000Z";
const patience = { timeout: 30_000 };

const shown = (...commands: readonly Command[]) => {
  const store = fittingStore(demoFitting);
  for (const command of commands) store.dispatch(command);
  render(
    <StoreProvider store={store}>
      <LearningPart />
    </StoreProvider>,
  );
  return store;
};

test("what a layer adds, guessed before anything is read, and learned from a trial that can be ignored", async () => {
  shown();
  expect(await screen.findByRole("heading", { name: "What one layer may add under the tape" }, patience)).toBeVisible();
  const [before, after] = [sampleForm("waistGirth"), sampleForm("waistGirth", 1.875)];
  const entry = { did: "trial", batting: "bonded batting", level: "waist", layers: 1, before, after, at } as const;
  document.body.innerHTML = "";
  const store = shown({ does: "record", entry });
  expect(await screen.findByText(/One layer adds about \d+\/\d+ in under the tape/, {}, patience)).toBeVisible();
  expect(screen.getByText("From 2 measurements.")).toBeInTheDocument();
  fireEvent.click(screen.getByRole("button", { name: /^Ignore this reading: Trial/ }));
  await waitFor(() => expect(store.getState().fitting.work).toEqual([]));
});

test("how closely the tape is read is one press", () => {
  const store = shown();
  const steady = screen.getByRole("button", { name: /very steady/ });
  expect(steady.getAttribute("aria-pressed")).toBe("false");
  fireEvent.click(steady);
  expect(store.getState().fitting.readingError).toBe("3 mm");
  expect(screen.getByRole("button", { name: /very steady/ }).getAttribute("aria-pressed")).toBe("true");
});
