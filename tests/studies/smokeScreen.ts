import { spawn } from "node:child_process";
import type { Readable } from "node:stream";

/** A screen that nobody sees, for a browser that needs one. */
export interface OwnScreen {
  readonly display: string;
  stop(): void;
}

/** Starts one under a number that is free, which the program itself finds and writes down. */
export function ownScreen(program: string): Promise<OwnScreen> {
  const options = ["-displayfd", "3", "-screen", "0", "1280x1000x24", "-nolisten", "tcp"];
  const child = spawn(program, options, { stdio: ["ignore", "ignore", "ignore", "pipe"] });
  return new Promise((resolve, reject) => {
    let told = "";
    const number = child.stdio[3] as Readable;
    number.setEncoding("utf8");
    number.on("data", (text: string) => {
      told += text;
      if (told.includes("\n")) resolve({ display: `:${told.trim()}`, stop: () => child.kill() });
    });
    child.once("error", reject);
    child.once("exit", (code) => reject(new Error(`The screen ${program} ended with code ${code}.`)));
  });
}
