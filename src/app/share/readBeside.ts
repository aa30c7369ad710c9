import { type FileReading, readBlob } from "./fittingFile";

/** As much of a worker as is needed. */
export interface Beside {
  postMessage(file: Blob): void;
  addEventListener(kind: "message", heard: (event: { readonly data: FileReading }) => void): void;
  addEventListener(kind: "error" | "messageerror", heard: (event: Event) => void): void;
  terminate(): void;
}

/**
 * Reads a chosen file without holding up the page: a large one beside it in a worker of its own, or, where there is none
 * or it fails, on the page itself.
 */
export const readBeside =
  (start: () => Beside | null) =>
  async (file: Blob): Promise<FileReading> => {
    const beside = file.size > largestAtOnce ? start() : null;
    if (beside === null) return readBlob(file);
    try {
      return await answerOf(beside, file);
    } catch {
      return await readBlob(file);
    } finally {
      beside.terminate();
    }
  };

/** Bytes that are read in less time than a worker takes to start. */
const largestAtOnce = 100_000;

function answerOf(beside: Beside, file: Blob): Promise<FileReading> {
  return new Promise((resolve, reject) => {
    const fail = (event: Event): void => {
      event.preventDefault();
      reject(new Error("the worker has failed"));
    };
    beside.addEventListener("message", ({ data }) => resolve(data));
    beside.addEventListener("error", fail);
    beside.addEventListener("messageerror", fail);
    beside.postMessage(file);
  });
}
