import { cleanup, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { afterEach, expect, test, vi } from "vitest";
import { readBlob } from "../../src/app/share/fittingFile";
import { fittingStorage } from "../../src/app/storage/fittingStorage";
import { SaveAll } from "../../src/ui/library/SaveAll";
import { fileWords } from "../../src/ui/text/library";
import { memoryDrawers } from "../app/storage/memoryDrawers";
import { sampleTitled } from "../app/storage/sampleFittings";

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function shown(count: number, notes: string) {
  const handed: Blob[] = [];
  const names: string[] = [];
  vi.spyOn(URL, "createObjectURL").mockImplementation((file) => {
    handed.push(file as Blob);
    return "blob:handed";
  });
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
    names.push(this.download);
  });
  const storage = fittingStorage(memoryDrawers(), { now: () => "2026-05-02T08:00:00.000Z", newId: () => "made-by-us" });
  const fittings = Array.from({ length: count }, (_, i) => ({ ...sampleTitled(`Person ${i}`), notes }));
  render(<SaveAll storage={storage} fittings={fittings} />);
  return { handed, names, storage };
}

test("everything goes into one file at one press, and is noted then", async () => {
  const { handed, storage } = shown(3, "");
  fireEvent.click(screen.getByRole("button", { name: fileWords.saveAll(3) }));
  await waitFor(async () => expect((await storage.settings()).lastFileAt).toBeTypeOf("string"));
  expect(handed.length).toBe(1);
});

// Seen to fail when everything went into one file, which was too large to be opened.
test("what is too much for one file takes a press for each, opens again, and is noted after the last", async () => {
  const { handed, names, storage } = shown(1_800, "x".repeat(19_000));
  fireEvent.click(screen.getByRole("button", { name: fileWords.saveAll(1_800) }));
  expect(handed.length).toBe(1);
  expect(await storage.settings()).toEqual({});
  fireEvent.click(screen.getByRole("button", { name: "Save file 2 of 2" }));
  await waitFor(async () => expect((await storage.settings()).lastFileAt).toBeTypeOf("string"));
  expect(names.map((name) => /[12] of 2/.exec(name)?.[0])).toEqual(["1 of 2", "2 of 2"]);
  const read = await Promise.all(handed.map(readBlob));
  expect(read.reduce((sum, one) => sum + (one.ok ? one.value.length : Number.NaN), 0)).toBe(1_800);
  expect(screen.getByRole("button", { name: fileWords.saveAll(1_800) })).toBeTruthy();
});
