import { renderUnicodeCompact } from "uqr";
import { plainText } from "./plainText";

/** What is asked of `npm start`. */
export type StartWish =
  | { readonly kind: "serve"; readonly isShared: boolean }
  | { readonly kind: "help" }
  | { readonly kind: "refused"; readonly sentence: string };

export function startWish(names: readonly string[]): StartWish {
  if (names.includes("--help") || names.includes("-h")) return { kind: "help" };
  const unknown = names.find((name) => name !== "--share");
  if (unknown !== undefined) {
    return { kind: "refused", sentence: `“${plainText(unknown)}” is not an option; try npm start -- --help.` };
  }
  return { kind: "serve", isShared: names.includes("--share") };
}

export const startWords = {
  help: `Builds Padwright, serves it from this machine and opens it in your browser.

  npm start                 only this machine can reach it
  npm start -- --share      other devices on the same network can open it too, by an address or a square code`,
  demo: (address: string): string => `Padwright with a sample person:  ${address}`,
  alone: "Only this machine can reach it. Stop it with Ctrl-C.\n",
  shared: (network: readonly string[], hasColors: boolean): string => {
    const [first, ...more] = network;
    if (first === undefined) {
      return "This machine is in no network just now, so no other device can reach it. Stop it with Ctrl-C.\n";
    }
    return [
      `\nOn another device on the same network, open:  ${first}`,
      ...more.map((address) => `                                         or:  ${address}`),
      `\n${squareCode(first, hasColors)}\n`,
      ...meaning,
      "",
    ].join("\n");
  },
} as const;

const meaning: readonly string[] = [
  "What sharing means:",
  "- Every device in this network can open the tool as long as this command runs. Stop it with Ctrl-C.",
  "- Only the tool itself is passed on. Each device keeps its own fittings, and none of yours can be read from here.",
  "- In the class view, R shows a code for one phone as remote: it sends step moves, and gets the sentence of the step, without figures.",
  "- The address is not encrypted: share only in a network you trust.",
  "- At this address a browser does not keep the tool for later, so it does not open once this command has stopped;",
  "  nor does it keep the screen on. Save what you made there to a file.",
];

/**
 * A QR code (ISO/IEC 18004) in half blocks, the light squares written and the dark ones left empty, as a dark terminal
 * needs it; where there are colors, white on black whatever the terminal is.
 */
export function squareCode(text: string, hasColors: boolean): string {
  const lines = renderUnicodeCompact(text, { ecc: "L", border: 4 }).split("\n");
  return lines.map((line) => (hasColors ? `\u001b[97;40m${line}\u001b[0m` : line)).join("\n");
}
