import { expect, test } from "vitest";
import { measurementNames } from "../../../src/core/body/vocabulary";
import { askedParts, linePartName, lineParts } from "../../../src/core/form/linePart";

/** Broken on purpose: a part's reading called otherwise. Seen to fail. */
test("every part of a line is a measurement, and the depth alone is never asked for", () => {
  for (const part of lineParts) expect(measurementNames).toContain(linePartName("highHip", part));
  expect(linePartName("waist", "frontArc")).toBe("waistFrontArc");
  expect(lineParts.filter((part) => !askedParts.includes(part))).toEqual(["depth"]);
});
