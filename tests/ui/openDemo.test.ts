import { expect, test } from "vitest";
import type { Autosave } from "../../src/app/storage/autosave";
import { fittingStore } from "../../src/app/session/store";
import { shelf } from "../../src/ui/kit/shelf/shelf";
import { newFitting } from "../../src/app/session/newFitting";
import { openDemo } from "../../src/ui/kit/shelf/useDemo";

const answering = (answer: "put" | "notKept", asked: unknown[]): Autosave =>
  ({
    put: (fitting: unknown) => {
      asked.push(fitting);
      return Promise.resolve(answer);
    },
  }) as unknown as Autosave;

test("the made-up person never takes the place of work that could not be kept", async () => {
  const store = fittingStore(newFitting("in"));
  store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text: "30" });
  const before = store.getState();
  const asked: unknown[] = [];
  window.location.hash = "person";
  shelf.setState({ autosave: answering("notKept", asked), news: [] });
  await openDemo(store);
  expect(store.getState()).toBe(before);
  expect(asked).toHaveLength(1);
  expect(shelf.getState().news).toEqual([{ kind: "tableNotKept" }]);
  expect(window.location.hash).toBe("#person");
  shelf.setState({ autosave: answering("put", asked) });
  await openDemo(store);
  expect(window.location.hash).toBe("#plan");
});

test("the made-up person does not take the place of what was typed before the keeping was there", async () => {
  const store = fittingStore(newFitting("in"));
  shelf.setState({ autosave: null, news: [] });
  store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text: "30" });
  const before = store.getState();
  await openDemo(store);
  expect(store.getState()).toBe(before);
  expect(shelf.getState().news).toEqual([{ kind: "tableNotKept" }]);

  const untouched = fittingStore(newFitting("in"));
  await openDemo(untouched);
  expect(untouched.getState().fitting.title).not.toBe("");
});
