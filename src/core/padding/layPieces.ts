import type { QuarterReadings } from "../body/levelReadings";
import { quarterLengths } from "../geometry/outline";
import { mm } from "../units";
import { cupLayers } from "./cupLayers";
import { type EdgePlaces, edgePlaces } from "./edgePlaces";
import type { LaidPiece } from "./laidPiece";
import type { Layer, LayerRow } from "./layer";
import { filledDepths, layerRows, type LevelWidths } from "./layerRows";
import { layersFromForm, type PieceSketch, type PieceSketches, type PlannedLayer, sketchPieces } from "./outlinePieces";
import { girthCost, type LevelChoice, missCost } from "./padHalf";
import type { Shape } from "./searchShape";
import type { ShapingProblem } from "./shapingProblem";
import { type Half, halves, leastHalfWidth, sideStep } from "./sideLevel";
import { tunedWidths, type TuningWidths } from "./tunedWidths";

/** A shape drawn out: its pieces in the order of pinning. */
export interface LaidShape {
  readonly pieces: readonly LaidPiece[];
  /** What the shape costs with what it misses in truth. */
  readonly cost: number;
}

export function layPieces(problem: ShapingProblem, shape: Shape): LaidShape {
  const drawing = startDrawing(problem, shape);
  const { sketches } = drawing;
  const structure = [
    ...cupLayers(shape, problem.layer.each),
    ...sketches.around.map((sketch) => drawn(sketch, drawing, null)),
    ...halves.flatMap((half) => sketches.panels[half].map((sketch) => drawn(sketch, drawing, half))),
  ];
  const tuned = tunedWidths(problem, shape, structure, feathersOf(drawing));
  const tuning = halves.flatMap((half) =>
    sketches.tuning[half].map((sketch) => drawnTuning(sketch, drawing, tuned.widths, half)),
  );
  return { pieces: [...structure, ...tuning], cost: leastLaidCost(shape) + missedCost(tuned.misses) };
}

/** What a shape costs at least once it is drawn out and tuned: without what the search took it to miss. */
export const leastLaidCost = ({ cost, halves: { front, back } }: Shape): number =>
  front.choices.reduce((rest, choice, i) => {
    const other = back.choices[i] as LevelChoice;
    return rest - choice.missCost - other.missCost - girthCost(choice.miss + other.miss);
  }, cost);

const missedCost = (misses: readonly QuarterReadings[]): number =>
  misses.reduce((sum, { leftFront, rightFront, leftBack, rightBack }) => {
    const [front, back] = [leftFront + rightFront, leftBack + rightBack];
    return sum + missCost(front) + missCost(back) + girthCost(front + back);
  }, 0);

interface Drawing {
  readonly problem: ShapingProblem;
  readonly shape: Shape;
  readonly sketches: PieceSketches;
  readonly depths: readonly number[];
  readonly places: ReadonlyMap<PlannedLayer, EdgePlaces>;
  readonly reaches: { readonly [half in Half]: ReadonlyMap<PlannedLayer, LevelWidths> };
}

function startDrawing(problem: ShapingProblem, shape: Shape): Drawing {
  const sketches = sketchPieces(shape);
  const depths = problem.levels.map(({ depth }) => depth);
  const around = sketches.around.flatMap(({ layers }) => layers);
  const [front, back] = [layersFromForm(sketches, "front"), layersFromForm(sketches, "back")];
  const reaches = (half: Half) => structureReaches(sketches.panels[half], shape.halves[half].choices);
  return {
    problem,
    shape,
    sketches,
    depths,
    places: edgePlaces({ around, front, back, depths, gaps: shape.gaps, gainAt: problem.gainAt }),
    reaches: { front: reaches("front"), back: reaches("back") },
  };
}

/** How far each layer of structure reaches to both sides at its levels: the outermost farthest, each beneath a step less. */
function structureReaches(
  panels: readonly PieceSketch[],
  choices: readonly LevelChoice[],
): ReadonlyMap<PlannedLayer, LevelWidths> {
  const over = { left: choices.map(() => 0), right: choices.map(() => 0) };
  const reaches = new Map<PlannedLayer, LevelWidths>();
  for (const layer of panels.flatMap(({ layers }) => layers).reverse()) {
    const widths = (side: "left" | "right") =>
      choices.slice(layer.first, layer.last + 1).map((choice, i) => {
        if (layer.sides !== "both" && layer.sides !== side) return 0;
        const level = layer.first + i;
        const beneath = over[side][level] as number;
        over[side][level] = beneath + 1;
        return Math.max(leastHalfWidth, choice[side].reach - sideStep * beneath);
      });
    reaches.set(layer, { left: widths("left"), right: widths("right") });
  }
  return reaches;
}

/** A wrap or panel with its outlines. */
function drawn(sketch: PieceSketch, drawing: Drawing, half: Half | null): LaidPiece {
  if (half !== null) return drawnPanel(sketch, drawing, (layer) => drawing.reaches[half].get(layer) as LevelWidths);
  return drawnOf(sketch, drawing, (_, place) => {
    const rows = wrapRows(place.top, place.bottom, drawing.depths, drawing.problem.sectionAt);
    return layerOf(drawing, place, rows, true);
  });
}

function drawnTuning(sketch: PieceSketch, drawing: Drawing, widths: TuningWidths, half: Half): LaidPiece {
  return drawnPanel(sketch, drawing, ({ first, last }) => ({
    left: widths[half].left.slice(first, last + 1),
    right: widths[half].right.slice(first, last + 1),
  }));
}

const drawnPanel = (sketch: PieceSketch, drawing: Drawing, widthsOf: (layer: PlannedLayer) => LevelWidths): LaidPiece =>
  drawnOf(sketch, drawing, (layer, place) =>
    layerOf(drawing, place, rowsOf(layer, place, widthsOf(layer), drawing), false),
  );

const drawnOf = (
  { kind, zone, anchor, layers }: PieceSketch,
  { places }: Drawing,
  drawnLayer: (layer: PlannedLayer, place: EdgePlaces) => Layer,
): LaidPiece => ({
  kind,
  zone,
  anchor,
  layers: layers.map((layer) => drawnLayer(layer, places.get(layer) as EdgePlaces)),
});

const rowsOf = (
  { first }: PlannedLayer,
  place: EdgePlaces,
  widths: LevelWidths,
  { depths, shape }: Drawing,
): readonly LayerRow[] => layerRows(place, first, widths, depths, shape.gaps);

const layerOf = ({ problem }: Drawing, { feather }: EdgePlaces, rows: readonly LayerRow[], wrap: boolean): Layer => ({
  batting: "building",
  thickness: mm(problem.layer.each),
  feather: mm(feather),
  wrap,
  rows,
});

/** Once around the bare form at every row, from center front. */
export function wrapRows(
  top: number,
  bottom: number,
  depths: readonly number[],
  sectionAt: ShapingProblem["sectionAt"],
): readonly LayerRow[] {
  const stops = [top, ...depths.filter((depth) => depth > top && depth < bottom), bottom];
  return filledDepths(stops).map((depth) => {
    const { leftFront, leftBack, rightFront, rightBack } = quarterLengths(sectionAt(depth));
    return { depthBelowNape: mm(depth), start: mm(-rightFront - rightBack), end: mm(leftFront + leftBack) };
  });
}

/** The feather that a tuning layer has at each level of a half. */
function feathersOf({ sketches, places, depths }: Drawing): { readonly [half in Half]: readonly number[] } {
  const of = (half: Half) => {
    const layers = sketches.tuning[half].flatMap((sketch) => sketch.layers);
    return depths.map((_, level) => {
      const layer = layers.find(({ first, last }) => level >= first && level <= last);
      return layer === undefined ? 0 : (places.get(layer) as EdgePlaces).feather;
    });
  };
  return { front: of("front"), back: of("back") };
}
