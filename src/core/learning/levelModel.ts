import type { Outline } from "../geometry/outline";
import { tapeQuarters } from "../tape/tape";
import { hasEdgeNear, type LayerCounts, type LearnedPiece, layerCounts, reaches } from "./layerCounts";
import { type LearningState, numberAt } from "./learningState";

/** The quarters of a level's tape in their order: left front, right front, left back, right back (mm). */
export type QuarterValues = readonly [number, number, number, number];

/** One level of the bare form as the learning sees it: its depth below the nape, and its outline for any exponent and breadth. */
export interface LearningLevel {
  readonly depthBelowNape: number;
  /** The outline with its exponent, and the logarithm of its breadth, so far from what is taken first; it reads the same. */
  readonly outline: (exponent: number, lnBreadth: number) => Outline;
}

/** What the tape reads over some pieces at one level as a state tells it, and how that moves with each number of the state. */
export interface Told {
  readonly quarters: QuarterValues;
  /** Only of the numbers that move it. */
  readonly slopes: ReadonlyMap<number, QuarterValues>;
}

/** Finite differences: a hundredth of a layer or of a share, a tenth of an exponent, a millimeter of a cut. */
const differences = { batting: 0.01, exponent: 0.1, breadth: 0.01, cut: 1, edge: 0.1 } as const;

/** Reads one level over the pieces that lie there, at a state. */
export function levelTold(
  level: LearningLevel,
  at: number,
  pieces: readonly LearnedPiece[],
  layout: LearningState,
  state: readonly number[],
): Told {
  const here = pieces.filter((piece) => reaches(piece, level.depthBelowNape));
  const [exponent, breadth] = [state[numberAt.exponent(at)] as number, state[numberAt.breadth(at)] as number];
  const outline = level.outline(exponent, breadth);
  const lay = layerOf(level.depthBelowNape, here, layout, state);
  const own = here.map((piece) => lay(piece, outline, noChange));
  const counts = sum(own, outline);
  const thickness = compressed(counts, state);
  const read = (over: Outline, thick: Float64Array): QuarterValues =>
    withState(valuesOf(tapeQuarters(over, thick)), seamThickness(over, thick), at, state);
  const quarters = read(outline, thickness);
  const slopes = new Map<number, QuarterValues>();
  const slope = (number: number, moved: QuarterValues, by: number) =>
    slopes.set(
      number,
      perQuarter((q) => (moved[q] - quarters[q]) / by),
    );
  for (const quarter of quarterIndices)
    slopes.set(
      numberAt.quarter(at, quarter),
      perQuarter((q) => (q === quarter ? 1 : 0)),
    );
  if (here.length === 0) return { quarters, slopes };

  const [left, right] = seamThickness(outline, thickness);
  slopes.set(numberAt.seamTurn(at), [left / 2, right / 2, -left / 2, -right / 2]);
  for (const number of battingNumbersOf(counts)) {
    const moved = state.map((value, i) => (i === number ? value + differences.batting : value));
    slope(number, read(outline, compressed(counts, moved)), differences.batting);
  }
  const reshaped = (by: number, lnBy: number): QuarterValues => {
    const other = level.outline(exponent + by, breadth + lnBy);
    const laid = here.map((piece) => lay(piece, other, noChange));
    return read(other, compressed(sum(laid, other), state));
  };
  slope(numberAt.exponent(at), reshaped(differences.exponent, 0), differences.exponent);
  slope(numberAt.breadth(at), reshaped(0, differences.breadth), differences.breadth);
  for (const [i, piece] of here.entries()) {
    const index = layout.pieceIds.indexOf(piece.id);
    if (index === -1 || !hasEdgeNear(piece, level.depthBelowNape)) continue;
    const changed = (cut: number, edge: number) => {
      const laid = own.map((counted, other) => (other === i ? lay(piece, outline, { cut, edge }) : counted));
      return read(outline, compressed(sum(laid, outline), state));
    };
    slope(numberAt.cut(layout, index), changed(differences.cut, 0), differences.cut);
    slope(numberAt.edge(layout, index), changed(0, differences.edge), differences.edge);
  }
  return { quarters, slopes };
}

const quarterIndices = [0, 1, 2, 3] as const;
type QuarterIndex = (typeof quarterIndices)[number];
const perQuarter = (of: (quarter: QuarterIndex) => number): QuarterValues => [of(0), of(1), of(2), of(3)];

const valuesOf = (quarters: ReturnType<typeof tapeQuarters>): QuarterValues => [
  quarters.leftFront,
  quarters.rightFront,
  quarters.leftBack,
  quarters.rightBack,
];

/** What the state adds to a simulated reading: the seam's turn times the thickness at the seam, and what the bare form reads beyond. */
function withState(
  simulated: QuarterValues,
  [left, right]: readonly [number, number],
  at: number,
  state: readonly number[],
): QuarterValues {
  const turn = (state[numberAt.seamTurn(at)] as number) / 2;
  const beyond = (quarter: number) => state[numberAt.quarter(at, quarter)] as number;
  return [
    simulated[0] + turn * left + beyond(0),
    simulated[1] + turn * right + beyond(1),
    simulated[2] - turn * left + beyond(2),
    simulated[3] - turn * right + beyond(3),
  ];
}

/** The thickness at the left and right side seam (mm): points run from center back over the right side. */
function seamThickness({ count }: Outline, thickness: Float64Array): readonly [number, number] {
  return [thickness[(3 * count) / 4] as number, thickness[count / 4] as number];
}

interface HandChange {
  readonly cut: number;
  readonly edge: number;
}
const noChange: HandChange = { cut: 0, edge: 0 };

/** Counts one piece's layers as the state takes it to be cut, and so much further. */
function layerOf(depth: number, pieces: readonly LearnedPiece[], layout: LearningState, state: readonly number[]) {
  const known = new Map(
    pieces.map(({ id }) => {
      const index = layout.pieceIds.indexOf(id);
      const found = {
        cut: state[numberAt.cut(layout, index)] as number,
        edge: state[numberAt.edge(layout, index)] as number,
      };
      return [id, index === -1 ? noChange : found];
    }),
  );
  return (piece: LearnedPiece, outline: Outline, further: HandChange): LayerCounts => {
    const { cut, edge } = known.get(piece.id) ?? noChange;
    return layerCounts(piece, { depth, outline }, { cut: cut + further.cut, edge: edge + further.edge });
  };
}

function sum(counted: readonly LayerCounts[], { count }: Outline): LayerCounts {
  const total = { building: new Float64Array(count), finishing: new Float64Array(count) };
  for (const { building, finishing } of counted) {
    for (let i = 0; i < count; i++) {
      total.building[i] = (total.building[i] as number) + (building[i] as number);
      total.finishing[i] = (total.finishing[i] as number) + (finishing[i] as number);
    }
  }
  return total;
}

/**
 * The compressed thickness (mm) of counted layers at each point: n layers are c · (1 + (n − 1)(1 − loss)). Published tests only
 * say that thickness falls with pressure (van Wyk, J. Textile Inst. 37, T285, 1946, cited from memory); readings decide how much.
 */
export function compressed({ building, finishing }: LayerCounts, state: readonly number[]): Float64Array {
  const [thick, loss] = [
    Math.exp(state[numberAt.thickness("building")] as number),
    state[numberAt.loss("building")] as number,
  ];
  const [thin, thinLoss] = [
    Math.exp(state[numberAt.thickness("finishing")] as number),
    state[numberAt.loss("finishing")] as number,
  ];
  return building.map((count, i) => {
    const other = finishing[i] as number;
    const whole = count + other;
    if (whole === 0) return 0;
    // One layer of the stack, wherever it lies in it, keeps its whole thickness: shared between the battings as they are.
    const free = Math.min(1, whole) / whole;
    return count * thick * (1 - loss * (1 - free)) + other * thin * (1 - thinLoss * (1 - free));
  });
}

const battingNumbersOf = ({ building, finishing }: LayerCounts): readonly number[] => [
  ...(building.some((count) => count > 0) ? [numberAt.thickness("building"), numberAt.loss("building")] : []),
  ...(finishing.some((count) => count > 0) ? [numberAt.thickness("finishing"), numberAt.loss("finishing")] : []),
];
