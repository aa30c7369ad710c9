import { expect, test } from "vitest";
import type { Measurements } from "../../../src/core/body/measurements";
import { mapLevels } from "../../../src/core/body/vocabulary";
import { crowded, formCurve } from "../../../src/core/form/formLines";
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

/** The levels that tell of a form on which the waist was read on a line so far below the nape. */
const levelsWith = (waist: number) =>
  formCurve(own, { waist: { depthBelowNape: mm(waist), readings: { Girth: mm(665) } } }, depths).levelSections.map(
    ({ name, depthBelowNape }) => `${name} ${depthBelowNape}`,
  );

/** Broken on purpose: levels kept that crowd a line, or that lie on its wrong side. Seen to fail. */
test("a level of the form's own that crowds a line, or lies on its wrong side, tells nothing more", () => {
  const apart = ["bust 240", "underbust 310", "waist 395", "highHip 480", "fullHip 580"];
  expect(levelsWith(395)).toEqual(apart);
  expect(levelsWith(310 + crowded)).toContain("underbust 310");
  expect(levelsWith(310 + crowded - 1)).toEqual([
    "bust 240",
    `waist ${310 + crowded - 1}`,
    "highHip 480",
    "fullHip 580",
  ]);
  expect(levelsWith(480 - crowded)).toContain("highHip 480");
  expect(levelsWith(480 - crowded + 1)).not.toContain("highHip 480");
  expect(levelsWith(300)).toEqual(["bust 240", "waist 300", "highHip 480", "fullHip 580"]);
  expect(levelsWith(560)).toEqual(["bust 240", "underbust 310", "waist 560"]);
});
