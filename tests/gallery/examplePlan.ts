import { measured, estimated, type Reading } from "../../src/core/body/reading";
import type { HalvesSection } from "../../src/core/body/section";
import { sectionReading } from "../../src/core/body/sectionReading";
import { levelNames, type LevelName } from "../../src/core/body/vocabulary";
import { heightCurve } from "../../src/core/geometry/heightCurve";
import { sectionOutline } from "../../src/core/geometry/outline";
import type { Piece, PieceCut, PieceRow, PieceZone } from "../../src/core/padding/piece";
import { stackThickness } from "../../src/core/padding/stack";
import type { Plan, PlannedLevel, TapeReading, TapeReadings } from "../../src/core/plan/plan";
import { tapeQuarters } from "../../src/core/tape/tape";
import { mm, ratio, squareMm } from "../../src/core/units";

/**
 * A plan made by hand for the pictures: an invented body with a full front on a smaller form, with pieces of every
 * kind. Its readings are what the simulated tape reads on its own sections, so that pictures can be checked against them.
 */
const section = (half: number, front: number, back: number, exponent: number): HalvesSection => ({
  leftBreadth: mm(half),
  rightBreadth: mm(half),
  frontDepth: mm(front),
  backDepth: mm(back),
  frontExponent: ratio(exponent),
  backExponent: ratio(exponent),
});

const drops: { readonly [level in LevelName]: number } = {
  bust: 235,
  underbust: 295,
  waist: 370,
  highHip: 470,
  fullHip: 570,
};
const forms: { readonly [level in LevelName]: HalvesSection } = {
  bust: section(132, 136, 98, 3),
  underbust: section(122, 104, 86, 2.8),
  waist: section(112, 92, 82, 2.46),
  highHip: section(142, 100, 96, 2.8),
  fullHip: section(160, 98, 118, 3),
};
const bodies: { readonly [level in LevelName]: HalvesSection } = {
  bust: section(142, 150, 103, 3),
  underbust: section(138, 128, 92, 2.8),
  waist: section(143, 140, 96, 2.46),
  highHip: section(166, 147, 100, 2.8),
  fullHip: section(174, 120, 119, 3),
};

const curve = (pick: (section: HalvesSection) => number) =>
  heightCurve(
    levelNames.map((name) => drops[name]),
    levelNames.map((name) => pick(forms[name])),
  );
const formCurves = {
  half: curve(({ leftBreadth }) => leftBreadth),
  front: curve(({ frontDepth }) => frontDepth),
  back: curve(({ backDepth }) => backDepth),
  exponent: curve(({ frontExponent }) => frontExponent),
};
export const exampleFormAt = (drop: number): HalvesSection =>
  section(formCurves.half(drop), formCurves.front(drop), formCurves.back(drop), formCurves.exponent(drop));

interface PieceShape {
  readonly zone: PieceZone;
  readonly top: number;
  readonly bottom: number;
  /** Half the piece's width as a share of the quarter it lies on (the whole half for rounds). */
  readonly reach: number;
  readonly thickness: number;
  readonly plies: number;
  readonly cut?: PieceCut;
}

const shapes: readonly PieceShape[] = [
  {
    zone: "leftCup",
    top: 190,
    bottom: 270,
    reach: 0.2,
    thickness: 6,
    plies: 1,
    cut: { shape: "disc", diameter: mm(80) },
  },
  {
    zone: "rightCup",
    top: 190,
    bottom: 270,
    reach: 0.2,
    thickness: 6,
    plies: 1,
    cut: { shape: "disc", diameter: mm(80) },
  },
  {
    zone: "leftCup",
    top: 175,
    bottom: 285,
    reach: 0.28,
    thickness: 6,
    plies: 1,
    cut: { shape: "disc", diameter: mm(110) },
  },
  {
    zone: "rightCup",
    top: 175,
    bottom: 285,
    reach: 0.28,
    thickness: 6,
    plies: 1,
    cut: { shape: "disc", diameter: mm(110) },
  },
  { zone: "front", top: 340, bottom: 520, reach: 0.42, thickness: 12, plies: 2 },
  { zone: "front", top: 325, bottom: 545, reach: 0.62, thickness: 12, plies: 2 },
  { zone: "back", top: 320, bottom: 420, reach: 0.5, thickness: 6, plies: 1 },
  { zone: "leftSide", top: 330, bottom: 450, reach: 0.55, thickness: 12, plies: 2 },
  { zone: "rightSide", top: 330, bottom: 450, reach: 0.55, thickness: 12, plies: 2 },
  { zone: "front", top: 305, bottom: 580, reach: 0.85, thickness: 12, plies: 2 },
  { zone: "round", top: 270, bottom: 590, reach: 1, thickness: 6, plies: 1 },
  { zone: "round", top: 255, bottom: 620, reach: 1, thickness: 6, plies: 1 },
];

const rowStep = 15;

function rowsOf({ zone, top, bottom, reach }: PieceShape): readonly PieceRow[] {
  const count = Math.ceil((bottom - top) / rowStep);
  return Array.from({ length: count + 1 }, (_, i) => {
    const share = i / count;
    const drop = top + (bottom - top) * share;
    const reading = sectionReading(exampleFormAt(drop));
    const [front, back] = [reading.frontArc / 2, reading.backArc / 2];
    const middles = {
      round: 0,
      front: 0,
      back: front + back,
      leftSide: front,
      rightSide: -front,
      leftCup: 88,
      rightCup: -88,
    };
    const swell = Math.sqrt(Math.max(0, 1 - (2 * share - 1) ** 4)) * 0.8 + 0.2;
    const cup = Math.sqrt(Math.max(0, 1 - (2 * share - 1) ** 2)) * ((bottom - top) / 2);
    const half =
      zone === "round" ? front + back : zone.endsWith("Cup") ? cup : reach * (zone === "back" ? back : front) * swell;
    return { drop: mm(drop), start: mm(middles[zone] - half), end: mm(middles[zone] + half) };
  });
}

function cutOf(shape: PieceShape, rows: readonly PieceRow[]): PieceCut {
  if (shape.cut !== undefined) return shape.cut;
  const widths = rows.map(({ drop, start, end }) => ({
    belowTop: mm(drop - shape.top),
    left: mm(((end - start) / 2) * 1.06),
    right: mm(((end - start) / 2) * 1.06),
  }));
  if (shape.zone !== "round") return { shape: "panel", height: mm(shape.bottom - shape.top), widths };
  const length = Math.max(...widths.map(({ left, right }) => left + right));
  return { shape: "strip", length: mm(length), width: mm(shape.bottom - shape.top), widths };
}

export const examplePieces: readonly Piece[] = shapes.map((shape, i) => {
  const rows = rowsOf(shape);
  return {
    id: `${shape.zone}${String(i + 1)}`,
    order: i + 1,
    zone: shape.zone,
    batting: "building",
    plies: shape.plies,
    thickness: mm(shape.thickness),
    feather: mm(shape.zone.endsWith("Cup") ? 15 : 30),
    rows,
    cut: cutOf(shape, rows),
  };
});

function readingAt(level: LevelName, pieces: readonly Piece[]): TapeReading {
  const outline = sectionOutline(forms[level], 24);
  const quarters = tapeQuarters(outline, stackThickness(pieces, { drop: drops[level], outline }));
  const front = quarters.leftFront + quarters.rightFront;
  const back = quarters.leftBack + quarters.rightBack;
  return { girth: mm(front + back), frontArc: mm(front), backArc: mm(back) };
}

const readingsAfter = (pieces: readonly Piece[]): TapeReadings => ({
  bust: readingAt("bust", pieces),
  underbust: readingAt("underbust", pieces),
  waist: readingAt("waist", pieces),
  highHip: readingAt("highHip", pieces),
  fullHip: readingAt("fullHip", pieces),
});

/** Arcs were measured at the waist and the high hip only. */
function plannedLevel(name: LevelName): PlannedLevel {
  const [body, form] = [sectionReading(bodies[name]), sectionReading(forms[name])];
  const arcs =
    name === "waist" || name === "highHip" ? measured : (value: number): Reading => estimated(mm(value), mm(18));
  return {
    name,
    drop: measured(mm(drops[name])),
    body: { girth: measured(body.girth), frontArc: arcs(body.frontArc), backArc: arcs(body.backArc) },
    bodySection: bodies[name],
    form: { girth: measured(form.girth), frontArc: measured(form.frontArc), backArc: measured(form.backArc) },
    known: "between",
    formSection: forms[name],
    predicted: readingAt(name, examplePieces),
    below: { body: [], form: [] },
  };
}

export const examplePlan: Plan = {
  basis: "draft",
  mayMiss: mm(40),
  matters: [],
  levels: levelNames.map(plannedLevel),
  pieces: examplePieces.map((piece, i) => ({ ...piece, readingsAfter: readingsAfter(examplePieces.slice(0, i + 1)) })),
  shortfalls: [],
  seamShifts: [{ level: "fullHip", perSide: mm(9), towards: "back" }],
  battingArea: squareMm(900_000),
  bareForm: readingsAfter([]),
};
