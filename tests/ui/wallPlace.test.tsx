import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import demoFile from "../../shared/demo-fitting.json";
import { fittingStore } from "../../src/app/store";
import { readFitting } from "../../src/document/readFitting";
import { StoreProvider } from "../../src/ui/useStore";
import { WallPlace } from "../../src/ui/wall/WallPlace";

const demo = readFitting(demoFile);
if (!demo.ok) throw new Error("the demo cannot be read");

const shown = () => {
  const store = fittingStore(demo.value);
  const view = render(
    <StoreProvider store={store}>
      <WallPlace />
    </StoreProvider>,
  );
  return { store, text: () => view.container.textContent ?? "", container: view.container };
};

const everyKey = [
  "c",
  "b",
  ".",
  "m",
  "m",
  "o",
  "u",
  "k",
  "k",
  "f",
  "t",
  "0",
  "3",
  "Home",
  "End",
  "ArrowLeft",
  " ",
  "PageDown",
];

test("no key and no button of the wall changes the fitting or its history", () => {
  const { store } = shown();
  const before = store.getState();
  for (const key of everyKey) fireEvent.keyDown(window, { key });
  for (const button of screen.getAllByRole("button")) fireEvent.click(button);
  expect(store.getState()).toBe(before);
});

test("covered figures are nowhere in the page, not even for a screen reader", () => {
  const { text, container } = shown();
  fireEvent.keyDown(window, { key: "PageDown" });
  expect(text()).toContain("covered");
  expect(text()).not.toMatch(/\d+\/\d|\d (?:in|cm|mm)\b|\d\d\.\d/);
  expect(container.querySelectorAll(".wall-strip-tick")).toHaveLength(0);
  fireEvent.keyDown(window, { key: "c" });
  expect(text()).toMatch(/\d+\/\d|\d (?:in|cm|mm)\b/);
  expect(container.querySelectorAll(".wall-strip-tick").length).toBeGreaterThan(0);
});

test("letter keys fall silent when they are switched off", () => {
  const { text } = shown();
  fireEvent.keyDown(window, { key: "k" });
  fireEvent.click(screen.getByRole("checkbox"));
  fireEvent.keyDown(window, { key: "c" });
  expect(text()).toContain("its figures covered");
});
