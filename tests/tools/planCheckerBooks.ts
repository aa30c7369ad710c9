import type { CheckedLevelName, FilePiece, FileReading, FileRow, PlanFile } from "./planCheckerFile";
import { checkedLevelNames, readingKeys } from "./planCheckerFile";
import type { Finding, FindingRule } from "./planCheckerFinding";
import { rowAt } from "./planCheckerThickness";

/** The part of the check that needs no geometry: that the plan file keeps its own promises as a document. */
export function checkBookkeeping(plan: PlanFile): readonly Finding[] {
  const skeleton = checkSkeleton(plan);
  if (skeleton.length > 0) return skeleton;
  return [
    ...checkLevels(plan),
    ...checkOrder(plan),
    ...plan.pieces.flatMap((piece) => [...checkLayers(plan, piece), ...checkRows(plan, piece)]),
    ...checkShapes(plan),
    ...checkReadingsAfter(plan),
    ...checkSeamShifts(plan),
    ...checkArea(plan),
  ];
}

/** Numbers of a file are rounded to a tenth, so one of them may be off by half of that. */
const roundedMm = 0.05;
/** A tape is read to 1 mm. */
const readMm = 1;
/** Rows lie at most this far apart in height. */
const rowGapMm = 20;
/** No row is narrower than a hand can pin (about 40 mm); a rounded number may miss it by this much. */
const rowWidthMm = 40;
/** No panel is thicker than this (mm); a wrap goes on turn by turn. */
const tallestPieceMm = 36;
/** A side seam is re-marked by up to about 15 mm a side. */
const seamShiftMm = 15;

function checkSkeleton(plan: PlanFile): readonly Finding[] {
  const names = plan.levels.map((level) => level.name).join(" ");
  const numbers = [
    ...plan.levels.flatMap(({ depthBelowNapeMm, body, form, predicted }) => [
      depthBelowNapeMm,
      ...readingKeys.flatMap((key) => [body[key], form[key], predicted[key]]),
      ...[form.halfBreadthMm, form.frontDepthMm, form.backDepthMm, form.frontExponent ?? form.exponent],
    ]),
    ...plan.pieces.flatMap((piece) => [
      piece.order,
      ...piece.layers.flatMap((layer) => [
        layer.thicknessMm,
        layer.featherMm,
        ...layer.rows.flatMap((row) => [row.depthBelowNapeMm, row.startMm, row.endMm]),
      ]),
      ...checkedLevelNames.flatMap((level) => readingKeys.map((key) => piece.readingsAfter[level]?.[key])),
    ]),
    plan.battingAreaMm2,
  ];
  const odd = numbers.filter((value) => !Number.isFinite(value));
  return [
    ...(plan.version === 2 ? [] : [finding("skeleton", plan.version, 2)]),
    ...(names === checkedLevelNames.join(" ") ? [] : [finding("skeleton", names, checkedLevelNames.join(" "))]),
    ...(odd.length === 0 ? [] : [finding("skeleton", `${odd.length} values that are not numbers`, "only numbers")]),
  ];
}

function checkLevels(plan: PlanFile): readonly Finding[] {
  return plan.levels.flatMap((level, i): readonly Finding[] => {
    const above = plan.levels[i - 1]?.depthBelowNapeMm ?? 0;
    const order =
      level.depthBelowNapeMm > above
        ? []
        : [{ ...finding("levelOrder", level.depthBelowNapeMm, `more than ${above}`), level: level.name }];
    const sums = [level.body, level.form, level.predicted].flatMap((reading: FileReading): readonly Finding[] => {
      const sum = reading.frontArcMm + reading.backArcMm;
      return Math.abs(sum - reading.girthMm) <= 3 * roundedMm + 1e-9
        ? []
        : [{ ...finding("arcsMakeGirth", sum, reading.girthMm), level: level.name }];
    });
    return [...order, ...sums];
  });
}

function checkOrder(plan: PlanFile): readonly Finding[] {
  const orders = plan.pieces.map((piece) => piece.order);
  return orders.every((order, i) => order === i + 1) ? [] : [finding("order", orders.join(" "), "1 2 3 …")];
}

/** Every layer is one thickness of its batting, as thick in one piece as in another, with a feather no longer than is stated for any. */
function checkLayers(plan: PlanFile, piece: FilePiece): readonly Finding[] {
  const all = plan.pieces.flatMap(({ layers }) => layers);
  const found = (rule: FindingRule, got: number, expected: number | string): Finding => ({
    ...finding(rule, got, expected),
    piece: piece.order,
  });
  return [
    ...(piece.layers.length > 0 && piece.layers.length === piece.cut.length
      ? []
      : [found("layers", piece.cut.length, `one cut for each of ${piece.layers.length} layers, from 1`)]),
    ...piece.layers.flatMap(({ batting, thicknessMm, featherMm }) => {
      const alike = all.find((layer) => layer.batting === batting)?.thicknessMm ?? 0;
      return [
        ...(Math.abs(thicknessMm - alike) <= roundedMm ? [] : [found("layers", thicknessMm, alike)]),
        ...(thicknessMm > 0 ? [] : [found("thickness", thicknessMm, "above 0")]),
        ...(featherMm >= 0 && featherMm <= longestFeatherMm + roundedMm
          ? []
          : [found("feather", featherMm, `up to ${longestFeatherMm}`)]),
      ];
    }),
    ...(piece.layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0) <= tallestPieceMm || piece.kind === "wrap"
      ? []
      : [found("thickness", piece.layers.length, `up to ${tallestPieceMm} mm`)]),
  ];
}

/** The last 10 mm of a layer are feathered, never more. */
const longestFeatherMm = 10;

const checkShapes = ({ pieces, shapesToCut }: PlanFile): readonly Finding[] => {
  const layers = pieces.reduce((sum, piece) => sum + piece.layers.length, 0);
  return layers === shapesToCut ? [] : [finding("layers", shapesToCut, layers)];
};

function checkRows(plan: PlanFile, piece: FilePiece): readonly Finding[] {
  const found = (rule: FindingRule, got: number, expected: number | string): Finding => ({
    ...finding(rule, got, expected),
    piece: piece.order,
  });
  const rows = piece.layers.flatMap((layer) => [
    ...(layer.rows.length < 2 ? [found("rowGap", layer.rows.length, "at least two rows")] : []),
    ...layer.rows.flatMap((row, i): readonly Finding[] => {
      const above: FileRow | undefined = layer.rows[i - 1];
      const gap = above === undefined ? rowGapMm : row.depthBelowNapeMm - above.depthBelowNapeMm;
      const width = row.endMm - row.startMm;
      return [
        ...(gap > 0 && gap <= rowGapMm + 2 * roundedMm ? [] : [found("rowGap", gap, `above 0, up to ${rowGapMm}`)]),
        ...(width >= rowWidthMm - 2 * roundedMm ? [] : [found("rowWidth", width, `at least ${rowWidthMm}`)]),
      ];
    }),
  ]);
  return [...rows, ...checkReach(plan, piece)];
}

/**
 * At a level, where the girth is known: a piece over centre back runs past half the girth, but no piece is longer than
 * once round, and none starts or ends further than once round from centre front.
 */
function checkReach(plan: PlanFile, piece: FilePiece): readonly Finding[] {
  return plan.levels.flatMap(({ name, depthBelowNapeMm, form }) =>
    piece.layers.flatMap((layer): readonly Finding[] => {
      const row = rowAt(layer.rows, depthBelowNapeMm);
      if (row === undefined) return [];
      const furthest = Math.max(row.endMm - row.startMm, Math.abs(row.startMm), Math.abs(row.endMm));
      return furthest <= form.girthMm + readMm
        ? []
        : [{ ...finding("rowReach", furthest, form.girthMm), level: name, piece: piece.order }];
    }),
  );
}

/**
 * Law 3 and law 9 as the file states them: no reading shrinks from piece to piece, and the last one is the prediction.
 * A girth cannot shrink at all. An arc can, and truly does: where the front is already padded out to the side, a back piece that
 * lifts the tape off the side shortens the front's way to the seam's mark. Less than a third of the piece's thickness was seen.
 */
function checkReadingsAfter(plan: PlanFile): readonly Finding[] {
  const last = plan.pieces[plan.pieces.length - 1];
  return plan.levels.flatMap((level) =>
    readingKeys.flatMap((reading): readonly Finding[] => {
      const name = level.name as CheckedLevelName;
      const place = { level: name, reading };
      const end = last === undefined ? level.form[reading] : last.readingsAfter[name][reading];
      const shrinking = plan.pieces.slice(1).flatMap((piece, i): readonly Finding[] => {
        const thickness = piece.layers.reduce((sum, layer) => sum + layer.thicknessMm, 0);
        const allowed = reading === "girthMm" ? 2 * roundedMm : readMm + arcShare * thickness;
        const before = (plan.pieces[i] as FilePiece).readingsAfter[name][reading];
        const after = piece.readingsAfter[name][reading];
        return after >= before - allowed - 1e-9
          ? []
          : [{ ...finding("shrinking", after, before), ...place, piece: piece.order }];
      });
      const isLast = last !== undefined && Math.abs(end - level.predicted[reading]) > roundedMm + 1e-9;
      return [...shrinking, ...(isLast ? [{ ...finding("lastPiece", end, level.predicted[reading]), ...place }] : [])];
    }),
  );
}

const arcShare = 1 / 3;

function checkSeamShifts(plan: PlanFile): readonly Finding[] {
  return plan.seamShifts.flatMap((shift): readonly Finding[] =>
    shift.perSideMm > 0 && shift.perSideMm <= seamShiftMm + roundedMm
      ? []
      : [{ ...finding("seamShift", shift.perSideMm, `up to ${seamShiftMm}`), level: shift.level }],
  );
}

/** The area of all layers' outlines on the bare form is the least the batting can be: true cuts are larger, and there is waste. */
function checkArea(plan: PlanFile): readonly Finding[] {
  const least = plan.pieces.flatMap(({ layers }) => layers).reduce((sum, { rows }) => sum + outlineArea(rows), 0);
  return plan.battingAreaMm2 >= 0.99 * least
    ? []
    : [finding("battingArea", plan.battingAreaMm2, `at least ${Math.round(least)}`)];
}

function outlineArea(rows: readonly FileRow[]): number {
  return rows.slice(1).reduce((sum, row, i) => {
    const above = rows[i] as FileRow;
    return (
      sum +
      ((row.endMm - row.startMm + above.endMm - above.startMm) / 2) * (row.depthBelowNapeMm - above.depthBelowNapeMm)
    );
  }, 0);
}

const finding = (rule: FindingRule, got: number | string, expected: number | string): Finding => ({
  rule,
  got,
  expected,
});
