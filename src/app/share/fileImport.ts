import type { AddedFitting } from "../storage/addFittings";
import type { NotSaved } from "../storage/fittingOutcome";
import type { FittingStorage } from "../storage/fittingStorage";
import { type FileProblem, largestFile, readFile } from "./fittingFile";

/** What came of opening a file: every fitting of it was taken up, or none, with every reason. */
export type ImportOutcome =
  | { readonly kind: "imported"; readonly fittings: readonly AddedFitting[] }
  | { readonly kind: "refused"; readonly problems: readonly FileProblem[] }
  /** The file was fine, and there was no way to keep it. */
  | NotSaved;

export async function importFile(file: Blob, storage: FittingStorage): Promise<ImportOutcome> {
  if (file.size > largestFile) {
    return { kind: "refused", problems: [{ code: "tooLarge", bytes: file.size, most: largestFile }] };
  }
  const bytes = await file.arrayBuffer().catch(() => null);
  if (bytes === null) return { kind: "refused", problems: [{ code: "notText" }] };
  const read = readFile(new Uint8Array(bytes));
  if (!read.ok) return { kind: "refused", problems: read.problem };
  const added = await storage.add(read.value);
  return added.kind === "added" ? { kind: "imported", fittings: added.fittings } : added;
}
