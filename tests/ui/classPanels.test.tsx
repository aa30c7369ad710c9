import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { classControls } from "../../src/text/classView";
import { classRemoteWords } from "../../src/text/remote";
import { takeHomeWords } from "../../src/text/library";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

const press = (key: string) => fireEvent.keyDown(document.activeElement ?? window, { key });

function shown() {
  const { container } = render(
    <StoreProvider store={fittingStore(demoFitting)}>
      <ClassPage />
    </StoreProvider>,
  );
  return {
    container,
    step: () => Number(/Step (\d+)/.exec(container.textContent ?? "")?.[1]),
    figures: () => container.querySelector(".class-view")?.getAttribute("data-figures"),
    panel: () => container.querySelector(".class-help"),
  };
}

/** Seen to fail: with all keys kept in the panel of what is taken home. */
test.each(["t", "k", "r"])("with the panel of %s open the clicker goes on and closes it, and C and B cover", (key) => {
  const { step, figures, panel } = shown();
  press("m");
  press("Home");
  press(key);
  expect(panel()).not.toBeNull();
  for (const cover of ["c", "b"]) {
    const before = figures();
    press(cover);
    expect(figures()).not.toBe(before);
  }
  expect(panel()).not.toBeNull();
  press("PageDown");
  expect(step()).toBe(2);
  expect(panel()).toBeNull();
  press("ArrowRight");
  expect(step()).toBe(3);
});

/** Seen to fail: with Close under everything else. */
test("each panel is closed at its head, and R without sharing says how to share", () => {
  const { panel } = shown();
  press("m");
  for (const key of ["t", "k", "s", "n", "r"]) {
    press(key);
    const close = screen.getByRole("button", { name: classControls.closeKeys });
    expect(panel()?.firstElementChild?.contains(close), key).toBe(true);
    if (key === "t") expect(panel()?.textContent).toContain(takeHomeWords.title);
    if (key === "r") expect(panel()?.textContent).toContain(classRemoteWords.notShared);
    fireEvent.click(close);
    expect(panel(), key).toBeNull();
  }
});

test("the foot tells that there are keys", () => {
  const { container } = shown();
  expect(container.querySelector(".class-foot .class-keys-hint")?.textContent).toBe(`K ${classControls.keysHint}`);
});
