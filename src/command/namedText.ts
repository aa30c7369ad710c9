import { fileText } from "./fileText";
import { firstBytes } from "./firstBytes";

/** Bytes; several times what the largest fitting takes. */
const largestFile = 32_000_000;

/** The text of a named file, or of standard input for "-"; null where it cannot be read. */
export function namedText(name: string): string | null {
  try {
    return fileText(firstBytes(name, largestFile));
  } catch (error) {
    if (error instanceof Error && "code" in error) return null;
    throw error;
  }
}
