import { flat, type FlatPoint, type PatternLine } from "../pattern/patternPart";
import { type EdgeStop, type FlatPiece, notchBeside, slantedEdge, smoothEdge } from "./flatPiece";
import type { SoftArm } from "./softArm";

type EdgeName = "cap" | "front" | "wrist" | "back";

/**
 * The upper and the under piece of an arm, flat, both in the frame of the arm (front at positive x). Laid face to face they are one
 * outline from the armpit line down, so joined edges are equal whatever is drawn. At the cap the upper one rises where the
 * under one dips. The bend is drawn 2/π times as large as it is wanted: a flat case, stuffed round, bends π/2 times as far.
 */
export function twoPieces(arm: SoftArm): { readonly upper: FlatPiece<EdgeName>; readonly under: FlatPiece<EdgeName> } {
  return { upper: piece(arm, 1), under: piece(arm, -1) };
}

function piece(arm: SoftArm, way: 1 | -1): FlatPiece<EdgeName> {
  const { cutGirths, capHeight } = arm;
  const cap = (angle: number) => (capHeight / 2) * (way * Math.cos(angle) - 1);
  const [front, back] = [smoothEdge(edgeStops(arm, 1)), smoothEdge(edgeStops(arm, -1))];
  const wrist = [back.at(-1) as FlatPoint, front.at(-1) as FlatPoint];
  const capEdge = slantedEdge(cutGirths.upperArm, cap, Math.PI / 2, -Math.PI / 2);
  const joined = joinedPlaces(arm);
  return {
    edges: [
      { name: "cap", points: [front[0] as FlatPoint, ...capEdge.slice(1, -1), back[0] as FlatPoint] },
      { name: "back", points: back },
      { name: "wrist", points: wrist },
      { name: "front", points: front.toReversed() },
    ],
    lines: [line("upperArm", joined.upperArm), line("elbow", joined.elbow), grain(arm)],
    notches: [
      flat(0, cap(0)),
      ...[joined.armpit, joined.upperArm, joined.elbow].flat(),
      notchBeside(back, joined.armpit[1]),
    ],
    widths: [
      { line: "upperArm", length: between(joined.upperArm) },
      { line: "elbow", length: between(joined.elbow) },
      { line: "wrist", length: between([wrist[0] as FlatPoint, wrist[1] as FlatPoint]) },
    ],
  };
}

/** Where the front or the back edge must run, from the cap down to the wrist: a quarter girth off the middle of the arm. */
function edgeStops(arm: SoftArm, side: 1 | -1): readonly EdgeStop[] {
  const { cutGirths, upper, lower, capHeight, bend } = arm;
  const drawnBend = (2 / Math.PI) * bend;
  const quarter = (girth: number) => (side * girth) / 4;
  const [topX, elbowX, wristX] = [quarter(cutGirths.upperArm), quarter(cutGirths.elbow), quarter(cutGirths.wrist)];
  const down = (along: number): EdgeStop => ({ along, x: topX, y: -along });
  return [
    down(capHeight / 2),
    down(capHeight),
    down((capHeight + upper) / 2),
    { along: upper, x: elbowX * Math.cos(drawnBend / 2), y: elbowX * Math.sin(drawnBend / 2) - upper },
    {
      along: upper + lower,
      x: lower * Math.sin(drawnBend) + wristX * Math.cos(drawnBend),
      y: wristX * Math.sin(drawnBend) - upper - lower * Math.cos(drawnBend),
    },
  ];
}

type Ends = readonly [front: FlatPoint, back: FlatPoint];

/** Where a line of the arm meets the front edge and the back edge. */
function joinedPlaces(arm: SoftArm): { readonly armpit: Ends; readonly upperArm: Ends; readonly elbow: Ends } {
  const [front, back] = [edgeStops(arm, 1), edgeStops(arm, -1)];
  const ends = (i: number): Ends => [place(front[i] as EdgeStop), place(back[i] as EdgeStop)];
  return { armpit: ends(1), upperArm: ends(2), elbow: ends(3) };
}

const place = ({ x, y }: EdgeStop): FlatPoint => flat(x, y);
const between = ([one, other]: Ends): number => Math.hypot(one.x - other.x, one.y - other.y);
const line = (name: string, [front, back]: Ends): PatternLine => ({ kind: "level", name, points: [front, back] });

/** Down the middle of the upper arm, over the middle half of the way to the elbow from the lowest place of the cap. */
const grain = ({ capHeight, upper }: SoftArm): PatternLine => {
  const length = upper - capHeight;
  return { kind: "grain", name: "grain", points: [flat(0, 0.25 * length - upper), flat(0, 0.75 * length - upper)] };
};
