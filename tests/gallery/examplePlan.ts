import { measured, estimated, type Reading } from "../../src/core/body/reading";
import type { HalvesSection } from "../../src/core/body/section";
import { sectionReading } from "../../src/core/body/sectionReading";
import { levelNames, type LevelName } from "../../src/core/body/vocabulary";
import { heightCurve } from "../../src/core/geometry/heightCurve";
import { sectionOutline } from "../../src/core/geometry/outline";
import type { Layer, LayerRow } from "../../src/core/padding/layer";
import { layerCuts } from "../../src/core/padding/layerCuts";
import type { LayerCut } from "../../src/core/padding/layerCut";
import { piecesThickness } from "../../src/core/padding/layerThickness";
import { pieceId, type Piece, type PieceZone } from "../../src/core/padding/piece";
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

const depths: { readonly [level in LevelName]: number } = {
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
    levelNames.map((name) => depths[name]),
    levelNames.map((name) => pick(forms[name])),
  );
const formCurves = {
  half: curve(({ leftBreadth }) => leftBreadth),
  front: curve(({ frontDepth }) => frontDepth),
  back: curve(({ backDepth }) => backDepth),
  exponent: curve(({ frontExponent }) => frontExponent),
};
export const exampleFormAt = (depthBelowNape: number): HalvesSection =>
  section(
    formCurves.half(depthBelowNape),
    formCurves.front(depthBelowNape),
    formCurves.back(depthBelowNape),
    formCurves.exponent(depthBelowNape),
  );

interface PieceShape {
  readonly zone: PieceZone;
  readonly level: LevelName;
  readonly number: number;
  /** The top and bottom edge of every layer, from the form outwards (depth below the nape). */
  readonly edges: readonly (readonly [top: number, bottom: number])[];
  /** Half the widest layer's width as a share of the quarter it lies on; of a cup pad its radius (mm). */
  readonly reach: number;
  readonly kind: Piece["kind"];
}

const panel = { kind: "panel", number: 1 } as const;
const shapes: readonly PieceShape[] = [
  {
    kind: "cup",
    number: 1,
    zone: "leftCup",
    level: "bust",
    edges: [
      [180, 280],
      [188, 272],
    ],
    reach: 50,
  },
  {
    kind: "cup",
    number: 1,
    zone: "rightCup",
    level: "bust",
    edges: [
      [180, 280],
      [188, 272],
    ],
    reach: 50,
  },
  {
    kind: "wrap",
    number: 1,
    zone: "around",
    level: "waist",
    edges: [
      [330, 500],
      [320, 520],
    ],
    reach: 1,
  },
  {
    ...panel,
    zone: "front",
    level: "waist",
    edges: [
      [340, 420],
      [330, 500],
      [320, 520],
    ],
    reach: 0.9,
  },
  { ...panel, zone: "leftBack", level: "waist", edges: [[330, 420]], reach: 0.6 },
  {
    ...panel,
    zone: "back",
    level: "fullHip",
    edges: [
      [500, 610],
      [430, 630],
    ],
    reach: 0.8,
  },
  { ...panel, zone: "leftSide", level: "waist", edges: [[330, 450]], reach: 0.4 },
  { kind: "tuning", number: 1, zone: "front", level: "waist", edges: [[255, 620]], reach: 0.5 },
  { kind: "tuning", number: 1, zone: "back", level: "waist", edges: [[325, 600]], reach: 0.4 },
];

const rowStep = 15;
const layerStep = 6;

function rowsOf(shape: PieceShape, at: number): readonly LayerRow[] {
  const [top, bottom] = shape.edges[at] as readonly [number, number];
  const beneath = layerStep * (shape.edges.length - 1 - at);
  const count = Math.ceil((bottom - top) / rowStep);
  return Array.from({ length: count + 1 }, (_, i) => {
    const share = i / count;
    const depth = top + (bottom - top) * share;
    const { frontArc, backArc, girth } = sectionReading(exampleFormAt(depth));
    const row = (start: number, end: number): LayerRow => ({
      depthBelowNape: mm(depth),
      start: mm(start),
      end: mm(end),
    });
    if (shape.kind === "wrap") return row(-girth / 2, girth / 2);
    if (shape.kind === "cup") {
      const middle = shape.zone === "leftCup" ? 88 : -88;
      const half = Math.max(20, Math.sqrt(Math.max(0, 1 - (2 * share - 1) ** 2)) * ((bottom - top) / 2));
      return row(middle - half, middle + half);
    }
    const half = shape.reach * ((shape.zone === "back" ? backArc : frontArc) / 2) - beneath;
    return row(shape.zone.startsWith("left") && shape.zone !== "leftSide" ? 0 : -half, half);
  });
}

const anchors: { readonly [zone in PieceZone]?: Piece["anchor"] } = {
  back: "centerBack",
  leftBack: "centerBack",
  leftSide: "leftSide",
};

const lines = levelNames.map((name) => ({ name, depth: depths[name] }));
const drawn = shapes.map((shape) => ({
  shape,
  anchor: anchors[shape.zone] ?? ("centerFront" as const),
  layers: shape.edges.map(
    (_, at): Layer => ({
      batting: "building",
      thickness: mm(6),
      feather: mm(10),
      wrap: shape.kind === "wrap",
      rows: rowsOf(shape, at),
    }),
  ),
}));
const cuts = layerCuts(
  drawn.flatMap(({ shape, anchor, layers }) =>
    layers.map((layer) => ({ layer, anchor, isDisc: shape.kind === "cup" })),
  ),
  exampleFormAt,
  lines,
);

export const examplePieces: readonly Piece[] = drawn.map(({ shape, anchor, layers }, i) => {
  const { kind, zone, level, number } = shape;
  return {
    id: pieceId({ kind, zone, level, number }),
    order: i + 1,
    kind,
    zone,
    level,
    number,
    pair: kind === "cup" ? "cup-bust-1" : null,
    anchor,
    layers,
    cut: layers.map((layer) => cuts.get(layer) as LayerCut),
  };
});

function readingAt(level: LevelName, pieces: readonly Piece[]): TapeReading {
  const outline = sectionOutline(forms[level], 24);
  const quarters = tapeQuarters(outline, piecesThickness(pieces, { depth: depths[level], outline }));
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
    depthBelowNape: measured(mm(depths[name])),
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
  shapesToCut: examplePieces.reduce((sum, { layers }) => sum + layers.length, 0),
  bareForm: readingsAfter([]),
};
