import { fireEvent, render, screen, waitFor } from "@testing-library/react";
import { expect, test } from "vitest";
import demoFile from "../../shared/demo-fitting.json";
import { type FittingStore, fittingStore } from "../../src/app/store";
import { assert } from "../../src/core/result";
import { readFitting } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { LearningPart } from "../../src/ui/learning/LearningPart";
import { LearningStrip } from "../../src/ui/learning/LearningStrip";
import { StoreProvider } from "../../src/ui/useStore";
import { useDerived } from "../../src/ui/useDerived";
import { sampleBody, sampleForm } from "../support/sample";

const demo = readFitting(demoFile);
assert(demo.ok, "the demo fitting can be read");
const at = "2026-01-02T03:04:05.000Z";

const bare = sampleForm("waistGirth");
/** With one layer on, worth nearly a third of an inch; and with one that can hardly be. */
const after = sampleForm("waistGirth", 1.875);
const thick = sampleForm("waistGirth", 5.75);

function Bench() {
  const { planning, progress } = useDerived();
  assert(planning.kind === "planned" && progress !== null, "the demo can be planned");
  return (
    <>
      <LearningStrip progress={progress} correction={null} />
      <LearningPart plan={planning.plan} progress={progress} />
    </>
  );
}

const shown = (): FittingStore => {
  const store = fittingStore(demo.value);
  render(
    <StoreProvider store={store}>
      <Bench />
    </StoreProvider>,
  );
  return store;
};
const patience = { timeout: 30_000 };
const field = (name: RegExp) => screen.getByRole("textbox", { name });

test("the trial: a text that is no length stays as typed and is not handed in; two readings are, and answered", async () => {
  const store = shown();
  expect(
    await screen.findByRole("heading", { name: "What one layer may add under the tape" }, patience),
  ).toBeInTheDocument();
  fireEvent.click(screen.getByRole("button", { name: "Try one layer" }));
  fireEvent.change(field(/before/), { target: { value: bare } });
  fireEvent.change(field(/after/), { target: { value: "thirty" } });
  fireEvent.blur(field(/after/));
  const learn = screen.getByRole<HTMLButtonElement>("button", { name: "Save the trial" });
  expect(learn.disabled).toBe(true);
  expect((field(/after/) as HTMLInputElement).value).toBe("thirty");

  fireEvent.change(field(/after/), { target: { value: sampleForm("waistGirth", -0.25) } });
  expect(screen.getByText(/After is not more than before/)).toBeInTheDocument();
  expect(learn.disabled).toBe(true);

  fireEvent.change(field(/after/), { target: { value: after } });
  expect(screen.getByText(/By these two measurements alone one layer adds 5\/16 in/)).toBeInTheDocument();
  fireEvent.click(learn);
  expect(store.getState().fitting.work).toMatchObject([{ did: "trial", before: bare, after, level: "waist" }]);
  await waitFor(
    () => expect(screen.getAllByText(/One layer adds about \d+\/\d+ in under the tape/).length).toBeGreaterThan(1),
    patience,
  );
  expect(screen.getByText("From 2 measurements.")).toBeInTheDocument();
  expect(screen.getByRole("heading", { name: "What one layer adds under the tape" })).toBeInTheDocument();
});

test("news waits for a press, is undone by undo, and the reading can be left out", async () => {
  const store = shown();
  const { planning } = await import("../../src/app/derived").then(({ derivation }) => derivation()(demo.value));
  assert(planning.kind === "planned", "the demo can be planned");
  for (const piece of planning.plan.pieces.slice(0, 5))
    store.dispatch({ does: "pin", piece: pieceToFile(piece, "", ""), at });
  store.dispatch({ does: "read", name: "waistGirth", text: sampleBody("waistGirth", -1.25), at });
  store.dispatch({ does: "read", name: "highHipGirth", text: sampleBody("highHipGirth", -1.5), at });
  const button = await screen.findByRole("button", { name: "Update the remaining pieces" }, patience);
  fireEvent.click(button);
  expect(store.getState().fitting.work.at(-1)?.did).toBe("replanned");
  await waitFor(
    () => expect(screen.queryByRole("button", { name: "Update the remaining pieces" })).toBeNull(),
    patience,
  );
  await waitFor(
    () => expect(screen.getByText("What the remaining pieces can be cut from")).toBeInTheDocument(),
    patience,
  );

  store.undo();
  await screen.findByRole("button", { name: "Update the remaining pieces" }, patience);
  fireEvent.click(screen.getByRole("button", { name: /Ignore this reading: High hip/ }));
  expect(store.getState().fitting.work.filter(({ did }) => did === "measured")).toHaveLength(1);
});

test("how closely the tape is read is one press", () => {
  const store = shown();
  const steady = screen.getByRole("button", { name: /very steady/ });
  expect(steady.getAttribute("aria-pressed")).toBe("false");
  fireEvent.click(steady);
  expect(store.getState().fitting.readingError).toBe("3 mm");
  expect(screen.getByRole("button", { name: /very steady/ }).getAttribute("aria-pressed")).toBe("true");
});

test("a trial that can hardly be is told, and can be left out", async () => {
  const store = shown();
  fireEvent.click(screen.getByRole("button", { name: "Try one layer" }));
  fireEvent.change(field(/before/), { target: { value: bare } });
  fireEvent.change(field(/after/), { target: { value: thick } });
  fireEvent.click(screen.getByRole("button", { name: "Save the trial" }));
  expect(
    await screen.findByText(new RegExp(`Waist, all around: ${thick}.in is typed`), {}, patience),
  ).toBeInTheDocument();
  fireEvent.click(screen.getByRole("button", { name: "Ignore this reading" }));
  await waitFor(() => expect(store.getState().fitting.work).toEqual([]));
});

/** Seen to fail before such readings were marked: the page threw while it was drawn. */
test("a reading that is not possible says so and what to do, twice typed as well, and one press ignores both", async () => {
  const store = shown();
  const { planning } = await import("../../src/app/derived").then(({ derivation }) => derivation()(demo.value));
  assert(planning.kind === "planned", "the demo can be planned");
  for (const piece of planning.plan.pieces.slice(0, 3))
    store.dispatch({ does: "pin", piece: pieceToFile(piece, "", ""), at });
  const before = store.getState().fitting.work;
  for (const _ of [1, 2]) store.dispatch({ does: "read", name: "bustFrontArc", text: "341 cm", at });
  const said = await screen.findAllByText(
    /134 1\/4 in is not possible: with these pieces on, the tape can read/,
    {},
    patience,
  );
  expect(said).toHaveLength(1);
  expect(screen.getByText(/It is saved, but not used/)).toBeInTheDocument();
  await waitFor(() => expect(screen.queryByText("Working it out…")).toBeNull(), patience);
  expect(screen.getAllByText(/not possible, not used/)).toHaveLength(2);
  fireEvent.click(screen.getByRole("button", { name: "Ignore this reading" }));
  await waitFor(() => expect(store.getState().fitting.work).toEqual(before));
  expect(screen.queryByText(/is not possible/)).toBeNull();
});
