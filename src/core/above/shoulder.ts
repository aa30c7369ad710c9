import { flat, type FlatPoint, type PatternPart } from "../pattern/patternPart";
import { lengthAgreement } from "../tolerances";
import { mm } from "../units";
import type { AboveInput } from "./aboveInput";
import type { BuildAbove } from "./buildAbove";
import { layersThatFit } from "./layersThatFit";
import { aboveFeather } from "./ovalLayers";
import { aboveReading } from "./aboveReading";
import { needed, sideLength } from "./needed";
import { tautPath } from "./tautPath";

/**
 * A shoulder, height first and then its length, which the height changes: a wedge of triangles that is nothing at the neck and full
 * at the tip lifts the tip straight up over the edge of the armhole; a shoulder that is then too long is marked in on the
 * cover, one that is too short is extended.
 */
export function shoulder(input: AboveInput, side: "left" | "right"): readonly BuildAbove[] {
  const height = shoulderHeight(input, side);
  return [height, shoulderLength(input, side, height)];
}

function shoulderHeight({ body, form, layer, made }: AboveInput, side: "left" | "right"): BuildAbove {
  const build = { id: `shoulderHeight-${side}`, kind: "shoulderHeight", side } as const;
  const read = needed({
    drop: [sideLength(body, side, "shoulderDrop"), "body", sideName(side, "shoulderDrop")],
    formDrop: [sideLength(form, side, "shoulderDrop"), "form", sideName(side, "shoulderDrop")],
    formLength: [sideLength(form, side, "shoulderLength"), "form", sideName(side, "shoulderLength")],
  });
  if (read.kind === "unread") return { ...build, act: read.act, readings: [] };
  const { drop, formDrop, formLength } = read.of;
  const lift = layerLift(layer, formDrop, formLength);
  // The lift counts up where the slope counts down.
  const count =
    made.get(build.id)?.whole ?? layersThatFit((layers) => [{ after: layers * lift, person: formDrop - drop }]);
  const name = (["leftShoulderDrop", "rightShoulderDrop"] as const)[side === "left" ? 0 : 1];
  const readings = [aboveReading(name, [formDrop, formDrop - count * lift, drop], lift, "less")];
  if (count === 0) return { ...build, act: { what: "none" }, readings };
  const cut = (layers: number) =>
    wedgeLengths(layers, formLength).map((length, i) =>
      wedgePart(`${build.id}-layer-${i + 1}`, build.id, side, length, formLength),
    );
  const stacks = [{ part: "whole" as const, layers: count, oneMore: { [name]: -lift } }];
  return {
    ...build,
    act: { what: "layers", layers: cut(count), feather: aboveFeather, stacks, asks: [name] },
    readings,
  };
}

/** The name to ask for: the side's own. */
const sideName = (side: "left" | "right", name: "shoulderDrop" | "shoulderLength") =>
  `${side}S${name.slice(1)}` as `${"left" | "right"}Shoulder${"Drop" | "Length"}`;

/**
 * How far up a layer lifts the tip, straight (mm): it lies on a slope, so it is thicker straight up than through. A slope steeper than
 * 60 degrees is no shoulder and counts as that.
 */
function layerLift(layer: number, drop: number, length: number): number {
  const sine = Math.min(Math.sin(Math.PI / 3), drop / length);
  return layer / Math.sqrt(1 - sine * sine);
}

/** The shortest and the longest triangle as shares of the shoulder's length: the longest ends near the neck. Judgements. */
const shortest = 0.3;
const longest = 0.92;

const shortestOf = (count: number): number => Math.max(shortest, longest / count);

/** The lengths of a wedge's triangles, from the form outwards: smallest first, the largest over all, in even steps. */
export const wedgeLengths = (count: number, shoulderLength: number): readonly number[] =>
  Array.from(
    { length: count },
    (_, i) => shoulderLength * (longest - ((longest - shortestOf(count)) * (count - 1 - i)) / Math.max(1, count - 1)),
  );

/** How deep a shoulder is at the armhole, front to back (mm), until it is trimmed on the form. Common practice, no source. */
const armholeDepth = 100;

/** A triangle's point is cut off this wide (mm): a sharp one cannot be pinned. A judgement. */
const blunt = 12;

/** One triangle lying flat: the neck end at x = 0 on the shoulder line, the tip to the wearer's left for the left shoulder. */
function wedgePart(
  id: string,
  of: string,
  side: "left" | "right",
  length: number,
  shoulderLength: number,
): PatternPart {
  const base = (armholeDepth * (0.6 + (0.4 * length) / (longest * shoulderLength))) / 2;
  const [from, to] = [shoulderLength - length, shoulderLength];
  const around = [flat(from, -blunt / 2), flat(to, -base), flat(to, base), flat(from, blunt / 2)];
  const corners = side === "left" ? around : around.map(({ x, y }) => flat(-x, y)).toReversed();
  const names = side === "left" ? ["front", "armhole", "back", "neck"] : ["back", "armhole", "front", "neck"];
  const way = side === "left" ? 1 : -1;
  return {
    id,
    kind: "batting",
    of,
    edges: names.map((name, i) => ({
      id: `${id}-${name}`,
      points: [corners[i] as FlatPoint, corners[(i + 1) % 4] as FlatPoint],
      sewnTo: null,
    })),
    lines: [{ kind: "anchor", name: "shoulder seam", points: [flat(way * from, 0), flat(way * to, 0)] }],
    notches: [flat(way * to, 0)],
    levels: [],
  };
}

function shoulderLength({ body, form }: AboveInput, side: "left" | "right", height: BuildAbove): BuildAbove {
  const build = { id: `shoulderLength-${side}`, kind: "shoulderLength", side } as const;
  const read = needed({
    length: [sideLength(body, side, "shoulderLength"), "body", sideName(side, "shoulderLength")],
    formLength: [sideLength(form, side, "shoulderLength"), "form", sideName(side, "shoulderLength")],
  });
  if (read.kind === "unread") return { ...build, act: read.act, readings: [] };
  const { length, formLength } = read.of;
  const stands = liftedLength(formLength, height);
  const name = (["leftShoulderLength", "rightShoulderLength"] as const)[side === "left" ? 0 : 1];
  const longer = length - stands;
  const acts = Math.abs(longer) > lengthAgreement;
  return {
    ...build,
    act: acts ? { what: longer > 0 ? "extend" : "markInward", amount: mm(Math.abs(longer)) } : { what: "none" },
    readings: [aboveReading(name, [stands, acts ? length : stands, length], 2 * lengthAgreement)],
  };
}

/** The shoulder line over its wedge: the tip was lifted straight up, so it lies as far out as it did and less far down. */
function liftedLength(formLength: number, { act, readings: [drop] }: BuildAbove): number {
  if (act.what !== "layers" || drop === undefined) return formLength;
  const starts = wedgeLengths(act.layers.length, formLength).map((length) => formLength - length);
  const lift = (drop.before - drop.after) / starts.length;
  const out = Math.sqrt(Math.max(0, formLength ** 2 - drop.before ** 2));
  const thickness = (along: number) =>
    starts.reduce((sum, start) => sum + lift * Math.max(0, Math.min(1, (along - start) / aboveFeather)), 0);
  return tautPath(
    Array.from({ length: wedgeSteps + 1 }, (_, i) => {
      const share = i / wedgeSteps;
      return { x: share * out, out: -share * drop.before + thickness(share * formLength) };
    }),
  );
}
const wedgeSteps = 40;
