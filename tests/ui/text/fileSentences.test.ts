import { describe, expect, it } from "vitest";
import { importFile } from "../../../src/app/share/fileImport";
import { writeBundle } from "../../../src/app/share/fittingFile";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { importSentences } from "../../../src/text/fileSentences";
import { memoryStores } from "../../app/storage/memoryStores";
import { sampleTitled } from "../../app/storage/sampleFittings";

describe("what is said of a file that was opened", () => {
  it.each([
    [0, ["This backup holds no fittings; nothing was added."]],
    [1, ["Opened and saved:", "Person 0: added."]],
    [2, ["Opened and saved:", "Person 0: added.", "Person 1: added."]],
  ])("says of a backup of %i fittings what came of it", async (count, sentences) => {
    let ids = 0;
    const storage = fittingStorage(memoryStores(), {
      now: () => "2026-01-01T00:00:00.000Z",
      newId: () => `id-${++ids}`,
    });
    const backup = writeBundle(
      Array.from({ length: count }, (_, i) => sampleTitled(`Person ${i}`, `person-100${i}`)),
      "2026-01-01T00:00:00.000Z",
    );
    expect(importSentences(await importFile(new Blob([backup]), storage), "cm")).toEqual(sentences);
  });
});
