import { expect, test } from "vitest";
import { againTitle, copyTitle, longestTitle } from "../../../src/text/copyTitles";

// Seen to fail when each copy added its ending to the name of the last: the eighteenth could not be read back.
test("a copy of a copy of a copy has a name of its own that is never too long", () => {
  for (const first of ["Ruth", "", "x".repeat(200), "🧵".repeat(100)]) {
    const taken = [first];
    for (let i = 0; i < 120; i += 1) taken.push(copyTitle(taken.at(-1) ?? "", taken));
    expect(new Set(taken).size).toBe(121);
    for (const name of taken) expect(name.length).toBeLessThanOrEqual(longestTitle);
    for (const name of taken) expect(() => encodeURIComponent(name)).not.toThrow();
  }
  expect(copyTitle("Ruth", ["Ruth"])).toBe("Ruth (copy)");
  expect(copyTitle("Ruth (copy)", ["Ruth", "Ruth (copy)"])).toBe("Ruth (copy 2)");
  expect(copyTitle("", [])).toBe("Copy");
});

test("measured again and again, the name stays within its length and takes a day once", () => {
  let name = "Ruth";
  for (let i = 0; i < 60; i += 1) {
    name = againTitle(name, `Nov ${1 + (i % 28)}, 2031`);
    expect(name.length).toBeLessThanOrEqual(longestTitle);
    expect(name.endsWith(", 2031")).toBe(true);
  }
  expect(againTitle("Ruth, Nov 3, 2031", "Nov 3, 2031")).toBe("Ruth, Nov 3, 2031");
  expect(againTitle("", "Nov 3, 2031")).toBe("Fitting, Nov 3, 2031");
});
