import { type QuarterReadings, torsoReadings, type TorsoReadings } from "../body/levelReadings";
import type { Measurements } from "../body/measurements";
import type { Section } from "../body/section";
import { solveSection } from "../body/solveSection";
import { type ByLevel, levelNames, mapLevels } from "../body/vocabulary";
import { type SectionAt, type TorsoLine, torsoCurve, withLowerBreast } from "../body/torsoCurve";
import { formAtDepths } from "../form/formAtDepths";
import { crowded, type FormCurve, formCurve, type FormLines } from "../form/formLines";
import { sectionOutline } from "../geometry/outline";
import type { Batting } from "../material";
import type { LevelOutline } from "../padding/layerThickness";
import { levelTarget, type Target } from "../padding/targets";
import { tapePoints } from "../tape/tape";
import { mm } from "../units";

export interface PlanInput {
  readonly body: Measurements;
  /** The form at its own levels, and its lengths. */
  readonly form: Measurements;
  /** The bare form on the person's lines, where it was read there. */
  readonly lines?: FormLines;
  readonly batting: Batting;
  /** A second batting, usually thinner, that may finish the outside. */
  readonly finishingBatting?: Batting;
}

/**
 * What every plan of one body on one form starts from, however much is pinned already: all of it at the body's depths
 * below the nape.
 */
export interface Basis {
  readonly body: TorsoReadings;
  readonly depths: ByLevel<number>;
  readonly targets: ByLevel<Target>;
  readonly bodySections: ByLevel<Section>;
  /** The body's lines with its curve on each, from the top down. */
  readonly bodyLines: readonly TorsoLine[];
  readonly form: FormCurve;
  /** The bare form's curve under the padding: on the body's lines as the targets take it, and between. */
  readonly formLines: readonly TorsoLine[];
  /** The bare form at any depth below the nape. */
  readonly sectionAt: SectionAt;
  readonly levelSections: readonly LevelOutline[];
}

/** Works out the basis from measurements that have passed the checks for contradictions. */
export function basis({ body, form, lines = {} }: Pick<PlanInput, "body" | "form" | "lines">): Basis {
  const torso = torsoReadings(body, form);
  const depths = mapLevels((name) => torso.levels[name].depthBelowNape.value as number);
  const curve = formCurve(form, lines, depths);
  const bare = formAtDepths(curve, depths, form.lowerEdgeBelowNape);
  const targets = mapLevels((name) => levelTarget(torso.levels[name], bare[name]));
  const bodySections = mapLevels((name) => {
    const { frontArc, backArc } = targets[name].body;
    return solveSection({ ...torso.levels[name], frontArc, backArc });
  });
  const formLines = surfaceLines(curve, depths, targets);
  return {
    body: torso,
    depths,
    targets,
    bodySections,
    bodyLines: bodyLines(body, depths, bodySections),
    form: curve,
    formLines,
    sectionAt: torsoCurve(formLines),
    levelSections: levelNames.map((name) => ({
      depth: depths[name],
      outline: sectionOutline(targets[name].form.section, tapePoints),
    })),
  };
}

/** The body's lines with its curves, and the one between bust and underbust where it was read. */
function bodyLines(body: Measurements, depths: ByLevel<number>, sections: ByLevel<Section>): readonly TorsoLine[] {
  const lines = levelNames.map((name) => ({ name, depthBelowNape: depths[name], section: sections[name] }));
  return body.lowerBreastGirth === undefined ? lines : withLowerBreast(lines, body.lowerBreastGirth);
}

/**
 * The bare form's curve for the rows of pieces: on the person's lines as the targets take it, and through what else was read of
 * it between, but for heights that are close to a line.
 */
function surfaceLines({ lines }: FormCurve, depths: ByLevel<number>, targets: ByLevel<Target>): readonly TorsoLine[] {
  const own = levelNames.map((name) => ({
    name,
    depthBelowNape: depths[name],
    section: targets[name].form.section,
  }));
  const [top, bottom] = [depths.bust, depths.fullHip];
  const between = lines.filter(
    ({ depthBelowNape: depth }) =>
      depth > top && depth < bottom && own.every((line) => Math.abs(line.depthBelowNape - depth) >= crowded),
  );
  const all = [...own, ...between.map((line) => ({ ...line, name: "between" as const }))];
  return all.toSorted((one, other) => one.depthBelowNape - other.depthBelowNape);
}

/** No quarter reads anything beyond the simulation. */
export const noOffset: QuarterReadings = { leftFront: mm(0), rightFront: mm(0), leftBack: mm(0), rightBack: mm(0) };
