import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type ClassAction,
  classAfter,
  classKey,
  type ClassRoom,
  classStart,
  type ClassState,
} from "../../src/app/classView/classState";

const room: ClassRoom = { steps: 13, ownStep: 3, isOwnMadeUp: false, madeUpPeople: 4, stepOf: (person) => person + 2 };
const action: fc.Arbitrary<ClassAction> = fc.constantFrom<ClassAction[]>(
  ...(["forward", "back", "first", "last", "cover", "coverPerson", "coverForm", "madeUp", "own"] as const).map(
    (does) => ({ does }),
  ),
  { does: "level", level: "waist" },
  { does: "level", level: "follow" },
);
const walked = (start: ClassState, actions: readonly ClassAction[]): ClassState =>
  actions.reduce((state, next) => classAfter(state, next, room), start);

describe("what is in the class view", () => {
  test("an own body starts covered, where the padding stands; without one a made-up person starts open", () => {
    expect(classStart(room)).toEqual({ person: "own", step: 3, level: "follow", figures: "covered" });
    expect(classStart({ ...room, isOwnMadeUp: true }).figures).toBe("shown");
    expect(classStart({ ...room, ownStep: null })).toEqual({ person: 0, step: 0, level: "follow", figures: "shown" });
  });

  test("whatever is pressed, the step stays within the plan and the person within the list", () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
        const { step, person } = walked(classStart(room), actions);
        expect(step).toBeGreaterThanOrEqual(0);
        expect(step).toBeLessThan(room.steps);
        if (person !== "own") expect(person).toBeLessThan(room.madeUpPeople);
      }),
    );
  });

  test("an own body is never shown unless someone uncovered it since it came on", () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
        const cameOn = actions.findLastIndex(({ does }) => does === "madeUp");
        const covers = actions.slice(cameOn + 1).filter(({ does }) => /^cover/.test(does)).length;
        const { person, figures } = walked(classStart(room), actions);
        fc.pre(person === "own" && covers === 0);
        expect(figures).toBe("covered");
      }),
      { numRuns: 300 },
    );
    const back = walked(classStart(room), [{ does: "cover" }, { does: "madeUp" }, { does: "own" }]);
    expect(back).toMatchObject({ person: "own", figures: "covered" });
  });

  test("forward and back end where they began, except at the ends", () => {
    const middle: ClassState = { person: 1, step: 5, level: "waist", figures: "shown" };
    expect(walked(middle, [{ does: "forward" }, { does: "back" }])).toEqual(middle);
    expect(classAfter({ ...middle, step: 12 }, { does: "forward" }, room).step).toBe(12);
    const first = classAfter(middle, { does: "first" }, room);
    expect(first).toEqual({ ...middle, step: 0 });
    expect(classAfter(first, { does: "back" }, room)).toBe(first);
    expect(classAfter(middle, { does: "last" }, room)).toEqual({ ...middle, step: 12 });
  });

  test("another sample person comes at the step most like the one at hand, not at the first", () => {
    const at = classAfter(classStart(room), { does: "madeUp" }, room);
    expect(at).toMatchObject({ person: 0, step: 2, figures: "shown" });
    expect(classAfter(at, { does: "madeUp" }, room)).toMatchObject({ person: 1, step: 3 });
  });

  test("there is no own body to go to without one", () => {
    const state: ClassState = { person: 2, step: 5, level: "follow", figures: "shown" };
    expect(classAfter(state, { does: "own" }, { ...room, ownStep: null })).toBe(state);
  });
});

describe("keys", () => {
  const press = (key: string, { shift = false, command = false, letters = true } = {}) =>
    classKey({ key, shift, command }, letters);

  test.each([
    ["ArrowRight", "forward"],
    ["ArrowDown", "forward"],
    ["PageDown", "forward"],
    [" ", "forward"],
    ["ArrowLeft", "back"],
    ["ArrowUp", "back"],
    ["PageUp", "back"],
    ["Home", "first"],
    ["End", "last"],
    ["c", "cover"],
    ["C", "cover"],
    [".", "cover"],
    ["m", "madeUp"],
    ["f", "fullScreen"],
    ["x", "coverPerson"],
    ["z", "coverForm"],
    ["Enter", "type"],
  ])("%s does %s", (key, does) => {
    expect(press(key)).toEqual({ does });
  });

  test("shift and space go back; the numbers choose levels from the top", () => {
    expect(press(" ", { shift: true })).toEqual({ does: "back" });
    expect(press("1")).toEqual({ does: "level", level: "bust" });
    expect(press("5")).toEqual({ does: "level", level: "fullHip" });
    expect(press("0")).toEqual({ does: "level", level: "follow" });
  });

  test("keys that are not ours do nothing", () => {
    for (const key of ["6", "q", "Tab", "Escape"]) expect(press(key)).toBeNull();
    expect(press("c", { command: true })).toBeNull();
    expect(press("ArrowRight", { command: true })).toBeNull();
  });

  test("letters can be put out of action, and the moving keys go on working", () => {
    expect(press("c", { letters: false })).toBeNull();
    expect(press("3", { letters: false })).toBeNull();
    expect(press("PageDown", { letters: false })).toEqual({ does: "forward" });
  });
});
