import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { madeUpPerson } from "../../src/app/classView/classPeople";
import { sessionPlan } from "../../src/app/classView/sessionPlan";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { clockText, durationText, sessionWords } from "../../src/text/classView";
import { numberedName } from "../../src/text/pieces";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["setInterval", "clearInterval", "performance"] });
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

const minutesIn = (duration: string | null | undefined): number => {
  const [, hours = "0", minutes = "0"] = /^(?:(\d+) h)? ?(?:(\d+) min)?$/.exec(duration ?? "") ?? [];
  return 60 * Number(hours) + Number(minutes);
};

const press = (key: string) => fireEvent.keyDown(window, { key });

function shown() {
  const store = fittingStore(demoFitting);
  const { container } = render(
    <StoreProvider store={store}>
      <ClassPage />
    </StoreProvider>,
  );
  press("m");
  const panel = () => screen.getByRole("region", { name: sessionWords.title });
  const rows = () =>
    [...panel().querySelectorAll("li")].map((row) => [...row.children].map((part) => part.textContent));
  return { container, panel, rows, text: () => (container.textContent ?? "").replaceAll("\u00a0", " ") };
}

/** Broken on purpose: minutes of the whole session beside each step, the length of the class not heeded. Seen to fail. */
test("the session plan lists the steps from the one at hand with their minutes, and their sum", () => {
  const { panel, rows } = shown();
  const { job } = madeUpPerson(0);
  press("s");
  for (const [length, at] of [
    [90, 0],
    [60, 0],
    [180, 2],
    [60, 8],
  ] as const) {
    press("Home");
    for (let i = 0; i < at; i += 1) press("PageDown");
    fireEvent.click(within(panel()).getByRole("button", { name: sessionWords.length(length) }));
    const plan = sessionPlan(job, at, length);
    expect(rows().reduce((sum, [, minutes]) => sum + minutesIn(minutes), 0)).toBe(plan.minutes);
    const lines = rows().map(([words]) => words ?? "");
    // What is done with one piece stands behind its name, everything else as it is said.
    const acts = lines.map((words) => (/^\d+\. [^:]+: /.test(words) ? words.split(", ").length : 1));
    expect(acts.reduce((sum, count) => sum + count, 0)).toBe(plan.steps.length);
    for (const { do: name, piece } of plan.steps)
      if (name === "pin" && piece !== null)
        expect(lines.some((words) => words.startsWith(`${numberedName(piece)}: `) && words.includes("pin"))).toBe(true);
    expect(panel().textContent).toContain(
      plan.isLonger ? sessionWords.longer(durationText(plan.minutes)) : sessionWords.sum(durationText(plan.minutes)),
    );
    if (at < 3) expect(rows()[0]?.[0]).toBe(screen.getByRole("heading", { level: 1 }).textContent);
  }
  expect(rows().length).toBeGreaterThan(3);
  press("End");
  expect(panel().textContent).toContain(sessionWords.nothing);
  press("s");
  expect(screen.queryByRole("region", { name: sessionWords.title })).toBeNull();
});

test("the session plan of a covered person tells no figure", () => {
  const { panel, rows } = shown();
  press("c");
  press("s");
  const { steps } = madeUpPerson(0).job;
  for (let i = 0; i < steps.length; i += 1) {
    expect((panel().textContent ?? "").replaceAll("\u00a0", " ")).not.toMatch(/\d+\/\d|\d (?:in|cm|mm)\b|\d\d\.\d/);
    press("PageDown");
  }
  press("Home");
  expect(rows().length).toBeGreaterThan(3);
});

/** Broken on purpose: paused time counted, the time of the step before kept. Seen to fail. */
test("the timer counts the step at hand beside its minutes, rests while it is paused, and begins anew with the next step", () => {
  const { text } = shown();
  const wait = (seconds: number) => act(() => vi.advanceTimersByTime(seconds * 1000));
  const clock = () => screen.queryByRole("timer")?.textContent ?? null;
  expect(clock()).toBeNull();
  press("p");
  expect(clock()).toBe(sessionWords.timer("0:00", "10 min"));
  wait(65);
  expect(clock()).toBe(sessionWords.timer("1:05", "10 min"));
  press("p");
  wait(30);
  expect(clock()).toBe(sessionWords.timer("1:05", "10 min"));
  press("s");
  fireEvent.click(screen.getByRole("button", { name: sessionWords.start }));
  wait(10);
  expect(clock()).toBe(sessionWords.timer("1:15", "10 min"));
  press("PageDown");
  wait(5);
  expect(clock()).toBe(sessionWords.timer("0:05", "25 min"));
  expect(text()).toContain(sessionWords.pause);
});

test("durations and clocks are written as they are said", () => {
  expect([0, 8, 60, 74, 180].map(durationText)).toEqual(["0 min", "8 min", "1 h", "1 h 14 min", "3 h"]);
  expect([0, 7, 60, 3900].map(clockText)).toEqual(["0:00", "0:07", "1:00", "65:00"]);
});
