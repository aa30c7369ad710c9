import { act, cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { aheadDraftKey, paddedDraftKey } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { type FittingStore, fittingStore } from "../../src/app/session/store";
import type { MeasurementName } from "../../src/core/body/vocabulary";
import { formatLength, type LengthStep } from "../../src/core/lengthText";
import { assert } from "../../src/core/result";
import { mm } from "../../src/core/units";
import type { Fitting, WorkEntry } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { Announcer } from "../../src/ui/kit/Announcer";
import { PaddingPage } from "../../src/ui/pages/padding/PaddingPage";
import { StoreProvider } from "../../src/ui/kit/useStore";

vi.setConfig({ testTimeout: 120_000 });

const at = "2026-01-02T03:04:05.000Z";
const patience = { timeout: 30_000 };
const bare: Fitting = { ...demoFitting, form: { ...demoFitting.form, readAtBodyLines: true } };
const derive = derivation();
const { planning } = derive(bare);
assert(planning.kind === "planned", "the demo can be planned");

/** The structure on, its lines carried out, and so many readings taken. */
const structureOn = (...more: readonly WorkEntry[]): Fitting => {
  let fitting: Fitting = {
    ...bare,
    work: [
      { did: "prepared", what: "form", at },
      { did: "trial", batting: "b", level: "waist", at },
    ],
  };
  const note = (entry: WorkEntry) => {
    fitting = { ...fitting, work: [...fitting.work, entry] };
  };
  for (
    let step = derive(fitting).step()?.step;
    step !== undefined && step.do !== "read";
    step = derive(fitting).step()?.step
  ) {
    const { piece } = step;
    if (step.do === "cut" && piece !== null) note({ did: "cut", pieceId: piece.id, at });
    else if (step.do === "stack" && piece !== null) note({ did: "stacked", pieceId: piece.id, at });
    else if (step.do === "pin" && piece !== null) note({ did: "pinned", piece: pieceToFile(piece, "", ""), at });
    else if (step.do === "carry-lines") note({ did: "linesCarried", at });
    else if (step.do === "plan-anew") note({ did: "replanned", at });
    else throw new Error(`no way past ${step.do}`);
  }
  return { ...fitting, work: [...fitting.work, ...more] };
};
const structure = structureOn();
const expected = (name: MeasurementName, step: LengthStep = "1/8 in") => {
  const value = derive(structure).step()?.step.expected[name];
  assert(value !== undefined, "the reading is asked for");
  return formatLength(mm(value), step, "bare");
};

const slab = () => document.querySelector(".stop-slab") as HTMLButtonElement;
const heading = () => screen.queryByRole("heading", { level: 1 })?.textContent ?? "";
const field = () => document.querySelector(".reading-typed input") as HTMLInputElement;
const isHeading = async (words: string | RegExp) => {
  await waitFor(() => {
    expect(heading()).toMatch(words);
    expect(document.querySelector("[aria-busy=true]")).toBeNull();
  }, patience);
  // What has just been shown hears of the store a moment later; nobody presses within it.
  await act(async () => {});
};
const work = (store: FittingStore) => store.getState().fitting.work;

function shown(fitting: Fitting): FittingStore {
  const store = fittingStore(fitting);
  render(
    <StoreProvider store={store}>
      <Announcer>
        <PaddingPage />
      </Announcer>
    </StoreProvider>,
  );
  return store;
}

beforeEach(() => {
  window.location.hash = "#padding";
});

describe("measuring", () => {
  test("girth first, then the front: two figures, two presses, one record; then the next line is asked by itself", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    expect(slab()).toBeDisabled();
    fireEvent.click(
      screen.getByRole("button", { name: new RegExp(`^${expected("bustGirth").replace(" ", ".")}.in$`) }),
    );
    await waitFor(() => expect(slab().textContent).toMatch(/^Save .*\sin, then front$/), patience);
    expect(document.querySelector(".band[aria-current]")?.textContent).toContain("On target");
    fireEvent.click(slab());
    await isHeading("Measure the front bust.");
    expect(work(store)).toBe(structure.work);
    fireEvent.change(field(), { target: { value: expected("bustFrontArc") } });
    fireEvent.click(slab());
    expect(work(store).at(-1)).toMatchObject({
      did: "measured",
      readings: { bustGirth: expected("bustGirth"), bustFrontArc: expected("bustFrontArc") },
    });
    expect(store.getState().fitting.drafts.other).toEqual({});
    expect(document.querySelector("[aria-live=polite]")?.textContent).toMatch(/^Bust, all around .*Front bust /);
    await isHeading("Measure the underbust, all around.");
  });

  /** Seen to fail: the figure went to the front bust, which was noted already, and was not seen again. */
  test("nobody waits for what a line taught: the next one is asked at once, and noted as soon as it may be", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    const type = (text: string) => {
      fireEvent.change(field(), { target: { value: text } });
      fireEvent.keyDown(field(), { key: "Enter" });
    };
    const isWorking = () => document.querySelector(".padding-page")?.getAttribute("aria-busy") === "true";
    type(expected("bustGirth"));
    type(expected("bustFrontArc"));
    expect(work(store)).toHaveLength(structure.work.length + 1);
    expect([isWorking(), heading()]).toEqual([true, "Measure the underbust, all around."]);
    type(expected("underbustGirth"));
    type(expected("underbustFrontArc"));
    // Whether these are what is asked is not known yet.
    expect([isWorking(), work(store).length]).toEqual([true, structure.work.length + 1]);
    await isHeading("Measure the waist, all around.");
    expect(work(store)).toHaveLength(structure.work.length + 2);
    expect(work(store).at(-1)).toMatchObject({ readings: { underbustGirth: expected("underbustGirth") } });
    expect(store.getState().fitting.drafts.other).toEqual({});
  });

  test("a line that is asked once more after all is, and what was typed of the next one waits for it", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    for (const text of [expected("bustGirth"), "16"]) {
      fireEvent.change(field(), { target: { value: text } });
      fireEvent.keyDown(field(), { key: "Enter" });
    }
    fireEvent.change(field(), { target: { value: "33" } });
    await isHeading(/^Measure the (front )?bust once more/);
    expect(store.getState().fitting.drafts.other).toEqual({ [paddedDraftKey("underbustGirth")]: "33" });
    expect(field().value).toBe("");
  });

  test("where no reading comes next it is let go", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    act(() => store.dispatch({ does: "draft", of: "other", key: aheadDraftKey, text: "33" }));
    cleanup();
    expect(store.getState().fitting.drafts.other).toEqual({});
  });

  test("a figure typed by a keyboard goes to the reading that is asked, wherever the focus is", async () => {
    shown(structure);
    await isHeading("Measure the bust, all around.");
    (document.activeElement as HTMLElement | null)?.blur();
    fireEvent.keyDown(document.body, { key: "3" });
    expect(document.activeElement).toBe(field());
  });

  test("less and more say what the next step makes of it; what is no length cannot be saved and stays as typed", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    fireEvent.change(field(), { target: { value: "20" } });
    expect(document.querySelector(".band[aria-current]")?.textContent).toContain("what to add");
    fireEvent.change(field(), { target: { value: "thirty" } });
    expect(slab()).toBeDisabled();
    fireEvent.keyDown(field(), { key: "Enter" });
    expect(field().getAttribute("aria-invalid")).toBe("true");
    expect(store.getState().fitting.drafts.other[paddedDraftKey("bustGirth")]).toBe("thirty");
  });

  /** Seen to fail where the field was made anew for each reading, and where the instruction was only written. */
  test("the field stays from reading to reading with the focus in it, and what is asked next is said", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    const typedInto = field();
    act(() => typedInto.focus());
    fireEvent.change(typedInto, { target: { value: expected("bustGirth") } });
    fireEvent.keyDown(typedInto, { key: "Enter" });
    await isHeading("Measure the front bust.");
    expect(field()).toBe(typedInto);
    expect(document.activeElement).toBe(typedInto);
    expect(typedInto.value).toBe("");
    expect(document.querySelector("[aria-live=polite]")?.textContent).toContain("Measure the front bust.");
    expect(store.getState().fitting.drafts.other[paddedDraftKey("bustGirth")]).toBe(expected("bustGirth"));
  });

  /** Seen to fail where a letter made the keys of the tape anew. */
  test("a letter changes the field, the difference, the tape and the slab, and nothing else", async () => {
    shown(structure);
    await isHeading("Measure the bust, all around.");
    fireEvent.change(field(), { target: { value: "3" } });
    const touched: Element[] = [];
    const watcher = new MutationObserver((changes) => {
      for (const { target } of changes)
        touched.push(target instanceof Element ? target : (target.parentElement as Element));
    });
    watcher.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    fireEvent.change(field(), { target: { value: expected("bustGirth") } });
    await waitFor(() => expect(document.querySelector(".band[aria-current]")?.textContent).toContain("On target"));
    watcher.disconnect();
    expect(touched.length).toBeGreaterThan(0);
    const beside = touched.filter(
      (part) => part.closest(".reading-typed, .stop-slab, .band, .tape-key, .reading-parts") === null,
    );
    expect(beside).toEqual([]);
  });

  test("a girth before may be taken again; the front may be left out; and all of it", async () => {
    const store = shown(structure);
    await isHeading("Measure the bust, all around.");
    fireEvent.change(field(), { target: { value: "35" } });
    fireEvent.click(slab());
    await isHeading("Measure the front bust.");
    fireEvent.click(screen.getByRole("button", { name: /^all around 35/ }));
    await isHeading("Measure the bust, all around.");
    fireEvent.change(field(), { target: { value: expected("bustGirth") } });
    fireEvent.click(slab());
    await isHeading("Measure the front bust.");
    fireEvent.click(screen.getByRole("button", { name: "Leave this one out" }));
    expect(work(store).at(-1)).toMatchObject({ readings: { bustGirth: expected("bustGirth") } });
    await isHeading("Measure the underbust, all around.");
    fireEvent.click(screen.getByRole("button", { name: "Leave these measurements out" }));
    expect(work(store).at(-1)).toMatchObject({ did: "measured", readings: {} });
  });
});

describe("a reading that cannot be", () => {
  const slip: WorkEntry = { did: "measured", readings: { bustGirth: "70" }, at };

  test("is asked once more, with what was typed and what can be; ignoring it asks as if it had not been", async () => {
    const store = shown(structureOn(slip));
    await isHeading("Measure the bust once more.");
    expect(screen.getByText(/You typed 70.in\./)).toBeInTheDocument();
    expect(screen.getByText(/the tape can read .* to /)).toBeInTheDocument();
    fireEvent.click(screen.getByRole("button", { name: "Ignore this reading" }));
    await isHeading("Measure the bust, all around.");
    expect(work(store)).toEqual(structure.work);
  });

  test("measured again the work goes on", async () => {
    const store = shown(structureOn(slip));
    await isHeading("Measure the bust once more.");
    fireEvent.change(field(), { target: { value: expected("bustGirth") } });
    fireEvent.click(slab());
    await isHeading("Measure the underbust, all around.");
    expect(work(store).at(-1)).toMatchObject({ readings: { bustGirth: expected("bustGirth") } });
  });

  test("two different readings of one place are shown, and choosing one ignores the other", async () => {
    const near = (more: number): WorkEntry => {
      const value = (derive(structure).step()?.step.expected.bustGirth ?? 0) + more;
      return { did: "measured", readings: { bustGirth: `${value.toFixed(1)} mm` }, at };
    };
    const store = shown(structureOn(near(-8), near(8)));
    await isHeading("Two different measurements of one place.");
    const both = within(screen.getByRole("group", { name: /Which one is correct/ })).getAllByRole("button");
    expect(both).toHaveLength(2);
    expect(slab()).toBeDisabled();
    fireEvent.click(both[1] as HTMLElement);
    fireEvent.click(slab());
    await isHeading("Measure the underbust, all around.");
    expect(work(store).slice(structure.work.length)).toEqual([near(8)]);
  });
});

test("before the remaining pieces are updated, each is named with what becomes of it, and nothing has changed yet", async () => {
  const [bust = 0, short = 60] = [0];
  const levels = ["bust", "underbust", "waist", "highHip", "fullHip"] as const;
  const readings = Object.fromEntries(
    levels.map((level) => {
      const value = derive(structure).step()?.step.expected[`${level}Girth`] ?? bust;
      return [`${level}Girth`, `${(value - short).toFixed(1)} mm`];
    }),
  );
  const store = shown(structureOn({ did: "measured", readings, at }, { did: "measured", readings, at }));
  await waitFor(() => expect(heading()).toMatch(/Update the remaining pieces|once more|Two different/), patience);
  await isHeading("Update the remaining pieces.");
  const list = within(screen.getByRole("list", { name: "The remaining pieces" })).getAllByRole("listitem");
  expect(list.some(({ textContent }) => /: (one|two|three|four|five|six) layers?$|layer/.test(textContent ?? ""))).toBe(
    true,
  );
  expect(work(store).at(-1)?.did).toBe("measured");
  fireEvent.click(slab());
  expect(work(store).at(-1)?.did).toBe("replanned");
});

describe("the trial", () => {
  const fresh: Fitting = { ...bare, work: [{ did: "prepared", what: "form", at }] };

  test("two figures and what they are; after that is not more is no trial", async () => {
    const store = shown(fresh);
    await isHeading("Try the batting.");
    fireEvent.change(field(), { target: { value: "23 1/4" } });
    fireEvent.click(slab());
    await waitFor(() => expect(screen.getByRole("textbox", { name: /over the strip/ })).toBeInTheDocument());
    fireEvent.change(field(), { target: { value: "23" } });
    expect(screen.getByText(/After is not more than before/)).toBeInTheDocument();
    expect(slab()).toBeDisabled();
    fireEvent.change(field(), { target: { value: "27 5/8" } });
    fireEvent.click(slab());
    expect(work(store).at(-1)).toMatchObject({ did: "trial", layers: 3, before: "23 1/4", after: "27 5/8" });
    await isHeading(/^(Update the remaining pieces|Cut )/);
  });

  test("skipped at one press, and not asked again", async () => {
    const store = shown(fresh);
    await isHeading("Try the batting.");
    fireEvent.click(screen.getByRole("button", { name: "Skip the trial" }));
    expect(work(store).at(-1)).toEqual({
      did: "trial",
      batting: bare.batting.name,
      level: "waist",
      layers: 3,
      at: expect.any(String),
    });
    // Nobody knows then how thick a layer turns out, so fewer are cut until the tape has read them.
    await isHeading("Update the remaining pieces.");
  });
});

test("pins are counted in the record; a missing one has a path of its own", async () => {
  const readings: WorkEntry = { did: "measured", readings: {}, at };
  let fitting = structureOn(readings);
  for (let step = derive(fitting).step()?.step; step?.do !== "baste"; step = derive(fitting).step()?.step) {
    const piece = step?.piece;
    if (piece === null || piece === undefined) throw new Error(`no way past ${step?.do}`);
    const entry: WorkEntry =
      step?.do === "cut"
        ? { did: "cut", pieceId: piece.id, at }
        : { did: "pinned", piece: pieceToFile(piece, "", ""), at };
    fitting = { ...fitting, work: [...fitting.work, entry, ...(entry.did === "pinned" ? [readings] : [])] };
  }
  const store = shown(fitting);
  await isHeading(/^Baste /);
  expect(screen.getByText(/You can stop for the day here/)).toBeInTheDocument();
  fireEvent.click(screen.getByRole("button", { name: "One is missing" }));
  await isHeading("One pin is missing: stop.");
  fireEvent.click(slab());
  fireEvent.change(screen.getByRole("textbox", { name: "Pins taken out" }), { target: { value: "36" } });
  expect(slab().textContent).toBe("Basted, 36 pins out");
  fireEvent.click(slab());
  expect(work(store).at(-1)).toMatchObject({ did: "basted", pins: 36 });
});

test("another piece is looked at from the route without changing the step, and a pinned one can be taken off there", async () => {
  const store = shown(structure);
  await isHeading("Measure the bust, all around.");
  const stops = within(screen.getByRole("list", { name: "Pieces, in the order of pinning" })).getAllByRole("button");
  expect(stops.filter((stop) => stop.getAttribute("aria-label")?.endsWith(": pinned")).length).toBeGreaterThan(2);
  fireEvent.click(stops[0] as HTMLElement);
  await isHeading(/^Pin /);
  expect(work(store)).toBe(structure.work);
  fireEvent.click(screen.getByRole("button", { name: "Back to the next step" }));
  await isHeading("Measure the bust, all around.");
  fireEvent.click(stops[0] as HTMLElement);
  fireEvent.click(screen.getByRole("button", { name: "Take this piece off again" }));
  expect(work(store).at(-1)?.did).toBe("unpinned");
  act(() => store.undo());
  await isHeading("Measure the bust, all around.");
});

test("entries that could not be used are told, and that a log is full", () => {
  const store = shown({ ...structure, extra: { workSetAside: [{ did: "pinned", piece: {} }] } });
  expect(screen.getByText(/One entry of this fitting’s log is not possible/)).toBeInTheDocument();
  expect(screen.queryByText(/log of this fitting is full/)).toBeNull();
  act(() => {
    for (let i = 0; i < 2000; i++)
      store.dispatch({ does: "record", entry: { did: "unpinned", pieceId: "nobody", at } });
  });
  expect(screen.getByText(/log of this fitting is full/)).toBeInTheDocument();
});
