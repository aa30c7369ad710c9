import type { Measurements } from "../../src/core/body/measurements";
import { planFitting } from "../../src/core/plan/planFitting";
import { mm, ratio } from "../../src/core/units";

/** A plan by the planner, for an invented body with a full front, to look at and to hold the pictures to. */
const body: Measurements = {
  bustGirth: mm(1054),
  underbustGirth: mm(914),
  waistGirth: mm(933),
  highHipGirth: mm(1067),
  fullHipGirth: mm(1124),
  bustFrontArc: mm(578),
  waistFrontArc: mm(511),
  highHipFrontArc: mm(565),
  shoulderToApex: mm(286),
  napeToWaist: mm(416),
  waistToFullHip: mm(210),
};

const form: Measurements = {
  bustGirth: mm(918),
  waistGirth: mm(718),
  fullHipGirth: mm(972),
  bustFrontArc: mm(495),
  waistFrontArc: mm(371),
  fullHipFrontArc: mm(476),
  napeToWaist: mm(419),
};

export const plannedExample = planFitting({
  body,
  form,
  batting: { name: "bonded batting", layerThickness: mm(6), relativeDeviation: ratio(0.35) },
});
