import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

/**
 * Contrast of the colours that meet on the screen, worked out from the style sheet itself. Limits and formula: Web
 * Content Accessibility Guidelines 2.2, W3C 2023, success criteria 1.4.3 (4.5:1 for text) and 1.4.11 (3:1 for marks),
 * with relative luminance as defined there.
 */
const sheet = readFileSync("src/ui/shell/tokens.css", "utf8");

type Colours = { readonly [name: string]: string };

/** The colours of the rule for `:root` inside each block, later ones over earlier ones. */
function coloursIn(...queries: readonly string[]): Colours {
  const colours: { [name: string]: string } = {};
  for (const query of queries) {
    const from = query === "" ? sheet : sheet.slice(sheet.indexOf(`@media ${query} {`));
    if (query !== "" && !sheet.includes(`@media ${query} {`)) throw new Error(`no block for ${query}`);
    const body = /:root \{([^}]*)\}/.exec(from)?.[1] ?? "";
    for (const [, name = "", value = ""] of body.matchAll(/--([a-z0-9-]+):\s*(#[0-9a-f]{6})/g)) colours[name] = value;
  }
  return colours;
}

const schemes: { readonly [scheme: string]: Colours } = {
  light: coloursIn(""),
  dark: coloursIn("", "(prefers-color-scheme: dark)"),
  "light, more contrast": coloursIn("", "(prefers-contrast: more)"),
  "dark, more contrast": coloursIn(
    "",
    "(prefers-color-scheme: dark)",
    "(prefers-contrast: more)",
    "(prefers-contrast: more) and (prefers-color-scheme: dark)",
  ),
  print: coloursIn("", "print"),
};

function luminance(hex: string): number {
  const parts = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [red = 0, green = 0, blue = 0] = parts.map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const grounds = ["calico", "paper", "calico-fold"];
const textPairs: readonly (readonly [string, string])[] = [
  ...grounds.flatMap((ground) => ["ink", "ink-soft", "pin-over"].map((ink) => [ink, ground] as const)),
  ...["pin-there", "pin-to-go"].flatMap((ink) => ["calico", "paper"].map((ground) => [ink, ground] as const)),
  ["chalk", "twill"],
  ["chalk", "twill-weave"],
  ["twill-thread", "twill"],
  ["twill-thread", "twill-weave"],
  ["tape-ink", "tape"],
  ["ink", "pin-over-wash"],
];
const markPairs: readonly (readonly [string, string])[] = [
  ...["calico", "paper"].flatMap((ground) => ["thread", "focus", "tape-edge"].map((mark) => [mark, ground] as const)),
  ["draw-form-line", "draw-form"],
  ["draw-body", "calico"],
  ["tape", "twill"],
];

describe.each(Object.keys(schemes))("%s", (scheme) => {
  const colours = schemes[scheme] ?? {};
  const ratio = ([one, other]: readonly [string, string]) => contrast(colours[one] ?? "", colours[other] ?? "");
  test.each(textPairs)("%s on %s can be read", (one, other) => {
    expect(ratio([one, other])).toBeGreaterThanOrEqual(4.5);
  });
  test.each(markPairs)("%s on %s can be seen", (one, other) => {
    expect(ratio([one, other])).toBeGreaterThanOrEqual(3);
  });
});

test("the formula gives 21 for black on white and 1 for white on white, and finds grey on grey too faint", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  expect(contrast("#ffffff", "#ffffff")).toBeCloseTo(1, 6);
  expect(contrast("#999999", "#ffffff")).toBeLessThan(4.5);
});
