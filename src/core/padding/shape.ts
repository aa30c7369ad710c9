import type { QuarterReadings } from "../body/levelReadings";
import { sectionOutline } from "../geometry/outline";
import { type Steering, steer } from "../numerics/steer";
import { shapingPrecision } from "../tolerances";
import { mm } from "../units";
import { type Cup, cupPads } from "./cup";
import { type Hill, hillPads, type Slab } from "./hill";
import type { Pad } from "./pad";
import { type FirstLayer, paddedTape } from "./paddedTape";
import { addPad, stackThickness, type Station } from "./stack";
import { levelCurve, type Surface } from "./surface";

/**
 * Shapes the padding so that the simulated tape reads its targets: every quarter of every level has a crown of its own
 * (at the bust in front it is the cup's), crowns are joined smoothly over the height, hills are cut into slabs, and the
 * loop is closed with the tape. First the crowns are steered, then the widths are trimmed.
 */
export interface ShapeProblem {
  readonly surface: Surface;
  /** The five levels, bust first, at the body's drops. */
  readonly stations: readonly Station[];
  readonly targets: readonly QuarterReadings[];
  /** What no knob turns: pinned pieces, and the rounds and ridges that come under everything. */
  readonly beneath: readonly Pad[];
  /** What the tape was found to read beyond the simulation of what is pinned, by level. */
  readonly offsets: readonly QuarterReadings[];
  readonly firstLayer: FirstLayer;
  readonly cups: readonly [left: CupPlace, right: CupPlace];
  /** How much of the front hill at the underbust goes on up over the chest beneath the bra. */
  readonly chestShares: readonly [left: number, right: number];
}

/** What hills and cups are cut into. */
export interface Slabs {
  readonly front: readonly Slab[];
  readonly back: readonly Slab[];
  readonly cup: readonly Slab[];
}

export type CupPlace = Pick<Cup, "along" | "drop" | "radius">;

/** The padding of one problem cut into one set of slabs. */
export interface Shaping {
  /** How many pads there would be at these crowns. */
  readonly padCount: (crowns: Knobs) => number;
  /** Steers the crowns, from similar ones where there are any. */
  readonly crowned: (similar: Knobs | null) => Crowned;
}

/** A setting of the crowns that reads about right; trimming makes it read as well as it can. */
export interface Crowned {
  readonly crowns: Knobs;
  readonly padCount: number;
  readonly trimmed: () => Shape;
}

export interface Shape {
  readonly pads: readonly Pad[];
  readonly readings: readonly QuarterReadings[];
}

const quarterNames = ["leftFront", "rightFront", "leftBack", "rightBack"] as const;

/** Knobs are kept level by level, each level's quarters in the order of `quarterNames`. */
export type Knobs = readonly number[];

/** No hill is taken higher than this (mm): about the depth of a small form, past which nothing would stay put. */
export const highestCrown = 220;

/** Reads what lies beneath once, and shapes over it with any slabs. */
export function shaper(problem: ShapeProblem): (slabs: Slabs) => Shaping {
  const targets = problem.targets.flatMap(asList);
  const none = targets.map(() => 0);
  const read = tapeOver(problem, problem.stations);
  const roughRead = tapeOver(problem, roughly(problem));
  const bare = read([]);
  const roughBare = roughRead([]);
  const short = bare.map((reading, i) => reading - (roughBare[i] as number));
  return (slabs) => {
    const padsAt = (crowns: Knobs, trims: Knobs) => pads(problem, slabs, crowns, trims);
    const padCount = (crowns: Knobs) => padsAt(crowns, none).length;
    const trimmed = (crowns: Knobs): Shape => {
      const steering = trimSteering(targets, bare, read(padsAt(crowns, none)));
      const { knobs: trims, readings } = steer((knobs) => read(padsAt(crowns, knobs)), steering);
      return {
        pads: padsAt(crowns, trims),
        readings: problem.stations.map((_, level) => quartersAt(readings, level)),
      };
    };
    const crowned = (similar: Knobs | null): Crowned => {
      const tape = (knobs: Knobs) => roughRead(padsAt(knobs, none)).map((reading, i) => reading + (short[i] as number));
      const { knobs: crowns } = steer(tape, crownSteering(similar, targets, bare));
      return { crowns, padCount: padCount(crowns), trimmed: () => trimmed(crowns) };
    };
    return { padCount, crowned };
  };
}

function crownSteering(similar: Knobs | null, targets: Knobs, bare: Knobs): Steering {
  const gains = targets.map((target, i) => Math.max(0, target - (bare[i] as number)));
  return {
    start: similar ?? gains.map((gain, i) => (gain <= shapingPrecision ? 0 : firstCrown(i, gain))),
    targets,
    least: targets.map(() => 0),
    most: targets.map(() => highestCrown),
    slopes: targets.map((_, i) => (isCup(i) ? cupSlope : hillSlope)),
    longestStep: (crown) => Math.max(6, crown / 3),
    precision: shapingPrecision,
    rounds: 16,
  };
}

function trimSteering(targets: Knobs, bare: Knobs, crowned: Knobs): Steering {
  return {
    start: targets.map(() => 0),
    startReadings: crowned,
    targets,
    least: targets.map(() => -mostTrim),
    most: targets.map(() => mostTrim),
    slopes: targets.map((_, i) => Math.max(4, ((crowned[i] as number) - (bare[i] as number)) / 2)),
    longestStep: () => mostTrim / 3,
    precision: shapingPrecision,
    rounds: 10,
  };
}

/** Reads the tape in quarters, level by level, over what lies beneath and some pads. */
function tapeOver(problem: ShapeProblem, stations: readonly Station[]): (found: readonly Pad[]) => Knobs {
  const beneath = stations.map((station) => stackThickness(problem.beneath, station));
  return (found) => readLevels(problem, stations, beneath, found).flatMap(asList);
}

/**
 * The levels with half as many points, to steer crowns by: chords are then up to 0.4 mm short of the arc, and nearly as short with
 * padding as without, so that what the bare form reads short is added and what is left is for the trims, which feel every point.
 */
const roughly = ({ stations, surface }: ShapeProblem): readonly Station[] =>
  stations.map(({ drop }) => ({ drop, outline: sectionOutline(surface.sectionAt(drop), roughPoints) }));

/** Points in each eighth of the outline. */
const roughPoints = 12;

/** A side of a slab is trimmed by at most this share of its width. */
const mostTrim = 0.45;

/** A hill that falls as the cosine gains nearly its crown over a quarter, less in whole layers with feathered edges; only a first guess. */
const hillSlope = 0.75;

/** A cup on a flat front lifts the tape on both its sides; found over generated bodies, only a first guess. */
const cupSlope = 0.6;

const isCup = (knob: number): boolean => knob === 0 || knob === 1;

const firstCrown = (knob: number, gain: number): number => gain / (isCup(knob) ? cupSlope : hillSlope) + 2;

const asList = (quarters: QuarterReadings): readonly number[] => quarterNames.map((name) => quarters[name]);

function quartersAt(list: Knobs, level: number): QuarterReadings {
  const at = (quarter: number) => mm(list[4 * level + quarter] as number);
  return { leftFront: at(0), rightFront: at(1), leftBack: at(2), rightBack: at(3) };
}

/** What the tape reads in quarters at each level over a setting of the pads. */
function readLevels(
  { offsets, firstLayer }: ShapeProblem,
  stations: readonly Station[],
  beneath: readonly Float64Array[],
  found: readonly Pad[],
): readonly QuarterReadings[] {
  return stations.map((station, level) => {
    const thickness = Float64Array.from(beneath[level] as Float64Array);
    for (const pad of found) addPad(thickness, pad, station);
    const { leftFront, rightFront, leftBack, rightBack } = paddedTape(station, thickness, firstLayer);
    const offset = offsets[level] as QuarterReadings;
    return {
      leftFront: mm(leftFront + offset.leftFront),
      rightFront: mm(rightFront + offset.rightFront),
      leftBack: mm(leftBack + offset.leftBack),
      rightBack: mm(rightBack + offset.rightBack),
    };
  });
}

/** All pads for a setting of the knobs: cups, front and back, smallest slab first in each. */
function pads(problem: ShapeProblem, slabs: Slabs, crowns: Knobs, trims: Knobs): readonly Pad[] {
  const { surface, cups } = problem;
  const curve = (knobs: Knobs, quarter: number, ends: "zero" | "same") => knobCurve(problem, knobs, quarter, ends);
  const hill = (zone: "front" | "back", left: number, right: number): Hill => ({
    zone,
    left: { crown: curve(crowns, left, "zero"), trim: curve(trims, left, "same") },
    right: { crown: curve(crowns, right, "zero"), trim: curve(trims, right, "same") },
  });
  const cup = (side: 0 | 1): readonly Pad[] =>
    cupPads(
      {
        ...cups[side],
        zone: side === 0 ? "leftCup" : "rightCup",
        crown: Math.min(crowns[side] as number, tallestCup(cups[side])),
        trim: trims[side] as number,
      },
      slabs.cup,
    );
  return [
    ...cup(0),
    ...cup(1),
    ...hillPads(hill("front", 0, 1), surface, slabs.front),
    ...hillPads(hill("back", 2, 3), surface, slabs.back),
  ];
}

/**
 * A cup taller than this share of its radius would not stay in the bra; what the bust still wants in front then goes on the chest
 * beneath it.
 */
const tallestShare = 0.9;

const tallestCup = (cup: CupPlace): number => tallestShare * cup.radius;

/**
 * One quarter's knobs over the height. In front the bust's knob is the cup's crown; the hill there is what the ribcage
 * beneath the bust takes (a share of the underbust's) and what the cup cannot hold.
 */
function knobCurve(
  problem: ShapeProblem,
  knobs: Knobs,
  quarter: number,
  ends: "zero" | "same",
): (drop: number) => number {
  const values = problem.stations.map((_, level) => knobs[4 * level + quarter] as number);
  const bust = values[0] as number;
  if (quarter < 2 && ends === "zero") {
    const chest = problem.chestShares[quarter as 0 | 1] * (values[1] as number);
    values[0] = chest + Math.max(0, bust - tallestCup(problem.cups[quarter as 0 | 1]));
  }
  return levelCurve(
    problem.stations.map((station) => station.drop),
    values,
    ends,
  );
}
