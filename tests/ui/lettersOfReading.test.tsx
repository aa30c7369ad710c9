import { act, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { readingDraftKey } from "../../src/app/session/commands";
import { fittingStore } from "../../src/app/session/store";
import { assert } from "../../src/core/result";
import type { Fitting } from "../../src/document/fitting";
import { LevelReadings } from "../../src/ui/pages/finishing/LevelReadings";
import { ReadingPad } from "../../src/ui/pages/finishing/ReadingPad";
import { useDerived } from "../../src/ui/kit/useDerived";
import { StoreProvider } from "../../src/ui/kit/useStore";

/**
 * What is typed is in the fitting with the letter, whatever of the screen follows a frame later. Seen to fail when the
 * draft was handed on a frame late, and when the pad wrote over the text it had last been drawn with.
 */
const key = readingDraftKey("waistGirth");
const draftOf = (fitting: Fitting): string | undefined => fitting.drafts.other[key];

function Bench() {
  const { planning, progress } = useDerived();
  assert(planning.kind === "planned" && progress !== null, "the demo can be planned");
  const still = () => {};
  return (
    <>
      <LevelReadings plan={planning.plan} progress={progress} level="waist" onLevel={still} onPart={still} />
      <ReadingPad plan={planning.plan} level="waist" part="girth" now={progress.now.waist} onPart={still} />
    </>
  );
}

function shown() {
  const store = fittingStore(demoFitting);
  const { container, unmount } = render(
    <StoreProvider store={store}>
      <Bench />
    </StoreProvider>,
  );
  const field = () => screen.getByRole<HTMLInputElement>("textbox", { name: /, all around/ });
  const line = (n: number) => container.querySelectorAll(".reading")[n];
  const left = (n: number) => line(n)?.querySelector(".reading-left")?.textContent;
  const tape = (n: number) =>
    Array.from(line(n)?.querySelectorAll("path") ?? [], (path) => path.getAttribute("d")).join();
  const type = (text: string) => fireEvent.change(field(), { target: { value: text } });
  return { store, unmount, field, left, tape, type };
}

describe("a letter of a reading", () => {
  test("is in the fitting, its field, its words and its tape before anything else happens", () => {
    const { store, field, left, tape, type } = shown();
    const [words, drawn] = [left(0), tape(0)];
    type("3");
    expect(draftOf(store.getState().fitting)).toBe("3");
    expect(field().value).toBe("3");
    expect(left(0)).not.toBe(words);
    expect(tape(0)).not.toBe(drawn);
  });

  test("moves front and back, which follow from it, the pad, and the height of its words, a frame later", async () => {
    const { left, type } = shown();
    const [front, back] = [left(1), left(2)];
    expect(screen.getByRole<HTMLButtonElement>("button", { name: /^Save/ }).disabled).toBe(true);
    type("30");
    expect([left(1), left(2)]).toEqual([front, back]);
    await waitFor(() => expect([left(1), left(2)]).not.toEqual([front, back]));
    expect(screen.getByRole<HTMLButtonElement>("button", { name: /^Save/ }).disabled).toBe(false);
    const place = document.querySelector(".reading-left-place");
    expect(place?.getAttribute("data-words")).toBe(place?.textContent);
  });

  test("is kept with the reading when the place is left before the next frame", () => {
    const { store, type, unmount } = shown();
    type("30");
    type("30 1");
    type("30 1/4");
    unmount();
    expect(draftOf(store.getState().fitting)).toBeUndefined();
    expect(store.getState().fitting.work.at(-1)).toMatchObject({ did: "measured", readings: { waistGirth: "30 1/4" } });
  });

  test("is kept when the field is left before the next frame", () => {
    const { store, field, type } = shown();
    type("30 1/4");
    fireEvent.blur(field());
    expect(store.getState().fitting.work.at(-1)).toMatchObject({ did: "measured", readings: { waistGirth: "30 1/4" } });
  });

  test("is told to whoever keeps the fitting within its own event, so that no page that is put aside takes it along", () => {
    const { store, type } = shown();
    const told: (string | undefined)[] = [];
    store.subscribe(({ fitting }) => told.push(draftOf(fitting)));
    type("3");
    type("30");
    expect(told).toEqual(["3", "30"]);
  });
});

test("two keys of the pad pressed between two frames both count", () => {
  const { store, field } = shown();
  act(() => {
    screen.getByRole("button", { name: "3" }).click();
    screen.getByRole("button", { name: "0" }).click();
  });
  expect(draftOf(store.getState().fitting)).toBe("30");
  expect(field().value).toBe("30");
});

test("a fitting that comes on the table shows at once, whatever was being typed before", () => {
  const { store, left, type } = shown();
  const before = [0, 1, 2].map(left);
  type("30");
  act(() => store.load(demoFitting));
  expect([0, 1, 2].map(left)).toEqual(before);
});
