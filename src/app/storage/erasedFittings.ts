import { checkSum } from "./checkSum";
import type { StoreName, StoresToChange, StoresToRead } from "./objectStores";
import { fieldsOf } from "./fields";

/**
 * Which fittings the person erased, so that nobody takes them for lost: the checks of their ids and nothing else of them,
 * noted in the very step that erases.
 */
export async function noteErased(open: StoresToChange, ids: readonly string[]): Promise<void> {
  if (ids.length > 0) await write(open, [...(await erasedFittings(open)), ...ids.map(checkSum)]);
}

/** A fitting that is there again under the same id may be lost again. */
export async function noteThereAgain(open: StoresToChange, id: string): Promise<void> {
  const before = [...(await erasedFittings(open))];
  const after = before.filter((check) => check !== checkSum(id));
  if (after.length < before.length) await write(open, after);
}

export async function erasedFittings(open: StoresToRead): Promise<ReadonlySet<string>> {
  const { checks } = fieldsOf(await open.read("settings", noteKey));
  return new Set(Array.isArray(checks) ? checks.filter((check) => typeof check === "string") : []);
}

/** Where the note lies; it is the one thing that outlives everything being erased. */
export const isErasedNote = (storeName: StoreName, key: string): boolean => storeName === "settings" && key === noteKey;

const noteKey = "erased";
/** The oldest go first; by then the other note has long forgotten them. */
const mostNoted = 4_000;

const write = (open: StoresToChange, checks: readonly string[]): Promise<void> =>
  open.write("settings", noteKey, { format: 1, checks: [...new Set(checks)].slice(-mostNoted) });
