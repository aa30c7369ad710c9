import { act, cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import longBack from "../../shared/demo/long-back.json";
import twoSides from "../../shared/demo/two-sides.json";
import { lengthRows } from "../../src/app/print/shortMeasuring";
import { classNumbers, numbersToKeep } from "../../src/app/classView/classNumbers";
import { newFitting } from "../../src/app/session/newFitting";
import { fittingStore } from "../../src/app/session/store";
import { readBlob } from "../../src/app/share/fittingFile";
import { startAutosave } from "../../src/app/storage/autosave";
import { fittingStorage } from "../../src/app/storage/fittingStorage";
import { tabChannel } from "../../src/app/storage/tabChannel";
import { measurementNames } from "../../src/core/body/vocabulary";
import type { Fitting } from "../../src/document/fitting";
import { bodyGroups, formGroups } from "../../src/app/progress/measureGroups";
import { rosterNames, rosterWords } from "../../src/text/roster";
import { shelf } from "../../src/ui/kit/shelf/shelf";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { FittingsPage } from "../../src/ui/pages/fittings/FittingsPage";
import { footRule } from "../../src/ui/pages/fittings/footRule";
import { UsualSheets } from "../../src/ui/kit/sheet/UsualSheets";
import { PrintedSheet } from "../../src/ui/shell/PrintedSheet";
import { memoryStores } from "../app/storage/memoryStores";
import { fittingFrom } from "../app/storage/sampleFittings";

const titled = (file: object, title: string, id: string): Fitting => fittingFrom({ ...file, title, id });
const anna = titled(longBack, "Anna", "anna-00001");
const berta = titled(twoSides, "Berta", "berta-0001");
const unmeasured: Fitting = { ...newFitting("in"), title: "Carla", id: "carla-0001" };

let printed: ReturnType<typeof vi.fn>;

beforeEach(() => {
  printed = vi.fn();
  vi.stubGlobal("print", printed);
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  act(() => shelf.setState({ autosave: null, open: null, news: [] }));
});

/** The page of fittings with these on the list, and another one open. */
async function shown(fittings: readonly Fitting[]) {
  const store = fittingStore({ ...anna, id: "open-00001", title: "Open Olga" });
  const storage = fittingStorage(memoryStores(), { now: () => "2026-05-02T08:00:00.000Z", newId: () => "made-by-us" });
  const context = { storage, locks: undefined, channel: tabChannel(undefined), later: () => () => {} };
  const autosave = startAutosave(store, context, {
    onState: () => {},
    onFirstSave: () => {},
    onHistoryLost: () => {},
  });
  await storage.add(fittings);
  shelf.setState({ autosave });
  const { container } = render(
    <StoreProvider store={store}>
      <FittingsPage />
      <PrintedSheet />
    </StoreProvider>,
  );
  await screen.findByRole("heading", { name: rosterWords.title });
  const press = (name: string) => fireEvent.click(screen.getByRole("button", { name }));
  const everyone = () => [...container.querySelectorAll<HTMLElement>(".sheets-of-one")];
  const add = (fitting: Fitting) =>
    act(async () => {
      await storage.add([fitting]);
      shelf.setState(({ turn }) => ({ turn: turn + 1 }));
    });
  return { container, press, everyone, add };
}

const textOf = (part: Element): string => (part.textContent ?? "").replaceAll("\u00a0", " ");

/** What is printed for one fitting that is open alone. */
function alone(fitting: Fitting): string {
  const { container, unmount } = render(
    <StoreProvider store={fittingStore(fitting)}>
      <UsualSheets />
    </StoreProvider>,
  );
  const text = textOf(container);
  unmount();
  return text;
}

describe("the padding sheets of a class", () => {
  /** Broken on purpose: the open fitting's store left in place, a store handed on to the next, the open one's sheets kept. Seen to fail. */
  test("are printed at one press, and on each person's pages stands what is printed for that person alone", async () => {
    const { container, press, everyone } = await shown([unmeasured, berta, anna]);
    press(rosterWords.print.padding(3));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(1));
    const all = everyone();
    expect(all.map((part) => part.dataset.person)).toEqual(["Anna", "Berta"]);
    for (const part of all) {
      const own = part.dataset.person === "Anna" ? anna : berta;
      expect(part.querySelectorAll(".sheet").length).toBeGreaterThan(2);
      expect(textOf(part)).toBe(alone(own));
      expect(part.style.getPropertyValue("page") || part.getAttribute("style")).toContain("person-");
    }
    expect(textOf(all[0] as Element)).not.toBe(textOf(all[1] as Element));
    // Nothing of the fitting that is open comes between them.
    expect(container.querySelectorAll(".sheet")).toHaveLength(
      all.reduce((sum, part) => sum + part.querySelectorAll(".sheet").length, 0),
    );
    expect(screen.getByText("Left out, because there is no plan yet: Carla.")).toBeTruthy();
    press(rosterWords.putAway);
    expect(everyone()).toEqual([]);
    expect(textOf(container)).toContain("Padding sheet for Open Olga");
  });

  /** Broken on purpose: the own title kept beside the number. Seen to fail. */
  test("carry numbers in place of names where that is wished, and say on the screen alone who is who", async () => {
    const { press, everyone } = await shown([anna, berta]);
    fireEvent.click(screen.getByRole("checkbox", { name: rosterWords.nameless }));
    for (const name of ["Anna", "Berta"])
      expect(screen.getByRole("checkbox", { name: new RegExp(`^${name}, on paper Person [12]$`) })).toBeTruthy();
    press(rosterWords.print.padding(2));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(1));
    const all = everyone();
    expect(all.map((part) => part.dataset.person)).toEqual(["Person 1", "Person 2"]);
    for (const [i, part] of all.entries()) {
      expect(textOf(part)).toContain(`Padding sheet for Person ${i + 1}`);
      expect(textOf(part)).not.toMatch(/Anna|Berta/);
    }
  });

  test("are those of who is ticked, and are gone when somebody is ticked or unticked", async () => {
    const { press, everyone } = await shown([anna, berta]);
    const roster = within(screen.getByRole("group", { name: rosterWords.who }));
    fireEvent.click(roster.getByRole("checkbox", { name: "Anna" }));
    press(rosterWords.print.padding(1));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(1));
    expect(everyone().map((part) => part.dataset.person)).toEqual(["Berta"]);
    fireEvent.click(roster.getByRole("checkbox", { name: "Anna" }));
    expect(everyone()).toEqual([]);
    expect(printed).toHaveBeenCalledTimes(1);
    fireEvent.click(screen.getByRole("button", { name: rosterWords.nobody }));
    expect(screen.getByRole("button", { name: rosterWords.print.padding(0) })).toHaveProperty("disabled", true);
    // Whoever is left out leaves their number free.
    fireEvent.click(screen.getByRole("checkbox", { name: rosterWords.nameless }));
    fireEvent.click(roster.getByRole("checkbox", { name: /^Berta/ }));
    press(rosterWords.print.measuring(1));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(2));
    expect(everyone().map((part) => part.dataset.person)).toEqual(["Person 2"]);
  });

  test("nobody with a plan: nothing is printed, and that is said", async () => {
    const { press, everyone } = await shown([unmeasured, { ...unmeasured, id: "dora-00001", title: "Dora" }]);
    press(rosterWords.print.padding(2));
    await screen.findByText("Left out, because there is no plan yet: Carla, Dora.");
    // What prints would be there at once.
    await import("../../src/ui/pages/fittings/ClassSheets");
    await act(() => new Promise((resolve) => setTimeout(resolve, 50)));
    expect(everyone()).toEqual([]);
    expect(printed).not.toHaveBeenCalled();
  });
});

describe("the blank measuring sheets of a class", () => {
  /** Broken on purpose: a column left out, a cell for a form's arm, a name left off, the order turned around. Seen to fail. */
  test("are one page each with the name, and have a cell for every measurement of person and form, all blank", async () => {
    const { press, everyone } = await shown([unmeasured, anna]);
    press(rosterWords.print.measuring(2));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(1));
    expect(everyone().map((part) => part.dataset.person)).toEqual(["Anna", "Carla"]);
    const oneSide = /^(left|right)[A-Z]|(Left|Right)(Front|Back)Arc$/;
    for (const part of everyone()) {
      expect(part.querySelectorAll(".sheet")).toHaveLength(1);
      expect(textOf(part)).toContain(`For ${part.dataset.person}`);
      const cells = [...part.querySelectorAll<HTMLElement>("[data-measurement]")];
      expect(cells.every((cell) => cell.textContent === "")).toBe(true);
      const of = (whose: string) =>
        cells.filter((cell) => cell.dataset.whose === whose).map((cell) => cell.dataset.measurement ?? "");
      const belowNapeOnLines = /^(bust|underbust|waist|highHip|fullHip)BelowNape$/;
      const body = bodyGroups.flatMap(({ names }) => names).filter((name) => !belowNapeOnLines.test(name));
      const form = formGroups
        .flatMap(({ names }) => names)
        .filter((name) => !/^(bust|underbust|waist|highHip|fullHip)Height$/.test(name));
      expect(of("body").toSorted()).toEqual(body.filter((name) => !oneSide.test(name)).toSorted());
      expect(of("form").toSorted()).toEqual(form.filter((name) => !oneSide.test(name)).toSorted());
    }
    expect(lengthRows.length).toBeGreaterThan(25);
    expect(measurementNames.length).toBe(92);
  });
});

describe("the class file", () => {
  /** What the one press hands out as a file. */
  async function saved(press: (name: string) => void) {
    const handed: Blob[] = [];
    vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
      handed.push(file as Blob);
      return "blob:handed";
    });
    const names: string[] = [];
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      names.push(this.download);
    });
    press(rosterWords.saveFile(2));
    await waitFor(() => expect(handed.length).toBe(1));
    vi.restoreAllMocks();
    const [file] = handed as [Blob];
    const read = await readBlob(file);
    if (!read.ok) throw new Error("the class file cannot be opened again");
    return { text: await file.text(), fittings: read.value, name: names[0] ?? "" };
  }
  const pinnedAt = "2026-05-01T08:00:00.000Z";
  const noted: Fitting = {
    ...anna,
    notes: "Anna stands straight",
    createdAt: pinnedAt,
    drafts: { ...anna.drafts, other: { title: "Anna K" } },
    extra: { teacher: "Anna's aunt" },
    work: [{ did: "marked", at: pinnedAt }],
  };

  test("holds who is ticked, as they are", async () => {
    const { press } = await shown([noted, berta, unmeasured]);
    fireEvent.click(screen.getByRole("checkbox", { name: "Carla" }));
    const { fittings, name } = await saved(press);
    expect(name).toMatch(/^class \d{4}-\d\d-\d\d\.json$/);
    expect(fittings.toSorted((a, b) => (a.title < b.title ? -1 : 1))).toEqual([noted, berta]);
  });

  /** Broken on purpose: the id kept, the notes kept, the own title kept. Seen to fail. */
  test("says of nobody who it is where that is wished, and keeps figures and work", async () => {
    const { press } = await shown([noted, berta]);
    fireEvent.click(screen.getByRole("checkbox", { name: rosterWords.nameless }));
    const { text, fittings } = await saved(press);
    expect(text).not.toMatch(/anna|berta|aunt|straight|2026-05-01/i);
    expect(fittings.map(({ title }) => title)).toEqual(["Person 1", "Person 2"]);
    const ofAnna = fittings.find(({ body }) => JSON.stringify(body) === JSON.stringify(noted.body));
    expect(ofAnna).toMatchObject({ form: noted.form, work: [{ did: "marked" }] });
  });
});

/** Seen to fail: with letters and numbers counted anew for whoever takes part. */
test("each keeps one number and one letter, when one is left out and when another comes", async () => {
  const { press, add, container } = await shown([anna, berta, { ...berta, title: "Dora", id: "dora-00001" }]);
  const roster = within(screen.getByRole("group", { name: rosterWords.who }));
  fireEvent.click(roster.getByRole("checkbox", { name: "Anna" }));
  press("Add up 2 fittings");
  const letters = () => /The letters: ([^.]*)\./.exec(textOf(container))?.[1];
  await waitFor(() => expect(letters()).toBe("B Berta, C Dora"));
  await add({ ...anna, title: "Anja", id: "anja-00001" });
  await screen.findByRole("checkbox", { name: "Anja" });
  fireEvent.click(screen.getByRole("checkbox", { name: rosterWords.nameless }));
  for (const [name, number] of [
    ["Anja", 4],
    ["Anna", 1],
    ["Berta", 2],
    ["Dora", 3],
  ] as const)
    expect(screen.getByRole("checkbox", { name: `${name}, on paper Person ${number}` })).toBeTruthy();
});

describe("the numbers of a class", () => {
  /** Seen to fail: where the number of somebody who is not on the list was given again. */
  test("are given once, in order, and kept", () => {
    const first = classNumbers({}, ["a", "b"]);
    expect([...first]).toEqual([
      ["a", 1],
      ["b", 2],
    ]);
    const kept = numbersToKeep({}, first) ?? {};
    expect([...classNumbers(kept, ["c", "b"])]).toEqual([
      ["c", 3],
      ["b", 2],
    ]);
    expect(numbersToKeep(kept, first)).toBeNull();
    expect(classNumbers({ "classNumber a": "7", lastFileAt: 9 }, ["a"]).get("a")).toBe(1);
  });
});

describe("names on paper", () => {
  test("of two with one name the one with the lower number keeps it", () => {
    expect(rosterNames(["B", "B"], true, [2, 5])).toEqual(["B", "B (2)"]);
    expect(rosterNames(["B", ""], false, [2, 5])).toEqual(["Person 2", "Person 5"]);
  });

  test("each stands once, and who has none gets a number", () => {
    expect(rosterNames(["Ruth", "", "Ruth", " "], true)).toEqual(["Ruth", "Person 2", "Ruth (2)", "Person 4"]);
    expect(rosterNames(["Person 2", ""], true)).toEqual(["Person 2", "Person 2 (2)"]);
    expect(rosterNames(["Ruth", "Ida"], false)).toEqual(["Person 1", "Person 2"]);
  });

  /** Broken on purpose: the name written into the rule as it is. Seen to fail. */
  test.each([
    '"; } @page { margin: 0 } "',
    "</style><script>alert(1)</script>",
    "a\\",
    "a\nb",
    "a\u2028b",
    "*/ x",
    "Zoë 愛 💐",
  ])("%j stays inside the words at the foot", (name) => {
    const rule = footRule(0, name);
    const [, words = ""] =
      /^@page person-1 \{ @bottom-right \{ content: "(.*)"; font: 10pt sans-serif; \} \}$/.exec(rule) ?? [];
    expect(words).toMatch(/^(?:[\p{Letter}\p{Number}\p{Mark} ]|\\[0-9a-f]{1,6} )*$/u);
    const read = words.replaceAll(/\\([0-9a-f]{1,6}) /g, (_, code: string) =>
      String.fromCodePoint(Number.parseInt(code, 16)),
    );
    expect(read).toBe(name);
  });

  test("a title made of anything changes no page but by its words", async () => {
    const odd = '<b>"&amp;\\ }';
    const { press, everyone } = await shown([{ ...anna, title: odd }, berta]);
    press(rosterWords.print.padding(2));
    await waitFor(() => expect(printed).toHaveBeenCalledTimes(1));
    const part = everyone().find((one) => one.dataset.person === odd) as Element;
    expect(textOf(part).replaceAll(odd, "Anna")).toBe(alone(anna));
    expect(part.querySelector("b")).toBeNull();
  });
});
