import { fireEvent, render, screen, within } from "@testing-library/react";
import { expect, test } from "vitest";
import { madeUpPerson } from "../../src/app/classView/classPeople";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { typedLabel, typedWords } from "../../src/text/classView";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

const press = (key: string) => fireEvent.keyDown(document.activeElement ?? window, { key });

function shown() {
  const store = fittingStore(demoFitting);
  const { container } = render(
    <StoreProvider store={store}>
      <ClassPage />
    </StoreProvider>,
  );
  const row = (name: string) =>
    [...(screen.getByRole("row", { name: new RegExp(`^${name}`) }).querySelectorAll("td") ?? [])].map((cell) =>
      (cell.textContent ?? "").replaceAll("\u00a0", " "),
    );
  return { store, container, row, headline: () => container.querySelector("h1")?.textContent ?? "" };
}

const field = (name: string) => within(screen.getByRole("form", { name: typedWords.title })).getByLabelText(name);

function type(name: string, text: string): void {
  const input = field(name);
  input.focus();
  fireEvent.change(input, { target: { value: text } });
  fireEvent.keyDown(input, { key: "Enter" });
}

const reading = new Set(["trial", "read-lines", "read", "read-all", "check", "read-cover"]);

/** Seen to fail: with the fields at one of these steps left out. */
test("every step at which the class reads the tape shows where to type it, and no other step does", () => {
  const { container, headline } = shown();
  const { job } = madeUpPerson(0);
  press("m");
  press("Home");
  let fields = 0;
  for (const { step } of job.steps) {
    const line = container.querySelector(".class-typed");
    expect(line !== null, headline()).toBe(reading.has(step.do));
    if (line !== null) {
      expect(line.textContent).toContain(typedWords.title);
      expect(line.textContent).toContain(typedWords.key);
      fields += line.querySelectorAll("input").length;
    }
    press("PageDown");
  }
  expect(fields).toBeGreaterThan(10);
});

/** Seen to fail: with the expected figure left in the table, and with readings kept in the fitting. */
test("what is typed stands in the table, and goes into no fitting", () => {
  const { store, row, container } = shown();
  const before = store.getState();
  for (let i = 0; i < 39 && !/^Measure every level line/.test(container.querySelector("h1")?.textContent ?? ""); i += 1)
    press("PageDown");
  press("Enter");
  expect(document.activeElement).toBe(field("around"));
  type("around", "30 1/2");
  expect(document.activeElement).toBe(field("front"));
  expect(row("around").slice(0, 2)).toEqual(["31 3/4", "30 1/2"]);
  expect(row("around")[2]).toBe("1 1/4 in");
  type("front", "17 1/2");
  expect(document.activeElement).toBe(document.body);
  expect(row("back")[1]).toBe("13");
  expect(container.querySelectorAll(".class-row-unread")).toHaveLength(0);
  expect(store.getState()).toBe(before);
});

test("what cannot be read, or cannot be, is said at once; covered there is nothing to type", () => {
  const { container, row } = shown();
  for (let i = 0; i < 3; i += 1) press("PageDown");
  const said = () => container.querySelector(".class-typed-said")?.textContent ?? "";
  expect(said()).toBe(typedWords.kept);
  type(typedLabel("trialBare"), "23 1/x");
  expect(said()).toContain("23 1/x");
  expect(field(typedLabel("trialBare"))).toHaveProperty("value", "23 1/x");
  type(typedLabel("trialBare"), "23 1/4");
  type(typedLabel("trialWrapped"), "23");
  expect(said()).toBe(typedWords.doubts.wrappedIsLess);
  type(typedLabel("trialWrapped"), "28");
  expect(said().replaceAll("\u00a0", " ")).toBe("One layer adds about 1/4 in in thickness.");
  expect(row("around")[1]).toBe("23 1/4");
  fireEvent.keyDown(document.body, { key: "c" });
  expect(container.querySelector(".class-typed")?.textContent).toBe(typedWords.covered);
  expect(container.textContent).not.toContain("1/4");
});

/** Seen to fail: at 18 typed for 30, which nobody noticed, and at the bare form, which was said to read less than itself. */
test("a reading that no padding can give is questioned, but for those of the bare form itself", () => {
  const { container } = shown();
  const { job } = madeUpPerson(0);
  const readsForm = job.steps.findIndex(({ step }) => step.do === "read-lines");
  for (let i = 0; i < readsForm; i += 1) press("PageDown");
  type("around", "18");
  expect(container.querySelector(".class-typed-said")?.textContent).toMatch(/^The plan counts on \d/);
  while (!/^Measure every level line\.$/.test(container.querySelector("h1")?.textContent ?? "")) press("PageDown");
  type("around", "18");
  expect(container.querySelector(".class-typed-said")?.textContent).toBe(typedWords.doubts.lessThanBare);
});
