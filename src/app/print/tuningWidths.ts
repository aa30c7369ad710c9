import { type LevelName, levelNames } from "../../core/body/vocabulary";
import type { LengthStep } from "../../core/lengthText";
import { tapeAgreement } from "../../core/tolerances";
import type { Outline } from "../../core/geometry/outline";
import type { Layer, LayerRow } from "../../core/padding/layer";
import { addLayer, type LevelOutline, piecesThickness } from "../../core/padding/layerThickness";
import { isStructure } from "../../core/padding/piece";
import { leastHalfWidth } from "../../core/padding/sideLevel";
import type { PlanInput } from "../../core/plan/basis";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { tapeQuarters } from "../../core/tape/tape";
import { type Millimetres, mm } from "../../core/units";
import { basisOf } from "../progress/replay";
import { plannedShortage } from "./tuningTarget";

/** How wide to cut a tuning layer where a level line crosses it, by how much its half is short there. */
export interface TuningWidths {
  readonly level: LevelName;
  /** One for each shortage that was asked about: none where even the narrowest layer is too much, else the cut width (mm). */
  readonly widths: readonly (Millimetres | "none" | "beyond")[];
}

/**
 * The widths of a tuning layer for shortages in front or in back (mm), over the structure as it is planned: so that one layer can be cut
 * from what the tape reads with nothing but paper. A shortage beyond the widest layer asks for a second one. With `printedTo` the shortages
 * are those that are reckoned from the figures of the sheet, rounded to that step: a tape that reads what the sheet expects
 * gives the planned layer.
 */
export function tuningWidths(
  input: PlanInput,
  plan: Plan,
  piece: PlannedPiece,
  shortages: readonly number[],
  printedTo?: LengthStep,
): readonly TuningWidths[] {
  const structure = plan.pieces.filter(isStructure);
  const others = plan.pieces.filter(({ kind, id }) => kind === "tuning" && id !== piece.id);
  const { levelSections } = basisOf(input);
  const half = piece.anchor === "centerBack" ? "backArc" : "frontArc";
  return levelNames.flatMap((level): readonly TuningWidths[] => {
    const cut = piece.cut.flatMap((own) =>
      own.shape === "panel" ? own.widths.filter((width) => width.level === level) : [],
    )[0];
    const levelSection = levelSections[levelNames.indexOf(level)];
    if (cut === undefined || levelSection === undefined) return [];
    const beneath = piecesThickness(structure, levelSection);
    const planned = cut.left + cut.right;
    const sides = cut.left === 0 || cut.right === 0 ? 1 : 2;
    const at: TunedLevel = {
      gain: gainOf(piece, levelSection, beneath, piecesThickness([...structure, ...others], levelSection)),
      most: quarterOf(piece, levelSection.outline),
      stretched: sides * stretchOf(piece, levelSection.depth, planned),
    };
    if (printedTo === undefined) return [{ level, widths: shortages.map((short) => widthFor(short, at)) }];
    const { exact, printed } = plannedShortage(plan, level, half, printedTo);
    const found = widthFor(exact, at);
    const scale = typeof found === "number" ? planned / found : 1;
    const widths = shortages.map((short): TuningWidths["widths"][number] => {
      if (typeof found === "number" && Math.abs(short - printed) < written) return mm(planned);
      const width = widthFor(short + exact - printed, at);
      return typeof width === "number" ? mm(Math.min(width * scale, Math.max(planned, at.most * at.stretched))) : width;
    });
    return [{ level, widths }];
  });
}

/**
 * What a half gains under the tape by this layer of a half-width at one level. The layer of the other half lifts the tape beside the
 * seams: it is counted in as wide as it is planned.
 */
function gainOf(
  piece: PlannedPiece,
  levelSection: LevelOutline,
  structure: Float64Array,
  withOthers: Float64Array,
): (halfWidth: number) => number {
  const layer = piece.layers[0] as Layer;
  const read = (thickness: Float64Array) => {
    const { leftFront, rightFront, leftBack, rightBack } = tapeQuarters(levelSection.outline, thickness);
    return piece.anchor === "centerBack" ? leftBack + rightBack : leftFront + rightFront;
  };
  const before = read(structure);
  const [isLeft, isRight] = [!piece.zone.startsWith("right"), !piece.zone.startsWith("left")];
  return (halfWidth) => {
    const row = { start: mm(isRight ? -halfWidth : 0), end: mm(isLeft ? halfWidth : 0) };
    const rows: readonly LayerRow[] = [-farFromEnds, farFromEnds].map((off) => ({
      ...row,
      depthBelowNape: mm(levelSection.depth + off),
    }));
    const padded = Float64Array.from(withOthers);
    addLayer(padded, { ...layer, rows }, piece.anchor, levelSection);
    return read(padded) - before;
  };
}

/** A layer reaches at least as far beyond a line (mm), so that its ends do not matter there. */
const farFromEnds = 100;

/** How much longer the cut is than the bare surface under it, because it lies over what is beneath. */
function stretchOf({ layers }: PlannedPiece, depth: number, cutWidth: number): number {
  const rows = layers[0]?.rows ?? [];
  const at = rows.findIndex((row) => row.depthBelowNape >= depth);
  const [upper, lower] = [rows[at - 1], rows[at]];
  if (upper === undefined || lower === undefined) return 1;
  const share = (depth - upper.depthBelowNape) / (lower.depthBelowNape - upper.depthBelowNape);
  const width = (row: LayerRow) => row.end - row.start;
  return cutWidth / (width(upper) + share * (width(lower) - width(upper)));
}

const quarterOf = ({ anchor }: PlannedPiece, { quarters }: Outline): number =>
  anchor === "centerBack"
    ? Math.min(quarters.leftBack, quarters.rightBack)
    : Math.min(quarters.leftFront, quarters.rightFront);

/** What a layer of a half-width adds to its half at one level, how wide half of it can be, and how much wider it is cut in all. */
interface TunedLevel {
  readonly gain: (halfWidth: number) => number;
  readonly most: number;
  readonly stretched: number;
}

function widthFor(short: number, { gain, most, stretched }: TunedLevel): TuningWidths["widths"][number] {
  let [from, to] = [leastHalfWidth, most];
  // The narrowest layer is right where it comes nearer than none.
  if (gain(from) > 2 * short) return "none";
  if (gain(to) < short - tapeAgreement) return "beyond";
  for (let i = 0; i < halvings; i++) {
    const middle = (from + to) / 2;
    if (gain(middle) < short) from = middle;
    else to = middle;
  }
  return mm(stretched * to);
}

/** Printed lengths nearer than this (mm) are the same one. */
const written = 0.1;

/** Widths are found to a tenth of a millimeter. */
const halvings = 11;
