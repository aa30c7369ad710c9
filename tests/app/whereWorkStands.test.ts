import { expect, test } from "vitest";
import { whereWorkStands } from "../../src/app/progress/whereWorkStands";
import type { Fitting } from "../../src/document/fitting";

const girths = { bustGirth: "35", waistGirth: "30", fullHipGirth: "38" };
const at = "2026-01-02T03:04:05.000Z";
const prepared: Fitting["work"][number] = { did: "prepared", what: "form", at };
const covered: Fitting["work"][number] = { did: "coverChosen", cloth: "knit", at };

/** Broken on purpose: always with the measurements. Seen to fail. */
test("whoever comes back goes on where the work stands", () => {
  expect(whereWorkStands({ body: {}, work: [] })).toBe("body");
  expect(whereWorkStands({ body: { bustGirth: "35" }, work: [] })).toBe("body");
  expect(whereWorkStands({ body: girths, work: [] })).toBe("plan");
  expect(whereWorkStands({ body: girths, work: [prepared] })).toBe("padding");
  expect(whereWorkStands({ body: girths, work: [prepared, covered] })).toBe("finishing");
});
