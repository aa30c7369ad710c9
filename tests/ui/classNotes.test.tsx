import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { longestStepNote } from "../../src/document/fittingLimits";
import { namesNumber } from "../../src/text/withoutFigures";
import { stepNoteWords } from "../../src/text/stepNotes";
import { SessionSheet } from "../../src/ui/kit/sheet/SessionSheet";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";
import { StepNotesPart } from "../../src/ui/pages/print/StepNotesPart";

const plan = (() => {
  const { planning } = derivation()(demoFitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  return planning.plan;
})();

const noted: Fitting = {
  ...demoFitting,
  body: { ...demoFitting.body, waistGirth: "31 5/8" },
  stepNotes: {
    trial: "Pass the strip around. It reads 34 1/2 in.\nThen ask.",
    "pin/gone-piece": "Of an earlier plan",
    "mark-lines": "Laser, not string",
  },
};

const press = (key: string) => fireEvent.keyDown(window, { key });

/** Broken on purpose: the note of the step before kept, its figures told while they are covered. Seen to fail. */
test("a note is shown at its own step alone, when it is asked for, and without figures while they are covered", () => {
  const store = fittingStore(noted);
  const { container } = render(
    <StoreProvider store={store}>
      <ClassPage />
    </StoreProvider>,
  );
  const note = () => container.querySelector(".class-note")?.textContent ?? null;
  const count = () => container.querySelector(".class-count")?.textContent;
  press("Home");
  expect(count()).not.toContain(stepNoteWords.mark);
  press("PageDown");
  expect(count()).toContain(stepNoteWords.mark);
  expect(container.textContent).not.toContain("Laser");
  press("n");
  expect(note()).toBe("Laser, not string");
  expect(container.textContent).not.toContain(stepNoteWords.covered);
  press("PageDown");
  expect(note()).toBe(stepNoteWords.none);
  press("PageDown");
  expect(note()).toBe(stepNoteWords.covered);
  press("c");
  expect(note()).toBe(noted.stepNotes?.trial);
  press("m");
  expect(note()).toBe(stepNoteWords.madeUpNone);
  press("o");
  press("n");
  expect(note()).toBeNull();
  fireEvent.click(screen.getByRole("button", { name: "Note" }));
  expect(note()).not.toBeNull();
  expect(store.getState().fitting).toBe(noted);
});

/** Seen to fail: where a sample person's notes were said to be none. */
test("the notes of an open sample person are shown, also while another sample person stands in the class view", () => {
  const { container } = render(
    <StoreProvider store={fittingStore({ ...noted, body: demoFitting.body })}>
      <ClassPage />
    </StoreProvider>,
  );
  press("PageDown");
  press("n");
  expect(container.querySelector(".class-note")?.textContent).toBe("Laser, not string");
  expect(screen.getByRole("link", { name: stepNoteWords.toTyping }).getAttribute("href")).toBe("#print/notes");
  press("m");
  expect(container.querySelector(".class-count")?.textContent).toContain("Step 2 of");
  expect(container.querySelector(".class-note")?.textContent).toBe("Laser, not string");
});

/** Broken on purpose: notes of a step that is gone left out, on the screen and on paper. Seen to fail. */
test("notes are typed to every step before class, and none is lost when the plan loses its step; the session plan prints them", () => {
  const store = fittingStore(noted);
  const { container } = render(
    <StoreProvider store={store}>
      <StepNotesPart plan={plan} />
      <SessionSheet plan={plan} />
    </StoreProvider>,
  );
  const fields = screen.getAllByRole("textbox", { hidden: true });
  expect(fields.length).toBeGreaterThan(30);
  expect(new Set(fields.map((field) => (field as HTMLTextAreaElement).labels?.[0]?.textContent)).size).toBe(
    fields.length,
  );
  for (const field of fields) expect(field).toHaveProperty("maxLength", longestStepNote);
  expect(screen.getByDisplayValue("Of an earlier plan")).toBeTruthy();
  const baste = screen.getByLabelText(/Baste what is pinned/, { selector: "textarea" });
  fireEvent.change(baste, { target: { value: "Count with me" } });
  expect(store.getState().fitting.stepNotes).toEqual({ ...noted.stepNotes, baste: "Count with me" });
  const rows = [...container.querySelectorAll(".session-rows tr")];
  const rowOf = (note: string) => rows.find((row) => row.textContent?.includes(note))?.textContent ?? "";
  expect(rowOf("Count with me")).toMatch(/^ \d+Baste what is pinned/);
  expect(rowOf("Laser, not string")).toMatch(/^ 2Mark the person’s level lines/);
  expect(rowOf("Of an earlier plan")).toContain(stepNoteWords.gone);
});

/** Seen to fail: on the rule for our own sentences, which knows digits before in, cm and mm alone. */
test("a note that holds any number counts as one with a figure, however it is written", () => {
  for (const text of ["It is 34.", "34 inches", '34"', "34½", "half a meter", "Take ¾ of it"])
    expect(namesNumber(text), text).toBe(true);
  for (const text of ["Laser, not string", "Pass the strip around.", "Once more in front"])
    expect(namesNumber(text), text).toBe(false);
});
