import { pointsPerRow } from "./panelMesh";
import { type FlatPoint, panelEdge, type PanelShape } from "./panelShape";

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
    xx += x * (x - meanX);
    xy += x * (y - meanY);
    yy += y * (y - meanY);
  }
  // The main axis of the points' spread; of its two directions the one that leads down the panel.
  const axis = Math.atan2(2 * xy, xx - yy) / 2;
  const [top, bottom] = [midline[0], midline[midline.length - 1]] as [FlatPoint, FlatPoint];
  const leads = Math.sign((bottom.x - top.x) * Math.cos(axis) + (bottom.y - top.y) * Math.sin(axis));
  const [downX, downY] = [leads * Math.cos(axis), leads * Math.sin(axis)];
  const points = new Float64Array(shape.points.length);
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [shape.points[i] as number, shape.points[i + 1] as number];
    points[i] = (y - meanY) * downX - (x - meanX) * downY;
    points[i + 1] = (top.x - x) * downX + (top.y - y) * downY;
  }
  return { rows: shape.rows, points };
}
