import { fireEvent, render, screen } from "@testing-library/react";
import { beforeEach, expect, test } from "vitest";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { newFitting } from "../../src/app/session/newFitting";
import { BodyPage } from "../../src/ui/pages/body/BodyPage";
import { StoreProvider } from "../../src/ui/kit/useStore";

const withBody = (body: Fitting["body"]): Fitting => ({ ...newFitting("in"), body });
const good = withBody({ bustGirth: "35", waistGirth: "28", fullHipGirth: "38" });

function shown(fitting: Fitting) {
  const store = fittingStore(fitting);
  const { container } = render(
    <StoreProvider store={store}>
      <BodyPage />
    </StoreProvider>,
  );
  return { store, enough: () => container.querySelector(".enough")?.textContent ?? "" };
}

beforeEach(() => {
  window.location.hash = "#body";
});

test("three sound girths are enough for a plan", () => {
  expect(shown(good).enough()).toContain("enough for a plan");
});

test("readings that cannot be are never called enough; their own sentence stands there", () => {
  const arc = shown(withBody({ ...good.body, waistFrontArc: "32" }));
  expect(arc.enough()).not.toContain("enough");
  expect(arc.enough()).toMatch(/The person’s front waist reads 32\u00a0in/);
  expect(screen.queryByRole("button", { name: "They are centimeters" })).toBeNull();
});

test("centimeters typed as inches are put right with one tap, and undo brings them back", () => {
  const view = shown(withBody({ bustGirth: "88", waistGirth: "76", fullHipGirth: "97" }));
  expect(view.enough()).toContain("centimeters typed as inches");
  const [first] = screen.getAllByRole("button", { name: "They are centimeters" });
  if (first === undefined) throw new Error("no button");
  fireEvent.click(first);
  expect(view.store.getState().fitting.body.waistGirth).toBe("76 cm");
  expect(view.enough()).toContain("enough for a plan");
  view.store.undo();
  expect(view.store.getState().fitting.body.waistGirth).toBe("76");
});

test("a link to one reading opens the bench with it", () => {
  window.location.hash = "#person/napeToWaist";
  shown(good);
  expect(screen.getByRole("textbox", { name: /Back waist length/ })).toBeVisible();
  expect(screen.getByRole("textbox", { name: /Back waist length/ })).toHaveFocus();
});

test("whoever types a reading that cannot be stays with it once, and is told in its field; then Enter goes on", () => {
  const { store } = shown(withBody({ bustGirth: "35" }));
  const waist = screen.getByRole("textbox", { name: /^Waist, all around/ });
  waist.focus();
  fireEvent.change(waist, { target: { value: "76" } });
  fireEvent.keyDown(waist, { key: "Enter" });
  expect(store.getState().fitting.body.waistGirth).toBe("76");
  expect(waist).toHaveFocus();
  const described = (waist.getAttribute("aria-describedby") ?? "").split(" ");
  const told = described.map((id) => document.getElementById(id)?.textContent ?? "").join(" ");
  expect(told).toMatch(/centimeters typed as inches/);
  fireEvent.keyDown(waist, { key: "Enter" });
  expect(screen.getByRole("textbox", { name: /^Full hip, all around/ })).toHaveFocus();
});

test("a sound reading goes on at once", () => {
  shown(withBody({ bustGirth: "35" }));
  const waist = screen.getByRole("textbox", { name: /^Waist, all around/ });
  fireEvent.change(waist, { target: { value: "28" } });
  fireEvent.keyDown(waist, { key: "Enter" });
  expect(screen.getByRole("textbox", { name: /^Full hip, all around/ })).toHaveFocus();
});
