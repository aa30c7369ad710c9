import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { stepFacts } from "../../src/app/steps/stepFacts";
import { plannedSteps } from "../../src/app/steps/plannedSteps";
import { nothingDone } from "../../src/app/steps/workState";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { nextOfFitting } from "../../src/command/nextOfText";
import { stepSentence } from "../../src/text/steps";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

const shown = (fitting: Fitting = demoFitting) => {
  const store = fittingStore(fitting);
  const view = render(
    <StoreProvider store={store}>
      <ClassPage />
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
  "s",
  "n",
  "p",
  "0",
  "3",
  "Home",
  "End",
  "ArrowLeft",
  " ",
  "PageDown",
];

test("no key and no button of the class view changes the fitting or its history", () => {
  const { store } = shown();
  const before = store.getState();
  for (const key of everyKey) fireEvent.keyDown(window, { key });
  for (const button of screen.getAllByRole("button")) fireEvent.click(button);
  expect(store.getState()).toBe(before);
});

test("covered figures are nowhere in the page at any step, not even for a screen reader", () => {
  const { text, container } = shown();
  const steps = Number(/of (\d+)/.exec(text())?.[1]);
  expect(steps).toBeGreaterThan(20);
  for (let i = 0; i < steps; i++) {
    // How far apart marking pins stand is nobody's figure.
    const working = container.querySelector(".class-lines-steps")?.textContent ?? "";
    expect(
      text().replace(working, "").replaceAll("\u00a0", " "),
      container.querySelector("h1")?.textContent ?? "",
    ).not.toMatch(/\d+\/\d|\d (?:in|cm|mm)\b|\d\d\.\d/);
    fireEvent.keyDown(window, { key: "PageDown" });
  }
  expect(text()).toContain("covered");
  expect(container.querySelectorAll(".class-strip-tick")).toHaveLength(0);
  fireEvent.keyDown(window, { key: "Home" });
  fireEvent.keyDown(window, { key: "c" });
  for (let i = 0; i < 4; i++) fireEvent.keyDown(window, { key: "PageDown" });
  expect(text()).toMatch(/\d+\/\d/);
});

test("previous and next walk the steps that the command says, and the class view says their very sentences", () => {
  const { planning } = derivation()(demoFitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  const { plan } = planning;
  const { container } = shown();
  const facts = stepFacts(plan, derivation()(demoFitting).lengths?.body ?? {}, demoFitting);
  fireEvent.keyDown(window, { key: "c" });
  const letters = (words: string) => words.toLowerCase().replace(/[^a-z0-9]/g, "");
  for (const { step } of plannedSteps({ plan, state: nothingDone, isAtLines: false, hasArm: false, above: [] })) {
    const [headline, rest] = [".class-action", ".class-where"].map(
      (part) => container.querySelector(part)?.textContent ?? "",
    );
    const sentence = stepSentence(step, { lengths: "1/8 in", levels: plan.levels, pieces: plan.pieces, facts });
    expect(letters(`${headline}${rest}`)).toContain(letters(sentence));
    const next = container.querySelector(".class-next strong")?.textContent;
    fireEvent.keyDown(window, { key: "PageDown" });
    if (next != null) expect(container.querySelector(".class-action")?.textContent).toBe(next);
  }
});

test("an own job stands where its log stands: the one next step, what was done before it, what comes after", async () => {
  const { planning } = derivation()(demoFitting);
  const [piece] = planning.kind === "planned" ? planning.plan.pieces : [];
  if (piece === undefined) throw new Error("no piece");
  const work = [
    { did: "prepared", what: "form" },
    { did: "marked" },
    { did: "measured", readings: {} },
    { did: "trial", batting: "x", level: "waist" },
    { did: "cut", pieceId: piece.id },
  ] as const;
  const next = nextOfFitting({ ...demoFitting, work });
  if (!next.ok) throw new Error("no next step");
  const { container } = shown({ ...demoFitting, work });
  const headline = () => container.querySelector("h1")?.textContent ?? "";
  expect(next.value.step.do).toBe("stack");
  await screen.findByRole("heading", { level: 1 });
  expect(next.value.step.say.startsWith(headline().replace(/\.$/, ""))).toBe(true);
  fireEvent.keyDown(window, { key: "PageUp" });
  expect(headline()).toMatch(/^Cut the /);
  fireEvent.keyDown(window, { key: "Home" });
  expect(headline()).toBe("Make the form ready.");
  fireEvent.keyDown(window, { key: "End" });
  expect(headline()).toBe("The stand-in is done.");
});

test("letter keys fall silent when they are switched off", () => {
  const { text } = shown();
  fireEvent.keyDown(window, { key: "k" });
  fireEvent.click(screen.getByRole("checkbox"));
  fireEvent.keyDown(window, { key: "c" });
  expect(text()).toContain("its figures covered");
});
