import type { LevelReadings } from "../body/levelReadings";
import { estimated, measured, type Reading } from "../body/reading";
import type { Section } from "../body/section";
import { sectionReading } from "../body/sectionReading";
import { type ByLevel, type LevelName, mapLevels } from "../body/vocabulary";
import { reachOf } from "../geometry/support";
import { onLine } from "../tolerances";
import { mm } from "../units";
import type { FormCurve, FormSection } from "./formLines";

/**
 * The bare form where a BODY's level lies: its section at that depth below the nape and what the tape reads there. On a
 * line that was read it is just that; between two heights that were read it follows the form's curve. Above the highest
 * and below the lowest nothing is known: it is guessed to be as it is there, and the guess says how unsure it is.
 */
export interface FormLevel {
  readonly section: Section;
  readonly girth: Reading;
  readonly frontArc: Reading;
  readonly backArc: Reading;
  readonly breadth: Reading;
  readonly known: FormKnowledge;
}

/** `off`: below the form's lower edge; `beyond`: above or below everything that was read of it, by so much (mm). */
export type FormKnowledge =
  | { readonly kind: "line" }
  | { readonly kind: "between" }
  | { readonly kind: "beyond"; readonly side: "above" | "below"; readonly by: number }
  | { readonly kind: "off"; readonly by: number };

export function formAtDepths(curve: FormCurve, depths: ByLevel<number>, lowerEdge?: number): ByLevel<FormLevel> {
  return mapLevels((name) => levelAt(curve, name, depths[name], lowerEdge));
}

function levelAt(
  { levelSections, sectionAt }: FormCurve,
  name: LevelName,
  depth: number,
  lowerEdge?: number,
): FormLevel {
  const own = levelSections.find(
    (levelSection) => levelSection.name === name && Math.abs(levelSection.depthBelowNape - depth) <= onLine,
  );
  const section = sectionAt(own === undefined ? depth : own.depthBelowNape);
  const read = sectionReading(section);
  const known = knowledgeOf(levelSections, own, depth, lowerEdge);
  const unsure = known.kind === "beyond" || known.kind === "off" ? unknownGrows * known.by : 0;
  const near = neighbors(levelSections, depth).map(({ readings }) => readings);
  const like = (value: number, share: number, reading: (level: LevelReadings) => Reading) =>
    asKnown(value, near.map(reading), share * unsure);
  const { left, right } = reachOf(section);
  return {
    section,
    girth: like(read.girth, 1, (level) => level.girth),
    frontArc: like(read.frontArc, 1 / 2, (level) => level.frontArc),
    backArc: like(read.backArc, 1 / 2, (level) => level.backArc),
    breadth: like(left + right, 1 / 4, (level) => level.breadth),
    known,
  };
}

/** How fast a girth may change where nothing was read (mm for each mm of height, one standard deviation). A judgement. */
const unknownGrows = 1;

function knowledgeOf(
  levelSections: readonly FormSection[],
  own: FormSection | undefined,
  depth: number,
  lowerEdge: number | undefined,
): FormKnowledge {
  if (lowerEdge !== undefined && depth > lowerEdge) return { kind: "off", by: depth - lowerEdge };
  if (own?.isLine) return { kind: "line" };
  const [first, last] = [levelSections[0] as FormSection, levelSections[levelSections.length - 1] as FormSection];
  const [above, below] = [first.depthBelowNape - depth, depth - last.depthBelowNape];
  if (above > onLine) return { kind: "beyond", side: "above", by: above };
  return below > onLine ? { kind: "beyond", side: "below", by: below } : { kind: "between" };
}

/** The heights between which a depth lies; one alone where the depth is on it or beyond the ends. */
function neighbors(levelSections: readonly FormSection[], depth: number): readonly FormSection[] {
  const below = levelSections.findIndex(({ depthBelowNape }) => depthBelowNape >= depth - onLine);
  if (below === -1) return levelSections.slice(-1);
  const isOn = Math.abs((levelSections[below] as FormSection).depthBelowNape - depth) <= onLine;
  return below === 0 || isOn ? levelSections.slice(below, below + 1) : levelSections.slice(below - 1, below + 1);
}

/** Known as well as what lies around it; where nothing was read, less well. */
function asKnown(value: number, near: readonly Reading[], unsure: number): Reading {
  const deviations = near.map((reading) => (reading.kind === "estimated" ? reading.standardDeviation : 0));
  const deviation = Math.hypot(Math.max(...deviations), unsure);
  return deviation === 0 ? measured(mm(value)) : estimated(mm(value), mm(deviation));
}
