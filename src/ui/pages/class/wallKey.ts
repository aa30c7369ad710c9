import { levelNames } from "../../../core/body/vocabulary";
import type { WallAction } from "./wallState";

/**
 * What a key does on the wall. Clickers send Page Down and Page Up, some the arrows, and a full stop or a B to blank the
 * screen. A key that is not ours, or held together with a command key, does nothing.
 */
export type WallKey =
  | WallAction
  | { readonly does: "unit" }
  | { readonly does: "fullScreen" }
  | { readonly does: "keys" }
  | { readonly does: "takeHome" };

export interface PressedKey {
  readonly key: string;
  readonly shift: boolean;
  /** Control, the command key or Alt: those belong to the browser. */
  readonly command: boolean;
}

export function wallKey({ key, shift, command }: PressedKey, lettersWork: boolean): WallKey | null {
  if (command) return null;
  if (key === " ") return { does: shift ? "back" : "forward" };
  const moving = movingKeys[key];
  if (moving !== undefined) return { does: moving };
  return lettersWork ? letterKey(key.toLowerCase()) : null;
}

const movingKeys: { readonly [key: string]: "forward" | "back" | "first" | "last" } = {
  ArrowRight: "forward",
  ArrowDown: "forward",
  PageDown: "forward",
  ArrowLeft: "back",
  ArrowUp: "back",
  PageUp: "back",
  Home: "first",
  End: "last",
};

function letterKey(key: string): WallKey | null {
  const letter = letterKeys[key];
  if (letter !== undefined) return letter;
  if (key === "0") return { does: "level", level: "follow" };
  const level = /^[1-9]$/.test(key) ? levelNames[Number(key) - 1] : undefined;
  return level === undefined ? null : { does: "level", level };
}

const letterKeys: { readonly [key: string]: WallKey } = {
  c: { does: "cover" },
  b: { does: "cover" },
  ".": { does: "cover" },
  m: { does: "madeUp" },
  o: { does: "own" },
  u: { does: "unit" },
  f: { does: "fullScreen" },
  t: { does: "takeHome" },
  k: { does: "keys" },
  "?": { does: "keys" },
};
