/** Whether the browser may clear what is kept without asking; "unknown" where it does not say. */
export type KeepAnswer = "kept" | "mayBeCleared" | "unknown";

/** Asks the browser to keep what is stored until the person clears it. Some browsers ask the person. */
export const askToKeep = (storage: StorageManager | undefined) => answerTo(storage, "persist");

export const keepAnswer = (storage: StorageManager | undefined) => answerTo(storage, "persisted");

async function answerTo(storage: StorageManager | undefined, question: "persist" | "persisted"): Promise<KeepAnswer> {
  try {
    const answer = await storage?.[question]?.();
    if (answer === undefined) return "unknown";
    return answer ? "kept" : "mayBeCleared";
  } catch {
    return "unknown";
  }
}
