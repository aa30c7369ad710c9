import { expect, it } from "vitest";
import { comparedBodies } from "../../../src/app/share/comparison";
import { fittingFrom } from "../storage/sampleFittings";

const measured = (unit: string, body: object) =>
  fittingFrom({ version: 1, unit, body, form: { table: "misses" }, batting: { name: "x", layerThickness: "6 mm" } });

it("sets what was read then beside what is read now, in millimetres, whatever units they were typed in", () => {
  const then = measured("in", { bustGirth: 35, waistGirth: "28 1/2", napeToWaist: 16 });
  const now = measured("cm", { bustGirth: "35 in", waistGirth: 75, fullHipGirth: 96.5 });
  const rows = comparedBodies(then, now);
  expect(rows.map(({ name, kind }) => `${name} ${kind}`)).toEqual([
    "bustGirth both",
    "waistGirth both",
    "fullHipGirth onlyAfter",
    "napeToWaist onlyBefore",
  ]);
  const [bust, waist] = rows;
  expect(bust).toMatchObject({ change: 0 });
  expect(waist?.kind === "both" && waist.change).toBeCloseTo(750 - 28.5 * 25.4, 9);
  expect(comparedBodies(then, then).every((row) => row.kind === "both" && row.change === 0)).toBe(true);
  expect(comparedBodies(measured("cm", {}), measured("cm", {}))).toEqual([]);
});

it("changes its sign when the rounds change places", () => {
  const then = measured("cm", { waistGirth: 80 });
  const now = measured("cm", { waistGirth: 83.5 });
  expect(comparedBodies(then, now)).toMatchObject([{ change: 35 }]);
  expect(comparedBodies(now, then)).toMatchObject([{ change: -35 }]);
});
