import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import IsSimpleOp from "jsts/org/locationtech/jts/operation/IsSimpleOp.js";
import { describe, expect, test } from "vitest";
import type { AboveReading, BuildAbove, BuildKind } from "../../src/core/above/buildAbove";
import { buildKinds, isToDo } from "../../src/core/above/buildAbove";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import type { Measurements } from "../../src/core/body/measurements";
import { type PatternPart, partOutline } from "../../src/core/pattern/patternPart";
import { mirroredReadings, otherSide, peopleAbove, type PersonAbove } from "../tools/peopleAbove";

/**
 * The laws of what is built above the bust, over 200 made-up people. Each says how it was broken on purpose, in a copy of the core,
 * and seen to fail. `rebuilt` reckons what the tape reads from the cut layers alone, with a hull of jsts, not of ours.
 */
const everyone = peopleAbove(200);
const buildsOf = ({ body, form, batting }: PersonAbove): readonly BuildAbove[] => buildsAbove(body, form, batting);
const all = everyone.flatMap((person) => buildsOf(person).map((build) => ({ person, build })));
const layersOf = ({ act }: BuildAbove): readonly PatternPart[] => (act.what === "layers" ? act.layers : []);

describe("law A1: people and builds", () => {
  test("every kind is built for many and left alone for others", () => {
    for (const kind of buildKinds) {
      const some = all.filter(({ build }) => build.kind === kind);
      const toDo = some.filter(({ build }) => isToDo(build)).length;
      expect(toDo, kind).toBeGreaterThan(20);
      expect(some.length - toDo, kind).toBeGreaterThan(5);
    }
    expect(all.some(({ build }) => build.act.what === "markInward")).toBe(true);
    expect(all.some(({ build }) => build.act.what === "extend")).toBe(true);
  });
});

/** Broken on purpose: the right wedge cut like the left one; the left fill alone counted across the chest. Seen to fail. */
describe("law A2: a mirrored person", () => {
  test("gets mirrored builds", () => {
    for (const person of everyone) {
      const plain = buildsOf(person);
      const seen = buildsAbove(mirroredReadings(person.body), mirroredReadings(person.form), person.batting);
      for (const build of plain) {
        const twin = seen.find(({ id }) => id === otherSide(build.id)) as BuildAbove;
        expect(twin.act.what).toBe(build.act.what);
        expect(twin.readings).toHaveLength(build.readings.length);
        for (const [i, { name, before, after, person: wanted }] of build.readings.entries()) {
          const read = twin.readings[i] as AboveReading;
          expect([read.name, read.person]).toEqual([otherSide(name), wanted]);
          expect(read.before).toBeCloseTo(before, 6);
          expect(read.after).toBeCloseTo(after, 6);
        }
        expect(layersOf(twin)).toHaveLength(layersOf(build).length);
        for (const [i, part] of layersOf(build).entries())
          expect(apartInMirror(part, layersOf(twin)[i] as PatternPart), part.id).toBeLessThan(0.001);
      }
    }
  });
});

/** The farthest that a point of one outline lies from all points of the other seen in a mirror (mm). */
function apartInMirror(part: PatternPart, twin: PatternPart): number {
  const points = partOutline(twin);
  if (points.length !== partOutline(part).length) return Number.POSITIVE_INFINITY;
  return Math.max(
    ...partOutline(part).map(({ x, y }) => Math.min(...points.map((other) => Math.hypot(other.x + x, other.y - y)))),
  );
}

/**
 * Broken on purpose: a layer of the wedge lifts by its thickness alone; a neck wrap adds π·t; a tape follows the surface into
 * hollows. Seen to fail.
 */
describe("law A3: what the tape reads after a build", () => {
  test("is what the cut layers come to", () => {
    let met = 0;
    for (const { person, build } of all) {
      for (const reading of build.readings) {
        const again = rebuilt(person, build, reading);
        if (again === null) continue;
        expect(Math.abs(again - reading.after), `${person.seed} ${build.id} ${reading.name}`).toBeLessThan(0.6);
        met++;
      }
    }
    expect(met).toBeGreaterThan(1000);
  });

  /** Broken on purpose: `stays` of the shoulder counted the wrong way round; agreement within a whole layer. Seen to fail. */
  test("agrees with the body within half a layer and 10 mm, or says by how much it does not", () => {
    for (const { person, build } of all) {
      for (const reading of build.readings) {
        const miss = reading.person - reading.after;
        const words = `${person.seed} ${build.id} ${reading.name}`;
        if (reading.stays === null) {
          expect(Math.abs(miss), words).toBeLessThanOrEqual(
            Math.max(3, Math.min(10, mostOfHalfALayer(person, build))) + 0.01,
          );
          continue;
        }
        expect(reading.stays.amount, words).toBeCloseTo(Math.abs(miss), 6);
        const isShort = build.kind === "shoulderHeight" ? miss < 0 : miss > 0;
        expect(reading.stays.sense, words).toBe(isShort ? "short" : "formLarger");
      }
    }
  });
});

/** Half of the most that one layer can add to a reading (mm): a layer adds its thickness times the angle that it turns through. */
function mostOfHalfALayer({ batting, form }: PersonAbove, build: BuildAbove): number {
  const t = batting.layerThickness;
  switch (build.kind) {
    case "neck":
    case "upperChest":
      return Math.PI * t;
    case "shoulderHeight": {
      const side = build.side === "left" ? "left" : "right";
      const slope = Math.asin((form[`${side}ShoulderDrop`] ?? 0) / (form[`${side}ShoulderLength`] ?? 1));
      return t / Math.cos(slope) / 2;
    }
    case "shoulderLength":
      return 5;
    case "upperBack":
    case "chestFill":
      return 1.1 * t;
  }
}

/** What the tape reads over a build, from what is cut and the bare form alone; null for what other rooms check. */
function rebuilt({ form, batting }: PersonAbove, build: BuildAbove, reading: AboveReading): number | null {
  const t = batting.layerThickness;
  const layers = layersOf(build);
  const halves = (half: string) => layers.filter(({ id }) => id.includes(half)).length;
  switch (reading.name) {
    case "neckGirth":
      return (form.neckGirth ?? 0) + 2 * Math.PI * t * layers.length;
    case "upperChestGirth":
      return (form.upperChestGirth ?? 0) + Math.PI * t * layers.length;
    case "upperChestFrontArc":
      return (form.upperChestFrontArc ?? 0) + Math.PI * t * halves("-front-");
    case "upperChestBackArc":
      return (form.upperChestGirth ?? 0) - (form.upperChestFrontArc ?? 0) + Math.PI * t * halves("-back-");
    case "leftShoulderDrop":
    case "rightShoulderDrop": {
      const length = form[reading.name === "leftShoulderDrop" ? "leftShoulderLength" : "rightShoulderLength"] ?? 0;
      const drop = form[reading.name] ?? 0;
      return drop - (layers.length * t * length) / Math.sqrt(length ** 2 - drop ** 2);
    }
    case "napeToWaist":
      return backAgain(reading, build, t);
    default:
      return null;
  }
}

/** Down center back over the cut ovals, on the sine wave that reads what the bare back reads, by the hull of another library. */
function backAgain({ before }: AboveReading, build: BuildAbove, t: number): number | null {
  const layers = layersOf(build);
  const waist = waistOf.get(build);
  if (waist === undefined || layers.length === 0) return null;
  const ends = layers.map(({ lines }) => {
    const [lower, upper] = lines[0]?.points ?? [];
    return { up: upper?.y ?? 0, down: -(lower?.y ?? 0) };
  });
  const over = (bulge: number, isPadded: boolean) => {
    const way = Array.from({ length: 801 }, (_, i): readonly [number, number] => {
      const depth = (waist * i) / 800;
      const from = depth - 0.42 * waist;
      const padding = ends.reduce((sum, { up, down }) => {
        const reach = from < 0 ? up : down;
        return sum + t * Math.max(0, Math.min(1, (reach - Math.abs(from)) / 25));
      }, 0);
      return [depth, bulge * Math.sin((Math.PI * i) / 800) + (isPadded ? padding : 0)];
    });
    return hullWay(way);
  };
  let [low, high] = [0, 300];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (over(middle, false) < before) low = middle;
    else high = middle;
  }
  return over(low, true);
}
const waistOf = new Map(all.map(({ person, build }) => [build, person.body.waistBelowNape]));

/** The upper side of the hull of a way, without its chord. */
function hullWay(way: readonly (readonly [number, number])[]): number {
  const ring: readonly { readonly x: number; readonly y: number }[] = new ConvexHull(
    way.map(([x, y]) => new Coordinate(x, y)),
    new GeometryFactory(),
  )
    .getConvexHull()
    .getCoordinates();
  const round = ring.slice(1).reduce((sum, { x, y }, i) => {
    const from = ring[i] as { readonly x: number; readonly y: number };
    return sum + Math.hypot(x - from.x, y - from.y);
  }, 0);
  const [first, last] = [way[0] as readonly [number, number], way.at(-1) as readonly [number, number]];
  const chord = Math.hypot(last[0] - first[0], last[1] - first[1]);
  return ring.length === 2 || round === 0 ? chord : round - chord;
}

/** Broken on purpose: each layer thinner the more there are; a panel that takes away; fewer layers for a larger need. Seen to fail. */
describe("law A4: a layer more", () => {
  test("never lowers what the tape reads, nor lifts the slope of a shoulder", () => {
    for (const { build } of all) {
      for (const { name, before, after } of build.readings) {
        if (build.kind === "shoulderLength") continue;
        if (name.endsWith("ShoulderDrop")) expect(after).toBeLessThanOrEqual(before);
        else expect(after).toBeGreaterThanOrEqual(before - 0.001);
      }
    }
    for (const person of everyone.slice(0, 40)) {
      let before: readonly BuildAbove[] = [];
      for (const more of [0, 4, 8, 16, 30, 60]) {
        const builds = buildsAbove(larger(person.body, more), person.form, person.batting);
        for (const [i, build] of builds.entries()) {
          const less = before[i];
          // Both sides of a fill share what the tape across the chest allows, so one may take from the other.
          if (less === undefined || build.kind === "shoulderLength" || build.kind === "chestFill") continue;
          expect(layersOf(build).length, build.id).toBeGreaterThanOrEqual(layersOf(less).length);
          for (const [k, reading] of build.readings.entries()) {
            const was = less.readings[k] as AboveReading;
            if (reading.name.endsWith("ShoulderDrop")) expect(reading.after).toBeLessThanOrEqual(was.after + 0.001);
            else expect(reading.after, `${build.id} ${reading.name}`).toBeGreaterThanOrEqual(was.after - 0.001);
          }
        }
        before = builds;
      }
    }
  });
});

/** The same body with more of everything that layers are for; lines and slopes stay, slopes the other way. */
const larger = (body: Measurements, more: number): Measurements => {
  const grown = [
    "napeToWaist",
    "upperBackWidth",
    "leftShoulderToApex",
    "rightShoulderToApex",
    "acrossChest",
    "neckGirth",
  ];
  return Object.fromEntries(
    Object.entries(body).map(([name, length]) => {
      if (grown.includes(name)) return [name, length + more];
      if (name === "upperChestGirth") return [name, length + 2 * more];
      if (name === "upperChestFrontArc") return [name, length + more];
      if (name.endsWith("ShoulderDrop")) return [name, Math.max(1, length - more / 2)];
      return [name, length];
    }),
  ) as Measurements;
};

/** Broken on purpose: a missing shoulder length taken from the other side; a missing across chest passed over. Seen to fail. */
describe("law A5: unread means unbuilt", () => {
  const needs: { readonly [kind in BuildKind]: readonly string[] } = {
    upperBack: ["napeToWaist", "waistBelowNape", "upperBackWidth"],
    upperChest: ["upperChestGirth", "upperChestFrontArc"],
    chestFill: ["leftShoulderToApex", "bustBelowNape", "acrossChest"],
    shoulderHeight: ["leftShoulderDrop"],
    shoulderLength: ["leftShoulderLength"],
    neck: ["neckGirth"],
  };
  test("every reading of either is missed by its own build and by its name", () => {
    for (const person of everyone.slice(0, 30)) {
      for (const kind of buildKinds) {
        for (const name of needs[kind]) {
          for (const whose of ["body", "form"] as const) {
            const { [name as keyof Measurements]: _gone, ...rest } = person[whose];
            const found = buildsOf({ ...person, [whose]: rest }).find(
              (build) => build.kind === kind && build.side !== "right",
            ) as BuildAbove;
            expect(found.act.what, `${whose} ${name}`).toBe("unread");
            expect(found.readings).toEqual([]);
            const missing = found.act.what === "unread" ? found.act.missing : [];
            expect(missing).toEqual([{ whose, name: name.replace("leftShoulderToApex", "shoulderToApex") }]);
          }
        }
      }
    }
  });

  test("with nothing read above the bust nothing is built and nothing begun", () => {
    const bare = buildsAbove({}, {}, { layerThickness: everyone[0]?.batting.layerThickness ?? (6 as never) });
    expect(bare).toHaveLength(9);
    for (const { act } of bare) expect(act).toMatchObject({ what: "unread", isBegun: false });
  });
});

/** Broken on purpose: the half that is short padded although the girth is there already. Seen to fail. */
describe("law A6: where the form is larger", () => {
  test("nothing is built, and no build takes a reading over by more than half a layer", () => {
    let larger = 0;
    for (const { person, build } of all) {
      if (build.kind === "shoulderLength") continue;
      for (const { name, before, after, person: wanted } of build.readings) {
        const over = (length: number) => (name.endsWith("ShoulderDrop") ? wanted - length : length - wanted);
        const isWhole = build.kind !== "upperChest" || name === "upperChestGirth";
        if (isWhole && over(before) > 0) {
          expect(layersOf(build), `${person.seed} ${build.id}`).toEqual([]);
          larger++;
        }
        if (after !== before)
          expect(over(after), `${person.seed} ${build.id} ${name}`).toBeLessThanOrEqual(
            Math.min(10, mostOfHalfALayer(person, build)) + 0.001,
          );
      }
    }
    expect(larger).toBeGreaterThan(200);
  });
});

/** Broken on purpose: the neck end of a wedge crossed over; an edge begun elsewhere; the largest layer first. Seen to fail. */
describe("law A7: what is cut", () => {
  test("no outline crosses itself, each runs counterclockwise, edges meet, and the smallest layer comes first", () => {
    let parts = 0;
    for (const { build } of all) {
      if (build.act.what === "layers") expect(layersOf(build).length, build.id).toBeGreaterThan(0);
      const stackOf = ({ id }: PatternPart) => id.replace(/-layer-\d+$/, "");
      for (const stack of new Set(layersOf(build).map(stackOf))) {
        const layers = layersOf(build).filter((part) => stackOf(part) === stack);
        const areas = layers.map((part) => {
          parts++;
          expectWhole(part);
          return areaOf(partOutline(part));
        });
        for (const [i, area] of areas.entries()) expect(area).toBeGreaterThan(areas[i - 1] ?? 0);
      }
    }
    expect(parts).toBeGreaterThan(1000);
  });

  /** Broken on purpose: the panel 20 mm longer below its line. Seen to fail. */
  test("upper chest panels end above the bust line and run full over their own", () => {
    for (const { person, build } of all) {
      if (build.kind !== "upperChest") continue;
      const gap = (person.body.bustBelowNape ?? 0) - (person.body.upperChestBelowNape ?? 0);
      for (const part of layersOf(build)) {
        const ys = partOutline(part).map(({ y }) => y);
        expect(-Math.min(...ys)).toBeLessThanOrEqual(gap - 12 + 0.001);
        expect(Math.min(-Math.min(...ys), Math.max(...ys))).toBeGreaterThanOrEqual(22 - 0.001);
      }
    }
  });
});

function expectWhole(part: PatternPart) {
  const outline = partOutline(part);
  const ring = [...outline, outline[0] as (typeof outline)[number]];
  const line = new GeometryFactory().createLineString(ring.map(({ x, y }) => new Coordinate(x, y)));
  expect(new IsSimpleOp(line).isSimple(), part.id).toBe(true);
  expect(areaOf(outline), part.id).toBeGreaterThan(100);
  for (const [i, { points }] of part.edges.entries()) {
    const next = part.edges[(i + 1) % part.edges.length]?.points[0];
    expect(points.at(-1), part.id).toEqual(next);
  }
}

const areaOf = (points: readonly { readonly x: number; readonly y: number }[]): number =>
  points.reduce((sum, { x, y }, i) => {
    const next = points[(i + 1) % points.length] as { readonly x: number; readonly y: number };
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);
