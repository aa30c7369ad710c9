import { expect, test } from "vitest";
import { type ChartKind, firstChart, type FormTable, tableWithReadings } from "../../../src/core/form/formTable";
import { mm } from "../../../src/core/units";

const chart = (id: string, kind: ChartKind, busts: readonly number[]): FormTable => ({
  id,
  title: id,
  source: { kind, title: id, year: 2000 },
  sizes: busts.map((bust, i) => ({
    name: String(i),
    measurements: { bustGirth: mm(bust), waistGirth: mm(bust - 200) },
  })),
});
const small = chart("small", "standard", [800, 840, 880]);
const large = chart("large", "survey", [900, 950, 1000]);
const first = (
  bust: number | undefined,
  names: readonly ("bustGirth" | "waistGirth" | "fullHipGirth")[] = ["bustGirth"],
) => firstChart([large, small], names, bust === undefined ? undefined : mm(bust))?.id;

/** Broken on purpose: the last step taken off instead of added, a chart that begins above the body taken. Seen to fail. */
test("of charts that reach the body the best standing comes first, a last step farther still", () => {
  expect([undefined, 800, 860, 920].map((bust) => first(bust))).toEqual(["small", "small", "small", "small"]);
  expect([921, 950, 1050].map((bust) => first(bust))).toEqual(["large", "large", "large"]);
  const high = chart("high", "standard", [960, 1000]);
  expect([959, 960].map((bust) => firstChart([high, large], ["bustGirth"], mm(bust))?.id)).toEqual(["large", "high"]);
});

test("a body that no chart reaches gets the best standing one, and one that no chart measures gets none", () => {
  expect([700, 799, 1051].map((bust) => first(bust))).toEqual(["small", "small", "small"]);
  expect(first(860, ["bustGirth", "fullHipGirth"])).toBeUndefined();
  const [known, ...unknown] = small.sizes;
  const partly = { ...small, sizes: [known, ...unknown.map((size) => ({ ...size, measurements: {} }))] } as FormTable;
  expect(firstChart([large, partly], ["bustGirth"], mm(860))?.id).toBe("large");
});

test("what was read off a form stands in every size", () => {
  const { sizes } = tableWithReadings(small, { waistGirth: mm(655) });
  expect(sizes.map(({ measurements }) => [measurements.bustGirth, measurements.waistGirth])).toEqual([
    [800, 655],
    [840, 655],
    [880, 655],
  ]);
});
