import { act, cleanup, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { fittingStorage } from "../../src/app/storage/fittingStorage";
import { type Autosave, startAutosave } from "../../src/app/storage/autosave";
import { tabChannel } from "../../src/app/storage/tabChannel";
import { type FittingStore, fittingStore } from "../../src/app/session/store";
import { writeFittingFile } from "../../src/app/share/fittingFile";
import { FittingsPage } from "../../src/ui/pages/fittings/FittingsPage";
import { shelf } from "../../src/ui/kit/shelf/shelf";
import { newFitting } from "../../src/app/session/newFitting";
import { deviceWords, libraryWords } from "../../src/text/library";
import { intakeWords, refusedTexts } from "../../src/text/files";
import { savedWords } from "../../src/text/saved";
import { useDoAndSay } from "../../src/ui/kit/shelf/useDone";
import { type MemoryStores, memoryStores } from "../app/storage/memoryStores";
import { sampleTitled } from "../app/storage/sampleFittings";
import { renderedWithVoice } from "./withVoice";

/**
 * What is said to be done follows from what came of it. Each wish is made twice: with a storage that does it, which must be
 * said, and with one that refuses, where nothing of it may be said. Seen to fail for the name of the open fitting, for
 * every way back, and for a press that changes nothing.
 */
let stores: MemoryStores;
let autosave: Autosave;
let store: FittingStore;

beforeEach(async () => {
  stores = memoryStores();
  store = fittingStore(newFitting("cm"));
  let count = 0;
  const newId = (): string => {
    count += 1;
    return `made-by-us-${count}`;
  };
  const storage = fittingStorage(stores, { now: () => "2026-05-02T08:00:00.000Z", newId });
  const later = (milliseconds: number, work: () => void) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  };
  const context = { storage, locks: undefined, channel: tabChannel(undefined), later };
  autosave = startAutosave(store, context, {
    onState: (open) => shelf.setState({ open }),
    onFirstSave: () => {},
    onHistoryLost: () => {},
  });
  await storage.add([sampleTitled("Odile", "odile-0001"), sampleTitled("Ines", "ines-00001")]);
  await storage.setArchived("ines-00001", true);
  await autosave.open("odile-0001");
  shelf.setState({ autosave, open: shelf.getState().open });
});

afterEach(() => {
  cleanup();
  act(() => shelf.setState({ autosave: null, open: null, news: [] }));
});

const refuse = (): void => stores.failFrom((_, name) => (name === "write" || name === "clear" ? noRoom : null));
const allow = (): void => stores.failFrom(() => null);
const noRoom = { reason: "noRoom", when: "before" } as const;

async function shown() {
  const { container, heard } = renderedWithVoice(store, <FittingsPage />);
  await screen.findByRole("heading", { name: "Odile" });
  const tag = (title: string) => {
    const item = screen.getByRole("heading", { name: title }).closest("li");
    if (item === null) throw new Error(`${title} is not on the list`);
    return within(item);
  };
  const press = (title: string, name: string) => fireEvent.click(tag(title).getByRole("button", { name }));
  const more = (title: string) => press(title, libraryWords.moreOf(title));
  const give = (file: File) =>
    fireEvent.change(container.querySelector("input[type=file]") as HTMLInputElement, { target: { files: [file] } });
  return { heard, tag, press, more, give };
}

type Shown = Awaited<ReturnType<typeof shown>>;

function name({ more, tag }: Shown, title: string, to: string): void {
  more(title);
  const field = tag(title).getByLabelText(libraryWords.rename);
  fireEvent.change(field, { target: { value: to } });
  fireEvent.keyDown(field, { key: "Enter" });
}

const onMore =
  (title: string, action: string) =>
  ({ more, press }: Shown): void => {
    more(title);
    press(title, action);
  };

const file = new File([writeFittingFile(sampleTitled("Ruth"))], "ruth.json");
const wishes: readonly (readonly [string, string, (page: Shown) => void | Promise<void>])[] = [
  ["a name for the open fitting", libraryWords.renamed("Ruth"), (page) => name(page, "Odile", "Ruth")],
  ["a name for another", libraryWords.renamed("Ruth"), (page) => name(page, "Ines", "Ruth")],
  ["a copy", libraryWords.copied("Odile"), onMore("Odile", libraryWords.copy)],
  ["putting away", libraryWords.putAway("Odile"), onMore("Odile", libraryWords.archive)],
  ["taking out", libraryWords.takenOut("Ines"), onMore("Ines", libraryWords.unarchive)],
  ["removing", libraryWords.removed("Ines"), onMore("Ines", libraryWords.remove)],
  ["a file", "Ruth: added.", ({ give }) => give(file)],
  [
    "erasing everything",
    deviceWords.erased,
    () => {
      const asks = screen.getByRole("button", { name: deviceWords.eraseAll });
      const place = asks.parentElement as HTMLElement;
      fireEvent.click(asks);
      // A second press of the same finger deletes nothing.
      expect(place.firstElementChild?.textContent).toBe(deviceWords.keep);
      fireEvent.click(screen.getByRole("button", { name: deviceWords.eraseAllSure }));
    },
  ],
];

describe("what is said of a wish", () => {
  test.each(wishes)("%s: that it was done, once it was", async (_, done, wish) => {
    const page = await shown();
    await wish(page);
    await waitFor(() => expect(page.heard()).toContain(done));
  });

  test.each(wishes)("%s: that it was refused, and never that it was done", async (_, done, wish) => {
    const page = await shown();
    refuse();
    await wish(page);
    await waitFor(() => expect(page.heard()).toContain("no room left"));
    await act(() => new Promise((resolve) => setTimeout(resolve, 50)));
    expect(page.heard()).not.toContain(done);
  });

  test.each(wishes.slice(0, 6))("%s: undone is said only of what was undone", async (_, done, wish) => {
    const page = await shown();
    await wish(page);
    await waitFor(() => expect(page.heard()).toContain(done));
    refuse();
    const undo = () => fireEvent.click(screen.getByRole("button", { name: libraryWords.undo }));
    undo();
    await waitFor(() => expect(page.heard()).toContain("no room left"));
    expect(page.heard()).not.toContain(libraryWords.undone);
    allow();
    await screen.findByRole("button", { name: libraryWords.undo });
    undo();
    await waitFor(() => expect(page.heard()).toContain(libraryWords.undone));
  });

  test("a file that is here already is said to be, and a copy is added when asked for, and taken away again", async () => {
    const { give, heard } = await shown();
    const titles = async (): Promise<readonly string[]> => {
      const listed = await autosave.context.storage.list();
      return listed.kind !== "listed"
        ? []
        : listed.fittings.flatMap((one) =>
            one.kind === "fitting" && one.entry.deletedAt === null ? [one.entry.title] : [],
          );
    };
    give(file);
    await waitFor(() => expect(heard()).toContain("Ruth: added."));
    give(file);
    await waitFor(() => expect(heard()).toContain("Ruth: already here"));
    expect(await titles()).toEqual(["Odile", "Ines", "Ruth"]);
    refuse();
    const anyway = () => fireEvent.click(screen.getByRole("button", { name: intakeWords.addAnyway(1) }));
    anyway();
    await waitFor(() => expect(heard()).toContain(refusedTexts.noRoom));
    expect(heard()).not.toContain("Ruth (copy): added.");
    allow();
    give(file);
    await screen.findByRole("button", { name: intakeWords.addAnyway(1) });
    anyway();
    await waitFor(() => expect(heard()).toContain("Ruth (copy): added."));
    fireEvent.click(await screen.findByRole("button", { name: intakeWords.undo }));
    await waitFor(() => expect(heard()).toContain(intakeWords.undone));
    expect(await titles()).toEqual(["Odile", "Ines", "Ruth"]);
  });
});

function Pressed() {
  const doAndSay = useDoAndSay();
  return (
    <button type="button" onClick={() => doAndSay({ does: "note", notes: "measured twice" }, "Noted.")}>
      Note
    </button>
  );
}

describe("what is said of a press on the open fitting", () => {
  function pressed() {
    const { heard } = renderedWithVoice(store, <Pressed />);
    fireEvent.click(screen.getByRole("button", { name: "Note" }));
    return heard;
  }

  test("what was done, once", async () => {
    const heard = pressed();
    await act(() => autosave.isKept());
    fireEvent.click(screen.getByRole("button", { name: "Note" }));
    expect(heard().trim()).toBe("Noted.");
  });

  test("that it is not saved, where the storage refuses it", async () => {
    refuse();
    const heard = pressed();
    await waitFor(() => expect(heard()).toContain(savedWords.notSavedYet));
    expect(heard()).toContain("Noted.");
  });

  test("nothing, where nothing was changed", () => {
    act(() => store.look(sampleTitled("Nadja")));
    expect(pressed()().trim()).toBe("");
  });
});
