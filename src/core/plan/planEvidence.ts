import { nineInTen } from "../tolerances";
import { sectionOfLengths } from "../body/sectionOfLengths";
import { sectionReading } from "../body/sectionReading";
import type { Section } from "../body/section";
import { type LevelName, levelNames } from "../body/vocabulary";
import type { Evidence, EvidenceSection } from "../calibration/evidence";
import type { LimitsFrom } from "../calibration/readingLimits";
import { type Outline, sectionOutline } from "../geometry/outline";
import type { BareDeviation } from "../learning/learningState";
import type { Batting } from "../material";
import { tapePoints } from "../tape/tape";
import { mm, ratio } from "../units";
import type { Basis, PlanInput } from "./basis";
import type { PaddingSoFar } from "./paddingSoFar";

/** The evidence of the work so far. */
export const evidence = (input: PlanInput, from: Basis, soFar: PaddingSoFar): Evidence => ({
  ...limitsFrom(input, from, soFar.readingError),
  rereads: soFar.rereads,
  pinnedNow: soFar.pinned,
});

/**
 * What is known of the form and the battings before the tape. A packet speaks of a layer in a stack, as the first plan
 * takes it.
 */
export function limitsFrom(input: PlanInput, from: Basis, readingError: number): LimitsFrom {
  const finishing: Batting = input.finishingBatting ?? input.batting;
  const deviation = readingError / nineInTen;
  return {
    levelSections: levelNames.map((name) => levelSectionOf(from, name)),
    battings: { building: input.batting, finishing },
    bareDeviations: levelNames.map((name) => bareDeviation(from, name, deviation)),
    readingError: deviation,
  };
}

/** Points in each eighth of an outline that readings are simulated over while learning: as many as a plan is read with. */
const learningPoints = tapePoints;

function levelSectionOf({ depths, targets }: Basis, name: LevelName): EvidenceSection {
  const { section } = targets[name].form;
  const outline = sectionOutline(section, learningPoints);
  const known = new Map<string, Outline>();
  return {
    depth: depths[name],
    outline,
    reshaped: (exponent, lnBreadth) => {
      if ((exponent === 0 && lnBreadth === 0) || !("frontDepth" in section)) return outline;
      const key = `${exponent} ${lnBreadth}`;
      const found = known.get(key) ?? sectionOutline(reshapedSection(section, exponent, lnBreadth), learningPoints);
      known.set(key, found);
      return found;
    },
  };
}

/** The section with other exponents and breadths that reads the same in front and behind. */
function reshapedSection(
  section: Extract<Section, { readonly frontDepth: unknown }>,
  exponent: number,
  lnBreadth: number,
): Section {
  const { frontArc, backArc } = sectionReading(section);
  const scale = Math.exp(lnBreadth);
  return sectionOfLengths(
    {
      leftBreadth: mm(scale * section.leftBreadth),
      rightBreadth: mm(scale * section.rightBreadth),
      frontExponent: ratio(Math.max(leastExponent, section.frontExponent + exponent)),
      backExponent: ratio(Math.max(leastExponent, section.backExponent + exponent)),
    },
    frontArc,
    backArc,
  );
}

/** Flatter than this a half superellipse has a corner at the side. */
const leastExponent = 1.5;

/**
 * How unsure the bare form is: a measured girth by the error of one reading, halves by that of two that were made to
 * sum to it; estimates by their standard deviations; each half beside that by what hands and seams leave. Left and
 * right of a form are as even as a seam is sewn.
 */
function bareDeviation({ targets, form }: Basis, name: LevelName, reading: number): BareDeviation {
  const { girth, frontArc, breadth } = targets[name].form;
  const own = form.levelSections.find((levelSection) => levelSection.name === name && levelSection.isLine);
  const around = girth.kind === "estimated" ? girth.standardDeviation : reading;
  const halves = frontArc.kind === "estimated" ? 2 * frontArc.standardDeviation : Math.SQRT2 * reading;
  return {
    girth: Math.hypot(around, Math.SQRT2 * halfOffset),
    frontLessBack: Math.hypot(halves, Math.SQRT2 * halfOffset),
    leftLessRight: seamEvenness,
    exponent: own?.readings.depth == null ? exponentGuessed : exponentMeasured,
    breadth: breadth.kind === "estimated" ? breadthGuessed : breadthMeasured,
  };
}

/** What a front or a back reads beyond the reading of the bare form, besides the reading's own error (mm). A judgement. */
const halfOffset = 3;

/** Left and right halves of a sewn form differ by this much (mm, one standard deviation of left less right). A judgement. */
const seamEvenness = 5;

/** The exponent of a level's section, without its depth and with it; the logarithm of its breadth, without and with it. */
const exponentGuessed = 0.4;
const exponentMeasured = 0.15;
const breadthGuessed = 0.04;
const breadthMeasured = 0.02;
