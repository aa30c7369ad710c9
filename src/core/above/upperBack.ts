import { belowNape } from "../body/linePlace";
import { root } from "../numerics/root";
import { type AboveInput, meanThickness } from "./aboveInput";
import type { BuildAbove } from "./buildAbove";
import { layersThatFit, type ReadWith } from "./layersThatFit";
import { aboveFeather, layerShares, type Oval, ovalParts, ovalThickness } from "./ovalLayers";
import { aboveReading } from "./aboveReading";
import { tautPath } from "./tautPath";
import { needed } from "./needed";

/**
 * A rounded upper back. A tape from the nape to the waist that is longer than the way straight down says how far the back stands
 * out between them; an oval piece between the shoulder blades makes up the difference of body and form, in whole layers,
 * as far as the tape across the back allows.
 */
export function upperBack({ body, form, layer, added, made }: AboveInput): BuildAbove {
  const build = { id: "upperBack-both", kind: "upperBack", side: "both" } as const;
  const read = needed({
    length: [body.napeToWaist, "body", "napeToWaist"],
    waist: [belowNape(body, "waist"), "body", "waistBelowNape"],
    across: [body.upperBackWidth, "body", "upperBackWidth"],
    formLength: [form.napeToWaist, "form", "napeToWaist"],
    formWaist: [belowNape(form, "waist"), "form", "waistBelowNape"],
    formAcross: [form.upperBackWidth, "form", "upperBackWidth"],
  });
  if (read.kind === "unread") return { ...build, act: read.act, readings: [] };
  const { length, waist, across, formLength, formWaist, formAcross } = read.of;
  // The tape of the form is counted to the person's waistline; near the waist the back runs nearly straight down.
  const bulge = backBulge(formLength + waist - formWaist, waist);
  const oval = backOval(waist, formAcross);
  const under = profileDepths(waist).map((depth) => meanThickness(added.back(depth)));
  const readWith = (count: number): readonly [ReadWith, ReadWith] => {
    const shares = layerShares(count);
    return [
      {
        after: backLength(
          waist,
          bulge,
          (depth, i) => (under[i] as number) + thickness(oval, shares, layer, depth, waist),
        ),
        person: length,
      },
      {
        after: acrossLength(formAcross, backTurn, (aside) => acrossThickness(oval, shares, layer, aside, waist)),
        person: across,
      },
    ];
  };
  const count = made.get(build.id)?.whole ?? layersThatFit(readWith);
  const [before, after] = [readWith(0), readWith(count)];
  const [less, more] = [readWith(Math.max(0, count - 1)), readWith(count + 1)];
  const asks = ["napeToWaist", "upperBackWidth"] as const;
  const oneMore: { [name in (typeof asks)[number]]?: number } = {};
  const readings = asks.map((name, i) => {
    const at = (all: readonly ReadWith[]) => (all[i] as ReadWith).after;
    oneMore[name] = at(more) - at(after);
    return aboveReading(
      name,
      [at(before), at(after), (before[i] as ReadWith).person],
      Math.max(at(more) - at(after), at(after) - at(less)),
    );
  });
  if (count === 0) return { ...build, act: { what: "none" }, readings };
  const cut = (layers: number) => ovalParts(build.id, oval, layerShares(layers), "center back");
  const stacks = [{ part: "whole" as const, layers: count, oneMore: oneMore }];
  return { ...build, act: { what: "layers", layers: cut(count), feather: aboveFeather, stacks, asks }, readings };
}

/**
 * Where the back stands out furthest, and where a tape across it runs, as shares of the way from the nape to the waist; how far
 * below the nape the oval begins, and where it ends: the underbust line. Judgements, seen on the bodies of the tests.
 */
const blade = 0.42;
const midArmhole = 0.32;
const begins = 0.05;
const ends = 0.8;

/** The width of the oval as a share of the tape across the back: it ends short of the armholes. A judgement. */
const wide = 0.8;

const backOval = (waist: number, across: number): Oval => ({
  up: (blade - begins) * waist,
  down: (ends - blade) * waist,
  half: (wide * across) / 2,
});

const thickness = (oval: Oval, shares: readonly number[], layer: number, depth: number, waist: number): number =>
  ovalThickness(oval, shares, layer, depth - blade * waist);

const acrossThickness = (oval: Oval, shares: readonly number[], layer: number, aside: number, waist: number): number =>
  ovalThickness(oval, shares, layer, (midArmhole - blade) * waist, aside);

/**
 * Through what angle a back turns from arm crease to arm crease: the middle of fifteen shapes of the tests, within nine tenths of
 * their half-breadth, 140 to 200 mm below the nape, is 1.8 (1.4 to 2.3).
 */
export const backTurn = 1.8;

/** The way of a tape over a back that stands out as half a sine wave between the nape and the waist, with padding on it. */
const backLength = (waist: number, bulge: number, padding: (depth: number, i: number) => number): number =>
  tautPath(
    profileDepths(waist).map((depth, i) => ({
      x: depth,
      out: bulge * Math.sin((Math.PI * depth) / waist) + padding(depth, i),
    })),
  );

const profileStep = 4;

function profileDepths(waist: number): readonly number[] {
  const steps = Math.ceil(waist / profileStep);
  return Array.from({ length: steps + 1 }, (_, i) => (waist * i) / steps);
}

/** How far a back stands out that a tape of this length runs over (mm); not at all where the tape is no longer than the way. */
export function backBulge(length: number, waist: number): number {
  const read = (bulge: number) => backLength(waist, bulge, () => 0) - length;
  if (read(0) >= 0) return 0;
  const found = root(read, { from: 0, to: length, precision: bulgePrecision });
  return found.kind === "converged" ? found.value : found.nearest;
}
/** Finer than any tape (mm of length). */
const bulgePrecision = 0.01;

/** A tape across an arc of this length and turn, with padding on it; `aside` is counted along the arc from its middle. */
export function acrossLength(length: number, turn: number, padding: (aside: number) => number): number {
  const radius = length / turn;
  const steps = Math.ceil(length / profileStep);
  const points = Array.from({ length: steps + 1 }, (_, i) => {
    const aside = length * (i / steps - 0.5);
    const out = radius + padding(aside);
    return { x: out * Math.sin(aside / radius), out: out * Math.cos(aside / radius) };
  });
  // A tape drawn in chords reads a hair less than the arc itself.
  const chords = 2 * radius * steps * Math.sin(turn / steps / 2);
  return tautPath(points) + length - chords;
}
