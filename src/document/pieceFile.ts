import { mapLevels } from "../core/body/vocabulary";
import type { EndPlace, LayerCut, LineWidth } from "../core/padding/layerCut";
import type { Layer } from "../core/padding/layer";
import type { Piece } from "../core/padding/piece";
import type { PlannedPiece, TapeReading, TapeReadings } from "../core/plan/plan";
import { mm, type Millimetres } from "../core/units";
import { longestMm } from "./fittingLimits";
import type { EndFile, PieceFile } from "./pieceFileSchema";

export type { PieceFile } from "./pieceFileSchema";

/** A piece of the plan, written out; its name and place are sentences made elsewhere. */
export const pieceToFile = (piece: PlannedPiece, name: string, place: string): PieceFile => ({
  id: piece.id,
  order: piece.order,
  name,
  kind: piece.kind,
  zone: piece.zone,
  level: piece.level,
  number: piece.number,
  anchor: piece.anchor,
  ...(piece.pair === null ? {} : { pair: piece.pair }),
  place,
  layers: piece.layers.map(layerToFile),
  cut: piece.cut.map(cutToFile),
  readingsAfter: readingsToFile(piece.readingsAfter),
});

/** The piece a file describes, without its sentences and readings. */
export const pieceFromFile = (file: PieceFile): Piece => ({
  id: file.id,
  order: file.order,
  kind: file.kind,
  zone: file.zone,
  level: file.level,
  number: file.number,
  anchor: file.anchor,
  pair: file.pair ?? null,
  layers: file.layers.map(
    (layer): Layer => ({
      batting: layer.batting,
      thickness: mm(layer.thicknessMm),
      feather: mm(layer.featherMm),
      wrap: layer.wrap,
      rows: layer.rows.map(({ depthBelowNapeMm, startMm, endMm }) => ({
        depthBelowNape: mm(depthBelowNapeMm),
        start: mm(startMm),
        end: mm(endMm),
      })),
    }),
  ),
  cut: file.cut.map(cutFromFile),
});

/** No log of work leads to a reading that could not be read back, however much is pinned. */
export const readingToFile = ({ girth, frontArc, backArc }: TapeReading) => ({
  girthMm: atMostLongest(girth),
  frontArcMm: atMostLongest(frontArc),
  backArcMm: atMostLongest(backArc),
});

const atMostLongest = (length: Millimetres): number => Math.min(longestMm, tenth(length));

export const tenth = (length: number): number => Math.round(length * 10) / 10 || 0;

const hundredth = (length: Millimetres): number => Math.round(length * 100) / 100 || 0;

const readingsToFile = (readings: TapeReadings): PieceFile["readingsAfter"] =>
  mapLevels((level) => readingToFile(readings[level]));

const layerToFile = ({ batting, thickness, feather, wrap, rows }: Layer): PieceFile["layers"][number] => ({
  batting,
  thicknessMm: hundredth(thickness),
  featherMm: tenth(feather),
  wrap,
  rows: rows.map(({ depthBelowNape, start, end }) => ({
    depthBelowNapeMm: tenth(depthBelowNape),
    startMm: tenth(start),
    endMm: tenth(end),
  })),
});

function cutToFile(cut: LayerCut): PieceFile["cut"][number] {
  switch (cut.shape) {
    case "bought":
      return { shape: "bought" };
    case "disc":
      return { shape: "disc", diameterMm: tenth(cut.diameter) };
    case "strip":
    case "panel":
      return {
        shape: cut.shape,
        heightMm: tenth(cut.height),
        top: endToFile(cut.top),
        bottom: endToFile(cut.bottom),
        topWidthMm: tenth(cut.topWidth),
        bottomWidthMm: tenth(cut.bottomWidth),
        widths: cut.widths.map(({ level, belowTop, left, right }) => ({
          level,
          belowTopMm: tenth(belowTop),
          leftMm: tenth(left),
          rightMm: tenth(right),
        })),
        darts: cut.darts.map(({ width, depth, ...dart }) => ({
          ...dart,
          widthMm: tenth(width),
          depthMm: tenth(depth),
        })),
      };
  }
}

function cutFromFile(cut: PieceFile["cut"][number]): LayerCut {
  if (cut.shape === "bought") return cut;
  if (cut.shape === "disc") return { shape: "disc", diameter: mm(cut.diameterMm) };
  return {
    shape: cut.shape,
    height: mm(cut.heightMm),
    top: endFromFile(cut.top),
    bottom: endFromFile(cut.bottom),
    topWidth: mm(cut.topWidthMm),
    bottomWidth: mm(cut.bottomWidthMm),
    widths: cut.widths.map(
      ({ level, belowTopMm, leftMm, rightMm }): LineWidth => ({
        level,
        belowTop: mm(belowTopMm),
        left: mm(leftMm),
        right: mm(rightMm),
      }),
    ),
    darts: cut.darts.map(({ widthMm, depthMm, ...dart }) => ({ ...dart, width: mm(widthMm), depth: mm(depthMm) })),
  };
}

const endToFile = ({ level, distance, side }: EndPlace): EndFile => ({ level, distanceMm: tenth(distance), side });

const endFromFile = ({ level, distanceMm, side }: EndFile): EndPlace => ({ level, distance: mm(distanceMm), side });
