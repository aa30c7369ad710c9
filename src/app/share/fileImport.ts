import type { Fitting } from "../../document/fitting";
import type { AddedFitting } from "../storage/addFittings";
import type { NotSaved } from "../storage/fittingOutcome";
import type { FittingStorage } from "../storage/fittingStorage";
import { type FileProblem, type FileReading, readBlob } from "./fittingFile";

/** What came of opening a file: every fitting of it was taken up, or none, with every reason. */
export type ImportOutcome =
  | Imported
  | { readonly kind: "refused"; readonly problems: readonly FileProblem[] }
  /** The file was fine, and there was no way to keep it. */
  | NotSaved;

export interface Imported {
  readonly kind: "imported";
  readonly fittings: readonly AddedFitting[];
  /** Those of the file that were here already and were not added again. */
  readonly alreadyHere: readonly Fitting[];
}

export async function importFile(
  file: Blob,
  storage: FittingStorage,
  read: (file: Blob) => Promise<FileReading> = readBlob,
): Promise<ImportOutcome> {
  const found = await read(file);
  return found.ok ? importFittings(found.value, storage) : { kind: "refused", problems: found.problem };
}

export async function importFittings(
  fittings: readonly Fitting[],
  storage: FittingStorage,
): Promise<Imported | NotSaved> {
  const added = await storage.add(fittings);
  if (added.kind === "notSaved") return added;
  const alreadyHere = fittings.filter((_, i) => added.fittings[i]?.kind === "alreadyHere");
  return { kind: "imported", fittings: added.fittings, alreadyHere };
}
