import { sectionReading } from "../body/sectionReading";
import type { TorsoLine } from "../body/torsoCurve";
import { type LevelName, levelNames, mapLevels } from "../body/vocabulary";
import { cutArea } from "../padding/layerCuts";
import type { LaidPiece } from "../padding/laidPiece";
import { type Millimetres, squareMm } from "../units";
import type { Basis, PlanInput } from "./basis";
import { formMatters } from "./formMatters";
import { seamShifts, shiftedReading, shortfalls } from "./shortfalls";
import { mayMiss, planBasis } from "./mayMiss";
import { orderedPieces } from "./orderedPieces";
import type { Plan, PlannedLevel } from "./plan";
import type { Start } from "./start";

/**
 * Names pieces, measures their cuts and reads the tape after each; what is pinned already lies beneath. A reading that will miss the
 * body's by more than `agreement` (mm) is told as a shortfall.
 */
export function assemblePlan(
  { body, form }: PlanInput,
  from: Basis,
  start: Start,
  laid: readonly LaidPiece[],
  agreement: Millimetres,
): Plan {
  const { targets } = from;
  const { pieces, before } = orderedPieces(laid, from, start, (name, read) => shiftedReading(read, targets[name]));
  const last = pieces[pieces.length - 1];
  const predicted = last?.readingsAfter ?? before;
  const levels = mapLevels(
    (name): PlannedLevel => ({
      name,
      depthBelowNape: from.body.levels[name].depthBelowNape,
      body: targets[name].body,
      bodySection: from.bodySections[name],
      form: targets[name].form,
      known: targets[name].form.known.kind,
      formSection: targets[name].form.section,
      predicted: predicted[name],
      below: { body: linesBelow(from, from.bodyLines, name), form: linesBelow(from, from.formLines, name) },
    }),
  );
  return {
    basis: planBasis(from),
    mayMiss: mayMiss(from, [...start.pinned, ...laid]),
    matters: formMatters(targets),
    levels: levelNames.map((name) => levels[name]),
    pieces,
    shortfalls: shortfalls(levels, body, form, agreement),
    seamShifts: seamShifts(targets),
    battingArea: squareMm(pieces.flatMap(({ cut }) => cut).reduce((area, cut) => area + cutArea(cut), 0)),
    shapesToCut: pieces.reduce((count, { layers }) => count + layers.length, 0),
    bareForm: mapLevels((name) => sectionReading(targets[name].form.section)),
  };
}

/** The lines between a level and the next below that are no levels themselves. */
const linesBelow = ({ depths }: Basis, lines: readonly TorsoLine[], name: LevelName): readonly TorsoLine[] =>
  lines.filter(
    (line) => line.name === "between" && levelNames.findLast((level) => depths[level] < line.depthBelowNape) === name,
  );
