/**
 * What the browser says about the room it gives us and whether it may clear it without asking. Neither question is
 * known to every browser; "unknown" then stands for not knowing.
 */
export type KeepAnswer = "kept" | "mayBeCleared" | "unknown";

/** Asks the browser to keep what is stored until the person clears it. Some browsers ask the person. */
export async function askToKeep(storage: StorageManager | undefined): Promise<KeepAnswer> {
  try {
    if (typeof storage?.persist !== "function") return "unknown";
    return (await storage.persist()) ? "kept" : "mayBeCleared";
  } catch {
    return "unknown";
  }
}

export async function keepAnswer(storage: StorageManager | undefined): Promise<KeepAnswer> {
  try {
    if (typeof storage?.persisted !== "function") return "unknown";
    return (await storage.persisted()) ? "kept" : "mayBeCleared";
  } catch {
    return "unknown";
  }
}
