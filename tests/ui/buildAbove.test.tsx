import { readFileSync } from "node:fs";
import { fireEvent, render, screen, waitFor } from "@testing-library/react";
import { beforeAll, describe, expect, test, vi } from "vitest";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { Announcer } from "../../src/ui/kit/Announcer";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { PaddingPage } from "../../src/ui/pages/padding/PaddingPage";
import { commandWalk, fittingOf } from "../tools/commandWalk";

vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const file = JSON.parse(readFileSync("shared/demo/whole-job.json", "utf8")) as object;
const heading = () => screen.queryByRole("heading", { level: 1 })?.textContent ?? "";
const slab = () => document.querySelector(".stop-slab") as HTMLButtonElement;
const isAt = (title: RegExp) => waitFor(() => expect(heading()).toMatch(title), { timeout: 60_000 });

let built: Fitting;
beforeAll(() => {
  built = commandWalk(fittingOf(file), { until: "build-above" }).last;
});

async function shown() {
  const store = fittingStore(built);
  const { unmount } = render(
    <StoreProvider store={store}>
      <Announcer>
        <PaddingPage />
      </Announcer>
    </StoreProvider>,
  );
  await isAt(/^Pin the upper back panel/);
  fireEvent.click(slab());
  await isAt(/^Measure over the upper back panel/);
  return { store, unmount, last: () => store.getState().fitting.work.at(-1) };
}

const field = (label: string) => screen.getByLabelText(new RegExp(`^${label} [a-z]+$`));
/** What a field of the stop should read, as it says beneath it (cm). */
const should = (label: string): number =>
  Number(/([\d.]+)/.exec(field(label).closest(".read-above > div")?.querySelector(".small")?.textContent ?? "")?.[1]);
const type = (label: string, cm: number) =>
  fireEvent.change(field(label), { target: { value: `${cm.toFixed(1)} cm` } });
const layers = () =>
  Number(screen.getByRole("group", { name: "Layers that lie there" }).querySelector("output")?.textContent);

describe("over what is built above the bust", () => {
  /**
   * Seen to fail: the readings left out of the entry; a layer more not counted in the entry; what should be read over it taken from
   * the plan instead of the last reading.
   */
  test("a tape that reads short asks for one layer more, which is noted and read again", async () => {
    const { store, unmount, last } = await shown();
    const planned = layers();
    const [length, across] = [should("Back waist length"), should("Upper back width")];
    type("Back waist length", length - 2);
    type("Upper back width", across - 2.5);
    fireEvent.click(slab());
    expect(last()).toMatchObject({
      did: "builtAbove",
      build: "upperBack-both",
      layers: { whole: planned },
      readings: { napeToWaist: `${(length - 2).toFixed(1)} cm`, upperBackWidth: `${(across - 2.5).toFixed(1)} cm` },
    });
    await isAt(/^Add one layer to the upper back panel/);
    expect(document.body.textContent).toMatch(/Upper back width is [\d.]+\s?cm short/);
    expect(Object.keys(store.getState().fitting.drafts.other)).toEqual([]);
    fireEvent.click(slab());
    expect(layers()).toBe(planned + 1);
    expect(should("Upper back width")).toBeGreaterThan(across - 2.5);
    expect(should("Upper back width")).toBeLessThan(across);
    fireEvent.click(slab());
    expect(last()).toMatchObject({ did: "builtAbove", layers: { whole: planned + 1 }, readings: {} });
    await isAt(/^Pin the (?!upper back)/);
    unmount();
  });

  /** Seen to fail: on a tape that reads over without a limit; the layer put on instead. */
  test("a tape that reads over takes the outermost layer off, or leaves it as it is", async () => {
    const { unmount, last } = await shown();
    const planned = layers();
    type("Upper back width", should("Upper back width") + 2.5);
    fireEvent.click(slab());
    await isAt(/^Take the outermost layer off the upper back panel/);
    fireEvent.click(slab());
    expect(layers()).toBe(planned - 1);
    fireEvent.click(screen.getByRole("button", { name: "Back to the layers" }));
    fireEvent.click(screen.getByRole("button", { name: "Leave it as it is" }));
    expect(last()).toMatchObject({ did: "builtAbove", layers: { whole: planned }, readings: {} });
    await isAt(/^Pin the (?!upper back)/);
    unmount();
  });

  /** Seen to fail: the number of layers of the plan noted instead of what hands have put there. */
  test("hands that stop a layer early say so, and the tape is then expected to read less", async () => {
    const { unmount, last } = await shown();
    const [planned, before] = [layers(), should("Upper back width")];
    fireEvent.click(screen.getByRole("button", { name: "One layer fewer" }));
    expect(layers()).toBe(planned - 1);
    expect(should("Upper back width")).toBeLessThan(before);
    fireEvent.click(slab());
    expect(last()).toMatchObject({ did: "builtAbove", layers: { whole: planned - 1 } });
    unmount();
  });

  test("what cannot be read is kept in its field, and nothing is noted", async () => {
    const { store, unmount } = await shown();
    fireEvent.change(field("Upper back width"), { target: { value: "thirty" } });
    fireEvent.click(slab());
    expect(store.getState().fitting.work).toHaveLength(built.work.length);
    expect((field("Upper back width") as HTMLInputElement).value).toBe("thirty");
    unmount();
  });
});
