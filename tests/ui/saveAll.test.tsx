import { cleanup, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { afterEach, expect, test, vi } from "vitest";
import { readBlob } from "../../src/app/share/fittingFile";
import { knownFittings } from "../../src/app/storage/knownFittings";
import { fittingStorage } from "../../src/app/storage/fittingStorage";
import { SaveAll } from "../../src/ui/pages/fittings/FilePart";
import { fileWords } from "../../src/text/library";
import { fakeNotes } from "../app/storage/fakeNotes";
import { memoryStores } from "../app/storage/memoryStores";
import { sampleTitled } from "../app/storage/sampleFittings";

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

async function shown(count: number, notes: string) {
  const handed: Blob[] = [];
  const names: string[] = [];
  vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
    handed.push(file as Blob);
    return "blob:handed";
  });
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    names.push(this.download);
  });
  const known = knownFittings({ localStorage: fakeNotes() });
  const now = () => "2026-05-02T08:00:00.000Z";
  const storage = fittingStorage(memoryStores(), { now, newId: () => "made-by-us", known });
  const fittings = Array.from({ length: count }, (_, i) => ({
    ...sampleTitled(`Person ${i}`, `person-${i + 1_000}`),
    notes,
  }));
  await storage.add(fittings);
  render(<SaveAll storage={storage} ids={fittings.map(({ id }) => id ?? "")} />);
  return { handed, names, storage, known };
}

test("everything goes into one file at one press, and is noted then", async () => {
  const { handed, names, storage, known } = await shown(3, "");
  fireEvent.click(screen.getByRole("button", { name: fileWords.saveAll(3) }));
  await waitFor(async () => expect((await storage.settings()).lastFileAt).toBeTypeOf("string"));
  expect(handed.length).toBe(1);
  expect(known.all().map(({ file }) => file?.name)).toEqual([names[0], names[0], names[0]]);
});

// Seen to fail when everything went into one file, which was too large to be opened.
test("what is too much for one file takes a press for each, opens again, and is noted after the last", {
  timeout: 120_000,
}, async () => {
  const { handed, names, storage, known } = await shown(1_800, "x".repeat(19_000));
  fireEvent.click(screen.getByRole("button", { name: fileWords.saveAll(1_800) }));
  const second = await screen.findByRole("button", { name: "Save file 2 of 2" }, { timeout: 100_000 });
  expect(handed.length).toBe(1);
  expect(await storage.settings()).toEqual({});
  fireEvent.click(second);
  await waitFor(async () => expect((await storage.settings()).lastFileAt).toBeTypeOf("string"));
  expect(names.map((name) => /[12] of 2/.exec(name)?.[0])).toEqual(["1 of 2", "2 of 2"]);
  const read = await Promise.all(handed.map(readBlob));
  expect(read.reduce((sum, one) => sum + (one.ok ? one.value.length : Number.NaN), 0)).toBe(1_800);
  expect(screen.getByRole("button", { name: fileWords.saveAll(1_800) })).toBeTruthy();
  // Each fitting is noted with the file that it is in.
  const files = read.map((one) => (one.ok ? one.value.map(({ id }) => id) : []));
  for (const { id, file } of known.all()) expect(files[names.indexOf(file?.name ?? "")]).toContain(id);
});
