import { pointsPerRow } from "./panelMesh";
import { panelEdge, type PanelShape } from "./panelShape";

/**
 * The panel turned so that the main direction of its midline, which the lengthwise grain follows, is y, its top row up; the
 * middle of the top row lies at y = 0, the midline around x = 0.
 */
export function turnToGrain(shape: PanelShape): PanelShape {
  const midline = panelEdge(shape, (pointsPerRow - 1) / 2);
  const mean = (axis: "x" | "y") => midline.reduce((sum, point) => sum + point[axis], 0) / midline.length;
  const [meanX, meanY] = [mean("x"), mean("y")];
  let [xx, xy, yy] = [0, 0, 0];
  for (const { x, y } of midline) {
    xx += (x - meanX) * (x - meanX);
    xy += (x - meanX) * (y - meanY);
    yy += (y - meanY) * (y - meanY);
  }
  // The main axis of the points' spread; of its two directions the one that leads down the panel.
  const axis = Math.atan2(2 * xy, xx - yy) / 2;
  const [top, bottom] = [midline[0], midline[midline.length - 1]];
  const leads =
    ((bottom?.x ?? 0) - (top?.x ?? 0)) * Math.cos(axis) + ((bottom?.y ?? 0) - (top?.y ?? 0)) * Math.sin(axis);
  const down = leads < 0 ? axis + Math.PI : axis;
  const turned = (x: number, y: number): readonly [number, number] => [
    -(x - meanX) * Math.sin(down) + (y - meanY) * Math.cos(down),
    -(x - meanX) * Math.cos(down) - (y - meanY) * Math.sin(down),
  ];
  const raised = turned(top?.x ?? 0, top?.y ?? 0)[1];
  const points = new Float64Array(shape.points.length);
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = turned(shape.points[i] as number, shape.points[i + 1] as number);
    points[i] = x;
    points[i + 1] = y - raised;
  }
  return { rows: shape.rows, points };
}
