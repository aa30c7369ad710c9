import { expect, test } from "vitest";
import { parseLength } from "../../src/core/lengthText";
import { startingBatting } from "../../src/document/startingBatting";

/** Broken on purpose: the units exchanged. Seen to fail. */
test("a fitting starts with a quarter of an inch or 6 mm a layer, said in its own unit and with a name", () => {
  expect(startingBatting("in").layerThickness).toBe("1/4 in");
  expect(startingBatting("cm").layerThickness).toBe("6 mm");
  expect(startingBatting("in").name).toBe("usual batting");
  for (const unit of ["in", "cm"] as const) {
    const length = parseLength(startingBatting(unit).layerThickness, unit);
    expect(length.ok && Math.round(length.value)).toBe(6);
  }
});
