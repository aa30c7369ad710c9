import type { ApexReadings } from "../body/heightReadings";
import type { QuarterReadings } from "../body/levelReadings";
import { type Slab, slabs, type StackMaterial } from "./hill";
import type { Pad } from "./pad";
import { type FirstLayer, paddedTape } from "./paddedTape";
import { roundCounts, roundPads } from "./rounds";
import { type Crowned, type CupPlace, highestCrown, shaper, type Shaping, type Slabs } from "./shape";
import { sidePads } from "./sidePad";
import { stackThickness, type Station } from "./stack";
import { levelCurve, type Surface } from "./surface";

/**
 * Everything the padding is shaped from, in one go: the bare form, what the tape must read at each level, how far the body
 * stands out at the sides, and what is already pinned with what the tape read beyond the simulation of it. Lists
 * are by level, bust first.
 */
export interface Batch {
  readonly surface: Surface;
  readonly stations: readonly Station[];
  readonly targets: readonly QuarterReadings[];
  readonly sides: readonly SideWish[];
  readonly apex: ApexReadings;
  /** What one layer of each batting is taken to be worth (mm); the finishing batting may be missing. */
  readonly layers: { readonly building: number; readonly finishing: number | null };
  /** Rounds are counted as if a layer were worth this much more, so that a worth that is not sure yet takes no quarter over. */
  readonly caution: number;
  readonly firstLayer: FirstLayer;
  readonly pinned: readonly Pad[];
  readonly offsets: readonly QuarterReadings[];
}

export interface SideWish {
  readonly left: number;
  readonly right: number;
  readonly spread: number;
}

/** Into how many pads the highest stack of each kind is divided at most. */
export interface Division {
  readonly front: number;
  readonly back: number;
  readonly cup: number;
}

/** Rounds and ridges of one material for a batch: how high the rounds are at each level (mm), and how the rest is shaped in any division. */
export interface Ground {
  readonly roundHeights: readonly number[];
  readonly divided: (division: Division) => Shaping;
}

export function ground(batch: Batch, material: StackMaterial): Ground {
  const { stations, surface, targets, offsets, firstLayer } = batch;
  const layerThickness = material.inner.layer;
  const gains = levelGains(batch);
  const even = stations.map((_, level) => evenThickness(gains[level] as QuarterGains, batch.sides[level] as SideWish));
  const counts = roundCounts(even, layerThickness * (1 + batch.caution));
  const crown = (side: "left" | "right") =>
    stations.map((_, level) => sideCrown(side, level, batch, gains, counts, layerThickness));
  const sideCrowns = { left: crown("left"), right: crown("right") };
  const fixed = [...roundPads(counts, surface, material.inner), ...ridgePads(batch, material, sideCrowns)];
  const shape = shaper({
    surface,
    stations,
    targets,
    beneath: [...batch.pinned, ...fixed],
    offsets,
    firstLayer,
    cups: [cupPlace(batch, "left"), cupPlace(batch, "right")],
    chestShares: [
      chestShare("leftFront", gains, counts, layerThickness),
      chestShare("rightFront", gains, counts, layerThickness),
    ],
  });
  const divided = (division: Division): Shaping => {
    const { padCount, crowned } = shape(slabPlan(material, gains, counts, division));
    const withFixed = ({ crowns, padCount: count, trimmed }: Crowned): Crowned => ({
      crowns,
      padCount: fixed.length + count,
      trimmed: () => {
        const { pads, readings } = trimmed();
        return { pads: [...fixed, ...pads], readings };
      },
    });
    return {
      padCount: (crowns) => fixed.length + padCount(crowns),
      crowned: (similar) => withFixed(crowned(similar)),
    };
  };
  return { roundHeights: counts.map((count) => count * layerThickness), divided };
}

interface SideCrowns {
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/** The ridges over both side seams. */
function ridgePads({ stations, surface }: Batch, material: StackMaterial, { left, right }: SideCrowns): readonly Pad[] {
  const stack = slabStack(material, [...left, ...right], ridgeDivision, thickestPad);
  const drops = stations.map(({ drop }) => drop);
  const ridge = (zone: "leftSide" | "rightSide", heights: readonly number[]) =>
    heights.every((height) => height === 0)
      ? []
      : sidePads({ zone, crown: levelCurve(drops, heights, "zero") }, surface, stack);
  return [...ridge("leftSide", left), ...ridge("rightSide", right)];
}

/** A ridge is low: two pads are enough for any. */
const ridgeDivision = 2;

interface QuarterGains {
  readonly leftFront: number;
  readonly rightFront: number;
  readonly leftBack: number;
  readonly rightBack: number;
}

/** How much each quarter of the tape still has to gain at each level (mm), never less than nothing. */
function levelGains({ stations, targets, pinned, offsets, firstLayer }: Batch): readonly QuarterGains[] {
  return stations.map((station, level) => {
    const read = paddedTape(station, stackThickness(pinned, station), firstLayer);
    const target = targets[level] as QuarterReadings;
    const offset = offsets[level] as QuarterReadings;
    const gain = (quarter: keyof QuarterGains) => Math.max(0, target[quarter] - read[quarter] - offset[quarter]);
    return {
      leftFront: gain("leftFront"),
      rightFront: gain("rightFront"),
      leftBack: gain("leftBack"),
      rightBack: gain("rightBack"),
    };
  });
}

/**
 * The layer that would go all the way round: no quarter may be taken over its reading (a quarter turns π/2), and the sides not
 * beyond the body's, as far as its breadth is known.
 */
function evenThickness(gains: QuarterGains, sides: SideWish): number {
  const byTape = Math.min(gains.leftFront, gains.rightFront, gains.leftBack, gains.rightBack) / (Math.PI / 2);
  return Math.max(0, Math.min(byTape, Math.min(sides.left, sides.right) + sides.spread));
}

/** The ridge over a side seam, where the body was found broader than the rounds make the form, within what front and back may gain. */
function sideCrown(
  side: "left" | "right",
  level: number,
  batch: Batch,
  gains: readonly QuarterGains[],
  counts: readonly number[],
  layerThickness: number,
): number {
  const wish = batch.sides[level] as SideWish;
  const gain = gains[level] as QuarterGains;
  const rounds = (counts[level] as number) * layerThickness;
  const beyond = wish[side] - rounds;
  if (beyond <= Math.max(layerThickness, sureBySpreads * wish.spread)) return 0;
  const quarters = side === "left" ? [gain.leftFront, gain.leftBack] : [gain.rightFront, gain.rightBack];
  const room = (Math.min(...quarters) - (rounds * Math.PI) / 2) / (Math.PI / 4);
  return Math.max(0, Math.min(beyond, ridgeShareOfRoom * room));
}

/** A ridge is built only on a breadth that is surely larger: two spreads. */
const sureBySpreads = 2;

/** A ridge takes at most this share of what front and back may gain, so that they can still be steered. */
const ridgeShareOfRoom = 0.85;

/** The centre of a cup on the bare form and the radius of its largest disc. */
function cupPlace({ stations, apex, surface }: Batch, side: "left" | "right"): CupPlace {
  const bust = stations[0] as Station;
  const underbust = stations[1] as Station;
  const quarter = surface.frontQuarter[surface.levelRows[0] as number] as number;
  const along = Math.min(alongTo(bust, apex.apart.value / 2), 0.75 * quarter);
  const drop = side === "left" ? apex.leftDrop.value : apex.rightDrop.value;
  const room = Math.min(along, quarter - along);
  const radius = Math.max(smallestCup, Math.min(largestCup, 0.95 * (underbust.drop - bust.drop), room));
  return { along: side === "left" ? along : -along, drop, radius };
}

/**
 * A bust is a ribcage with breasts on it: where the underbust wants more than a layer or two in front, the same goes on
 * over the chest beneath the bra, as far as it leaves at least half of what the bust wants to the cups.
 */
function chestShare(
  quarter: "leftFront" | "rightFront",
  gains: readonly QuarterGains[],
  counts: readonly number[],
  layerThickness: number,
): number {
  const rest = (level: number) =>
    Math.max(0, (gains[level] as QuarterGains)[quarter] - ((counts[level] as number) * layerThickness * Math.PI) / 2);
  if (rest(1) < chestLayers * layerThickness) return 0;
  return Math.min(1, (shareLeftToCups * rest(0)) / rest(1));
}

const chestLayers = 1.5;
const shareLeftToCups = 0.5;

/** Radius of the largest disc of a cup (mm): a wire of a bra is about 90 to 150 mm across. Common practice, no source. */
const smallestCup = 45;
const largestCup = 75;

/** Way along the bare front from centre front to where the outline is this far to the side (mm). */
function alongTo({ outline }: Station, x: number): number {
  for (let i = outline.count / 2; i < outline.count; i++) {
    const next = outline.x[i] as number;
    if (next < x) continue;
    const before = outline.x[i - 1] as number;
    const [from, to] = [outline.along[i - 1] as number, outline.along[i] as number];
    return from + ((to - from) * (x - before)) / (next - before || 1);
  }
  return outline.quarters.leftFront;
}

/** No pad is made thicker than this (mm), so that a feathered edge still fits its outline; a disc is smaller. */
const thickestPad = 50;
const thickestDisc = 30;

/** How the stacks are divided into pads, so that the work stays at about a dozen pieces. */
function slabPlan(
  material: StackMaterial,
  gains: readonly QuarterGains[],
  counts: readonly number[],
  division: Division,
): Slabs {
  const rest = (gain: number, level: number) =>
    Math.max(0, gain - ((counts[level] as number) * material.inner.layer * Math.PI) / 2) / (Math.PI / 4);
  const front = gains.map((gain, level) => (level === 0 ? 0 : rest(Math.max(gain.leftFront, gain.rightFront), level)));
  const back = gains.map((gain, level) => rest(Math.max(gain.leftBack, gain.rightBack), level));
  const bust = gains[0] as QuarterGains;
  const cup = rest(Math.max(bust.leftFront, bust.rightFront), 0);
  return {
    front: slabStack(material, front, division.front, thickestPad),
    back: slabStack(material, back, division.back, thickestPad),
    cup: slabStack(material, [cup], division.cup, thickestDisc),
  };
}

/** Slabs for stacks of these heights, divided into at most so many pads, none of them thicker than it may be. */
function slabStack(
  material: StackMaterial,
  heights: readonly number[],
  most: number,
  thickest: number,
): readonly Slab[] {
  const layerThickness = material.inner.layer;
  const layers = Math.round(Math.max(...heights) / layerThickness);
  const mostPlies = Math.max(1, Math.floor(thickest / layerThickness));
  return slabs(material, Math.max(1, Math.min(mostPlies, Math.ceil((layers - 1) / (most - 1)))), highestCrown);
}
