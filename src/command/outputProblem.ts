import { plainText } from "./plainText";

/**
 * Why a plan could not be written to standard output, in one sentence, or null where nothing is wrong: a reader that
 * has seen enough, such as `head`, closes the pipe.
 */
export function outputProblem(error: Error): string | null {
  const code = "code" in error ? String(error.code) : null;
  if (code === "EPIPE") return null;
  const why = code === null ? plainText(error.message) : `${reasons[code] ?? "the system refused it"} (${code})`;
  return `The plan could not be written: ${why}.`;
}

const reasons: { readonly [code: string]: string } = {
  ENOSPC: "there is no room left where it should go",
  EDQUOT: "there is no room left where it should go",
  EIO: "the device it should go to failed",
};
