import { mm, ratio } from "../../src/core/units";
import type { Measurements } from "../../src/core/body/measurements";
import type { MeasurementName } from "../../src/core/body/vocabulary";
import type { Batting } from "../../src/core/material";
import { type Chance, chance } from "./peopleChance";

/**
 * Made-up people as they are measured above the bust, each with a form that is mostly smaller and sometimes larger: the same seed
 * gives the same person for ever. Means and deviations of the back, the apexes, the shoulders and the neck are those of
 * shared/body-data.json and the Spanish survey; the chest's are plausible only, no source.
 */
export interface PersonAbove {
  readonly seed: number;
  readonly body: Measurements;
  readonly form: Measurements;
  readonly batting: Batting;
}

export function personAbove(seed: number): PersonAbove {
  const luck = chance(7_000_000 + seed);
  const body = bodyAbove(luck);
  return {
    seed,
    body: rounded(body),
    form: rounded(formAbove(luck, body)),
    batting: {
      name: "batting",
      layerThickness: mm(Math.round(2 * luck.between(3, 12)) / 2),
      relativeDeviation: ratio(0.4),
    },
  };
}

export const peopleAbove = (count: number): readonly PersonAbove[] =>
  Array.from({ length: count }, (_, i) => personAbove(i + 1));

type Lengths = { readonly [name in MeasurementName]?: number };

function bodyAbove(luck: Chance): Required<Pick<Lengths, (typeof drawn)[number]>> {
  const waist = luck.normal(384.6, 20.2);
  const bust = Math.min(luck.normal(233.6, 22.1), waist - 70);
  const way = (down: number) => Math.hypot(down - 11.5, 150) + Math.abs(luck.normal(0, 6));
  const apexes = [way(bust + luck.normal(0, 4)), way(bust + luck.normal(0, 4))] as const;
  const girth = luck.between(760, 1150);
  const [drop, length] = [luck.normal(47, 9), luck.normal(135.4, 10.3)];
  return {
    bustGirth: girth + luck.between(20, 120),
    waistGirth: girth - luck.between(0, 150),
    fullHipGirth: girth + luck.between(0, 150),
    waistBelowNape: waist,
    napeToWaist: waist + Math.max(2, luck.normal(16, 7)),
    upperBackWidth: luck.normal(360, 22),
    bustBelowNape: bust,
    leftShoulderToApex: apexes[0],
    rightShoulderToApex: apexes[1],
    acrossChest: luck.normal(345, 20),
    upperChestGirth: girth,
    upperChestFrontArc: girth * luck.between(0.48, 0.54),
    upperChestBelowNape: bust - luck.between(38, 75),
    leftShoulderDrop: drop + luck.normal(0, 5.5),
    rightShoulderDrop: drop + luck.normal(0, 5.5),
    leftShoulderLength: length + luck.normal(0, 5),
    rightShoulderLength: length + luck.normal(0, 5),
    neckGirth: luck.normal(371.2, 19.7),
  };
}

const drawn = [
  "bustGirth",
  "waistGirth",
  "fullHipGirth",
  "waistBelowNape",
  "napeToWaist",
  "upperBackWidth",
  "bustBelowNape",
  "leftShoulderToApex",
  "rightShoulderToApex",
  "acrossChest",
  "upperChestGirth",
  "upperChestFrontArc",
  "upperChestBelowNape",
  "leftShoulderDrop",
  "rightShoulderDrop",
  "leftShoulderLength",
  "rightShoulderLength",
  "neckGirth",
] as const satisfies readonly MeasurementName[];

/** Smaller than the body by what padding is for, now and then larger. */
function formAbove(luck: Chance, body: ReturnType<typeof bodyAbove>): Lengths {
  const less = (most: number) => luck.between(-most / 4, most);
  const girth = body.upperChestGirth - less(120);
  const waist = body.waistBelowNape - less(20);
  const bust = body.bustBelowNape - less(16);
  const way = (length: number) => length - less(20);
  const lengths = [
    body.leftShoulderLength - luck.between(-15, 15),
    body.rightShoulderLength - luck.between(-15, 15),
  ] as const;
  // No form's shoulder falls off more steeply than 45 degrees.
  const drop = (own: number, i: 0 | 1) => Math.min(own + less(36), 0.7 * lengths[i]);
  return {
    bustGirth: body.bustGirth - less(120),
    waistGirth: body.waistGirth - less(160),
    fullHipGirth: body.fullHipGirth - less(120),
    waistBelowNape: waist,
    napeToWaist: waist + Math.max(1, body.napeToWaist - body.waistBelowNape - less(24)),
    upperBackWidth: body.upperBackWidth - less(60),
    bustBelowNape: bust,
    leftShoulderToApex: way(body.leftShoulderToApex),
    rightShoulderToApex: way(body.rightShoulderToApex),
    acrossChest: body.acrossChest - less(50),
    upperChestGirth: girth,
    upperChestFrontArc: girth * luck.between(0.49, 0.53),
    leftShoulderDrop: drop(body.leftShoulderDrop, 0),
    rightShoulderDrop: drop(body.rightShoulderDrop, 1),
    leftShoulderLength: lengths[0],
    rightShoulderLength: lengths[1],
    neckGirth: body.neckGirth - less(60),
  };
}

const rounded = (lengths: Lengths): Measurements =>
  Object.fromEntries(Object.entries(lengths).map(([name, length]) => [name, mm(Math.round(length))]));

/** The same figure seen in a mirror: what was read on the left is read on the right. */
export const mirroredReadings = (measurements: Measurements): Measurements =>
  Object.fromEntries(Object.entries(measurements).map(([name, length]) => [otherSide(name), length]));

export const otherSide = (name: string): string =>
  name.includes("left") || name.includes("Left")
    ? name.replace("left", "right").replace("Left", "Right")
    : name.replace("right", "left").replace("Right", "Left");
