import { describe, expect, test } from "vitest";
import { fittingStore, longestPast } from "../../src/app/session/store";
import { newFitting } from "../../src/app/session/newFitting";

const start = newFitting("in");
const waist = (text: string) => ({ does: "measure", whose: "body", name: "waistGirth", text }) as const;
const draft = (text: string | null) => ({ does: "draft", of: "body", key: "waistGirth", text }) as const;

describe("undo and redo", () => {
  test("walk back and forth over every step", () => {
    const store = fittingStore(start);
    store.dispatch(waist("36"));
    store.dispatch(waist("37"));
    store.undo();
    expect(store.getState().fitting.body.waistGirth).toBe("36");
    store.undo();
    expect(store.getState().fitting.body.waistGirth).toBeUndefined();
    store.redo();
    store.redo();
    expect(store.getState().fitting.body.waistGirth).toBe("37");
    expect(store.getState().future).toEqual([]);
  });

  test("a fitting to look at takes no change but its unit, until another one is loaded", () => {
    const store = fittingStore(start);
    const looked = { ...start, title: "from tomorrow", body: { waistGirth: 36 } };
    store.look(looked);
    store.dispatch(waist("37"));
    store.dispatch(draft("3"));
    store.undo();
    store.redo();
    expect(store.getState()).toEqual({ fitting: looked, past: [], future: [], cause: "look" });
    store.dispatch({ does: "changeUnit", unit: "cm" });
    expect(store.getState()).toMatchObject({ fitting: { unit: "cm", body: { waistGirth: "36 in" } }, cause: "look" });
    store.dispatch(waist("37"));
    expect(store.getState()).toMatchObject({ fitting: { body: { waistGirth: "36 in" } }, past: [] });
    store.load(start);
    store.dispatch(waist("37"));
    expect(store.getState().fitting.body.waistGirth).toBe("37");
  });

  test("do nothing at either end", () => {
    const store = fittingStore(start);
    const before = store.getState();
    store.undo();
    store.redo();
    expect(store.getState()).toBe(before);
  });

  test("a new step after undo forgets what was undone", () => {
    const store = fittingStore(start);
    store.dispatch(waist("36"));
    store.undo();
    store.dispatch(waist("40"));
    store.redo();
    expect(store.getState().fitting.body.waistGirth).toBe("40");
  });

  test("letters still being typed are no steps, and survive both", () => {
    const store = fittingStore(start);
    store.dispatch(waist("36"));
    store.dispatch(draft("3"));
    store.dispatch(draft("37 in a bit"));
    expect(store.getState().past).toHaveLength(1);
    store.undo();
    expect(store.getState().fitting.drafts.body.waistGirth).toBe("37 in a bit");
    store.redo();
    expect(store.getState().fitting.drafts.body.waistGirth).toBe("37 in a bit");
  });

  test("a name is one step however many letters it has", () => {
    const store = fittingStore(start);
    for (const title of ["A", "An", "Ann"]) store.dispatch({ does: "rename", title });
    expect(store.getState().past).toHaveLength(1);
    store.undo();
    expect(store.getState().fitting.title).toBe("");
  });

  test("a step that changes nothing is none", () => {
    const store = fittingStore(start);
    store.dispatch(waist("36"));
    const before = store.getState();
    store.dispatch(waist("36"));
    expect(store.getState()).toBe(before);
  });

  test("the past has an end", () => {
    const store = fittingStore(start);
    for (let i = 0; i < longestPast + 10; i += 1) store.dispatch(waist(String(20 + i)));
    expect(store.getState().past).toHaveLength(longestPast);
    expect(store.getState().past[0]?.body.waistGirth).toBe("29");
  });
});

test("loading opens another fitting, with its own steps", () => {
  const store = fittingStore(start);
  store.dispatch(waist("36"));
  const other = newFitting("cm");
  store.load(other);
  expect(store.getState()).toEqual({ fitting: other, past: [], future: [], cause: "load" });
});
