import { expect, test } from "vitest";
import type { Measurements } from "../../../src/core/body/measurements";
import { mapLevels } from "../../../src/core/body/vocabulary";
import { formAtDepths } from "../../../src/core/form/formAtDepths";
import { formCurve } from "../../../src/core/form/formLines";
import { mm } from "../../../src/core/units";

const own = {
  bustGirth: mm(860),
  underbustGirth: mm(740),
  waistGirth: mm(660),
  highHipGirth: mm(820),
  fullHipGirth: mm(910),
  bustBelowNape: mm(240),
  underbustBelowNape: mm(310),
  waistBelowNape: mm(390),
  highHipBelowNape: mm(480),
  fullHipBelowNape: mm(580),
} satisfies Measurements;
const depths = mapLevels((name) => own[`${name}BelowNape`]);
const curve = formCurve(own, {}, depths);

const fullHipAt = (depth: number, lowerEdge?: number) =>
  formAtDepths(curve, { ...depths, fullHip: depth }, lowerEdge).fullHip;
const deviation = (reading: ReturnType<typeof fullHipAt>["girth"]) =>
  reading.kind === "estimated" ? reading.standardDeviation : 0;

/** Broken on purpose: the breadth's share four instead of a quarter, the arcs' whole. Seen to fail. */
test.each([
  ["below all that was read", undefined, { kind: "beyond", side: "below", by: 40 }],
  ["below its lower edge", 580, { kind: "off", by: 40 }],
] as const)(
  "a form %s reads as at the last line, a girth unsure by as much as that is off, an arc by half, a breadth by a quarter",
  (_, lowerEdge, known) => {
    const [last, beyond] = [fullHipAt(580), fullHipAt(620, lowerEdge)];
    expect(beyond.known).toEqual(known);
    const grown = (["girth", "frontArc", "backArc", "breadth"] as const).map((name) => {
      expect(beyond[name].value).toBeCloseTo(last[name].value, 6);
      return Math.sqrt(deviation(beyond[name]) ** 2 - deviation(last[name]) ** 2);
    });
    expect(grown.map((more) => Math.round(more * 1e6) / 1e6)).toEqual([40, 20, 20, 10]);
  },
);
