import { flat, type FlatPoint, type PatternLine } from "../pattern/patternPart";
import { type FlatPiece, notchBeside, slantedEdge, smoothEdge } from "./flatPiece";
import type { SoftArm } from "./softArm";

type EdgeName = "upperCap" | "underCap" | "underFront" | "underWrist" | "upperWrist" | "upperFront";

/**
 * An arm of one piece, flat: the tube opened along its front, the back line straight down the middle (x = 0), the upper half of
 * the arm at positive x. A round tube of the elbow's girth that bends by β loses a wedge: at the angle θ from the back line
 * each leg of the dart lies r·tan(β/2)·(1 − cos θ) off the elbow line, r the elbow's radius. So nothing is taken at the
 * back and most along the front, and both front edges are alike.
 */
export function onePiece(arm: SoftArm): FlatPiece<EdgeName> {
  const { capHeight, cutGirths } = arm;
  const { upperArm } = cutGirths;
  const cap = (angle: number) => (capHeight / 2) * (Math.sin(angle) - 1);
  const { stops, legs, middle, bottom } = frontOf(arm);
  const right = smoothFront(stops, 1);
  const left = smoothFront(stops, -1);
  const wrist = [left.at(-1) as FlatPoint, flat(0, bottom), right.at(-1) as FlatPoint];
  const capEdge = slantedEdge(upperArm, cap, Math.PI, -Math.PI);
  const half = (capEdge.length - 1) / 2;
  const upperCap = [right[0] as FlatPoint, ...capEdge.slice(1, half + 1)];
  return {
    edges: [
      { name: "upperCap", points: upperCap },
      { name: "underCap", points: [...capEdge.slice(half, -1), left[0] as FlatPoint] },
      { name: "underFront", points: left },
      { name: "underWrist", points: wrist.slice(0, 2) },
      { name: "upperWrist", points: wrist.slice(1) },
      { name: "upperFront", points: right.toReversed() },
    ],
    lines: [
      { kind: "level", name: "upperArm", points: [flat(-upperArm / 2, -middle), flat(upperArm / 2, -middle)] },
      ...[1, -1].map((side): PatternLine => ({ kind: "dart", name: "elbow", points: legs(side as 1 | -1) })),
      { kind: "grain", name: "grain", points: [flat(0, 0.9 * bottom), flat(0, -middle)] },
    ],
    notches: [
      flat(upperArm / 4, cap(Math.PI / 2)),
      flat(-upperArm / 4, cap(-Math.PI / 2)),
      flat(0, cap(0)),
      notchBeside(capEdge, flat(0, cap(0))),
      ...[1, -1].map((side) => flat((side * upperArm) / 2, -capHeight)),
    ],
    widths: [
      { line: "upperArm", length: upperArm },
      { line: "elbow", length: cutGirths.elbow },
      { line: "wrist", length: cutGirths.wrist },
    ],
  };
}

interface FrontStop {
  readonly along: number;
  readonly half: number;
  readonly y: number;
}

/** The front edge above and below the dart, the dart's legs, the height of the upper arm line and that of the wrist. */
function frontOf({ cutGirths, upper, lower, capHeight, bend }: SoftArm) {
  const { upperArm, elbow, wrist } = cutGirths;
  const rise = (elbow / (2 * Math.PI)) * Math.tan(bend / 2);
  const [above, mouth] = [upper - rise, 4 * rise];
  const middle = (capHeight + above) / 2;
  const bottom = -(upper + lower + 2 * rise);
  const stop = (along: number, girth: number, y: number): FrontStop => ({ along, half: girth / 2, y });
  const stops = {
    upper: [
      stop(capHeight / 2, upperArm, -capHeight / 2),
      stop(capHeight, upperArm, -capHeight),
      stop(middle, upperArm, -middle),
      stop(above, elbow, -above),
    ],
    lower: [stop(above, elbow, -above - mouth), stop(upper + lower - 2 * rise, wrist, bottom)],
  };
  const line = -(upper + rise);
  const leg = (way: 1 | -1) => slantedEdge(elbow, (angle) => line + way * rise * (1 - Math.cos(angle)), Math.PI, 0);
  const legs = (side: 1 | -1) => [...leg(1), ...leg(-1).toReversed().slice(1)].map(({ x, y }) => flat(side * x, y));
  return { stops, legs, middle, bottom };
}

/** One front edge from the cap down, straight across the mouth of the dart. */
function smoothFront({ upper, lower }: ReturnType<typeof frontOf>["stops"], side: 1 | -1): readonly FlatPoint[] {
  const all = [...upper, ...lower.slice(1)];
  const edge = smoothEdge(all.map(({ along, half }) => ({ along, x: side * half, y: -along })));
  const elbow = (upper.at(-1) as FrontStop).along;
  const mouth = (upper.at(-1) as FrontStop).y - (lower[0] as FrontStop).y;
  return edge.flatMap((point) => {
    const below = flat(point.x, point.y - mouth);
    return [...(-point.y <= elbow ? [point] : []), ...(-point.y >= elbow ? [below] : [])];
  });
}
