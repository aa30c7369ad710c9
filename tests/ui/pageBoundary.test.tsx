import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Autosave } from "../../src/app/storage/autosave";
import { fittingStore } from "../../src/app/session/store";
import { shelf } from "../../src/ui/kit/shelf/shelf";
import { newFitting } from "../../src/app/session/newFitting";
import { askForMissing, latePart } from "../../src/ui/kit/rescue/latePart";
import { MissingPage } from "../../src/ui/shell/MissingPart";
import { PageBoundary } from "../../src/ui/kit/rescue/PageBoundary";
import { failedLast, noteLeft, noteStart } from "../../src/ui/kit/rescue/FailedPage";
import { StoreProvider, useFittingState } from "../../src/ui/kit/useStore";
import { usePage } from "../../src/ui/kit/page";

/** A page that fails for one waist only, as a slip of the tape may make a page fail. */
function Fragile() {
  const waist = useFittingState((state) => state.fitting.body.waistGirth);
  const place = usePage();
  if (waist === "341" && place === "padding") throw new Error("a waist of 341");
  return <h1>whole at {place}</h1>;
}

function AtPlace() {
  return (
    <PageBoundary page={usePage()}>
      <Fragile />
    </PageBoundary>
  );
}

const goTo = (hash: string) =>
  act(() => {
    window.location.hash = hash;
    window.dispatchEvent(new HashChangeEvent("hashchange"));
  });

function page() {
  const store = fittingStore(newFitting("cm"));
  render(
    <StoreProvider store={store}>
      <AtPlace />
    </StoreProvider>,
  );
  const waist = (text: string) =>
    act(() => store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text }));
  return { store, waist };
}

beforeEach(() => {
  vi.useFakeTimers();
  // What React tells of a failure that was caught is no news here.
  vi.spyOn(console, "error").mockImplementation(() => {});
  window.localStorage.clear();
  shelf.setState({ autosave: { openId: () => "bad" } as unknown as Autosave });
  goTo("padding");
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
  shelf.setState({ autosave: null });
});

const failed = () => screen.queryByRole("heading", { name: "This page cannot be shown" });

test("a page that fails is tried anew at another place, with another fitting, and when it is asked for", () => {
  const { store, waist } = page();
  expect(failed()).toBeNull();
  waist("341");
  expect(failed()).not.toBeNull();
  expect(screen.getByText(/a waist of 341/)).toBeTruthy();
  fireEvent.click(screen.getByRole("button", { name: "Try again" }));
  expect(failed()).not.toBeNull();
  goTo("fittings");
  expect(screen.getByRole("heading", { name: "whole at fittings" })).toBeTruthy();
  goTo("padding");
  expect(failed()).not.toBeNull();
  act(() => store.undo());
  expect(screen.getByRole("heading", { name: "whole at padding" })).toBeTruthy();
});

test("a failure is noted for the next start until the fitting has been shown for a while", () => {
  const { waist } = page();
  waist("341");
  expect(failedLast("bad")).toBe(true);
  noteLeft();
  vi.advanceTimersByTime(10_000);
  expect(failedLast("bad")).toBe(true);
  waist("80");
  vi.advanceTimersByTime(1_000);
  expect(failedLast("bad")).toBe(true);
  vi.advanceTimersByTime(1_500);
  expect(failedLast("bad")).toBe(false);
});

test("a start is noted until the page is shown or left, and another fitting does not take its note away", () => {
  page();
  noteStart("bad");
  noteLeft();
  expect(failedLast("bad")).toBe(false);
  noteStart("another");
  vi.advanceTimersByTime(10_000);
  noteLeft();
  expect(failedLast("another")).toBe(true);
});

test("a part that does not arrive says so and is asked for again", async () => {
  vi.useRealTimers();
  let isThere = false;
  const Page = latePart(
    () => (isThere ? Promise.resolve(() => <h1>arrived</h1>) : Promise.reject(new Error("no network"))),
    MissingPage,
  );
  render(<Page />);
  fireEvent.click(await screen.findByRole("button", { name: "Try again" }));
  expect(await screen.findByRole("button", { name: "Load the page again" })).toBeTruthy();
  isThere = true;
  fireEvent.click(screen.getByRole("button", { name: "Try again" }));
  expect(await screen.findByRole("heading", { name: "arrived" })).toBeTruthy();
  expect(await askForMissing()).toBe(true);
});
