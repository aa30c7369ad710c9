import { checkSum } from "./checkSum";
import type { ObjectStores } from "./objectStores";
import { erasedFittings } from "./erasedFittings";
import type { NotRead } from "./fittingOutcome";
import type { KnownFitting, KnownFittings } from "./knownFittings";

/** What was there once, was not erased, and is there no more; and whether all that is there was known. */
export type GoneOutcome =
  | { readonly kind: "compared"; readonly gone: readonly KnownFitting[]; readonly isAllKnown: boolean }
  | NotRead;

/** Compares what is there with the note of what was there, opening nothing. */
export async function goneFittings(stores: ObjectStores, known: KnownFittings): Promise<GoneOutcome> {
  // The note is read first: whatever stands in it had been kept by then.
  const before = known.all();
  const { keys, erased } = await stores.look(async (open) => ({
    keys: new Set(await open.readKeys("fittings")),
    erased: await erasedFittings(open),
  }));
  const away = before.filter(({ id }) => !keys.has(id));
  const gone = away.filter(({ id }) => !erased.has(checkSum(id)));
  for (const { id } of away) if (erased.has(checkSum(id))) known.forget(id);
  return { kind: "compared", gone, isAllKnown: before.length - away.length === keys.size };
}
