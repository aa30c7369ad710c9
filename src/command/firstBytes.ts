import { closeSync, openSync, readSync } from "node:fs";

/**
 * The bytes at the beginning of a file, at most so many: a device or a pipe can go on for ever, and whatever is longer than
 * a fitting can be is refused by its beginning. Throws what the system throws, with its code.
 */
export function firstBytes(name: string, most: number): Uint8Array {
  const isInput = name === "-";
  const file = isInput ? standardInput : openSync(name, "r");
  try {
    const parts: Buffer[] = [];
    for (let left = most; left > 0; ) {
      const part = Buffer.alloc(Math.min(left, chunk));
      const length = readSync(file, part);
      if (length === 0) break;
      parts.push(part.subarray(0, length));
      left -= length;
    }
    return Buffer.concat(parts);
  } finally {
    if (!isInput) closeSync(file);
  }
}

const chunk = 1_000_000;
/** Its number and not `process.stdin`: once that has been touched, a pipe that is slow counts as a failure. */
const standardInput = 0;
