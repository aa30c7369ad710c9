import { describe, expect, test } from "vitest";
import bodyData from "../../shared/body-data.json";
import sections from "../../shared/real-sections.json";
import { backBulge, backTurn } from "../../src/core/above/upperBack";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import { chestTurn, sideNeckBelowNape } from "../../src/core/above/chestFill";
import { waistDepthFromTape } from "../../src/core/body/estimates";
import { mm } from "../../src/core/units";
import { lengths } from "../tools/lengths";

/** What stands above the bust, against published figures and shapes that nobody here drew. */
const { usArmy1988Women: army } = bodyData;

test("the side neck point lies as far below the nape as US Army 1988 has it (Gordon et al. 1989, NATICK/TR-89/044)", () => {
  expect(sideNeckBelowNape).toBe(-army.neckSideAboveNape.mean);
});

/** Parallel curves (trade facts, section 8, rows 1 and 2): 6.2832 t all around, half of it over the front alone. */
const fullTurn = 6.2832;

test("one neck wrap and one upper chest panel add what parallel curves give", () => {
  const body = lengths({
    neckGirth: 380,
    upperChestGirth: 900 + 8 * (fullTurn / 2),
    upperChestFrontArc: 460 + 8 * (fullTurn / 2),
    upperChestBelowNape: 170,
    bustBelowNape: 235,
  });
  const form = lengths({ neckGirth: 380 - 8 * fullTurn, upperChestGirth: 900, upperChestFrontArc: 460 });
  for (const { id, act, readings } of buildsAbove(body, form, { layerThickness: mm(8) })) {
    if (id !== "neck-both" && id !== "upperChest-both") continue;
    expect(act.what === "layers" ? act.layers.length : 0, id).toBe(1);
    for (const { after, person } of readings) expect(Math.abs(after - person), id).toBeLessThan(0.05);
  }
});

/** Spanish survey, n 600 (Alemany et al. 2010): drop 47 over about 118 of shoulder seen from the front, 23.6 degrees for the middle of each. */
test("a layer on the slope of the Spanish survey's mean shoulder lifts its tip by 1/cos of that slope", () => {
  const along = Math.hypot(47, 118);
  const t = 5;
  const lift = t / Math.cos(Math.atan2(47, 118));
  expect(lift / t).toBeCloseTo(1.076, 2);
  const builds = buildsAbove(
    lengths({ leftShoulderDrop: 47 - 3 * lift }),
    lengths({ leftShoulderDrop: 47, leftShoulderLength: along }),
    { layerThickness: mm(t) },
  );
  const height = builds.find(({ id }) => id === "shoulderHeight-left");
  expect(height?.act.what === "layers" ? height.act.layers.length : 0).toBe(3);
  expect(height?.readings[0]?.after).toBeCloseTo(47 - 3 * lift, 6);
});

/** US Army 1988: nape to natural waist by tape, mean 367.3, and its vertical way by the regression on that tape. */
test("the back of US Army 1988's mean woman stands out by 4 to 5.5 cm, as figures seen from the side have it (judged)", () => {
  const tape = army.napeToNaturalWaistTape.mean;
  const bulge = backBulge(tape, waistDepthFromTape(tape).value);
  expect(bulge).toBeGreaterThan(40);
  expect(bulge).toBeLessThan(55);
});

describe("how far backs and chests turn between the arms, on the fifteen shapes of shared/real-sections.json", () => {
  const shapes = [...sections.bodies, ...sections.forms];
  type Spot = readonly [x: number, y: number];
  const turned = (outline: readonly Spot[], half: 1 | -1): number => {
    const breadth = Math.max(...outline.map(([x]) => Math.abs(x)));
    const sorted = outline.map(([x, y]): Spot => [x, half * y]).toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
    const hull: Spot[] = [];
    for (const spot of sorted) {
      for (;;) {
        const [from, mid] = [hull[hull.length - 2], hull[hull.length - 1]];
        if (from === undefined || mid === undefined) break;
        if ((mid[0] - from[0]) * (spot[1] - from[1]) - (mid[1] - from[1]) * (spot[0] - from[0]) < 0) break;
        hull.pop();
      }
      hull.push(spot);
    }
    const slopes = hull.slice(1).flatMap(([x, y], i) => {
      const [fromX, fromY] = hull[i] as Spot;
      return Math.abs((x + fromX) / 2) < 0.9 * breadth ? [Math.atan2(y - fromY, x - fromX)] : [];
    });
    return Math.max(...slopes) - Math.min(...slopes);
  };
  const middle = (half: 1 | -1) => {
    const turns = shapes.map(({ slices }) => {
      const top = slices.toSorted((a, b) => a.dropMm - b.dropMm)[0];
      return turned(top?.outline as unknown as readonly Spot[], half);
    });
    return turns.toSorted((a, b) => a - b)[Math.floor(turns.length / 2)] as number;
  };
  test("the middle one is what the builds take", () => {
    expect(shapes).toHaveLength(15);
    expect(Math.abs(middle(-1) - backTurn)).toBeLessThan(0.15);
    expect(Math.abs(middle(1) - chestTurn)).toBeLessThan(0.15);
  });
});
