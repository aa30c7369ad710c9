import ConvexHull from "jsts/org/locationtech/jts/algorithm/ConvexHull.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import { describe, expect, test } from "vitest";
import type { Piece, PieceZone } from "../../src/core/padding/piece";
import type { Plan, PlannedLevel } from "../../src/core/plan/plan";
import { mm } from "../../src/core/units";
import { contourRings, insetRings } from "../../src/ui/drawing/featherMarks";
import { figureScene } from "../../src/ui/drawing/figureScene";
import { figureViews } from "../../src/ui/drawing/figureView";
import { layerPictures, pieceScene } from "../../src/ui/drawing/pieceScene";
import { at, type PicturePoint, type Scene } from "../../src/ui/drawing/scene";
import { measuringPages } from "../../src/text/measuringPages";
import { measureScene } from "../../src/ui/drawing/measuring/measureScene";
import { reachOf } from "../../src/core/geometry/support";
import { measurementNames } from "../../src/core/body/vocabulary";
import { layeredSection } from "../../src/ui/drawing/layeredSection";
import { inchMm, lengthWriter } from "../../src/text/lengthWriter";
import { bodyHalves, sectionScene } from "../../src/ui/drawing/sectionScene";
import { spreadOut } from "../../src/ui/drawing/callouts";
import { type StandInStage, standInScene, standInStages } from "../../src/ui/drawing/standInScene";
import { tapeScale, tapeScene } from "../../src/ui/drawing/tapeScene";
import { lineLength } from "./lineLength";
import { plannedExample } from "./plannedExample";
import { largestPlan } from "./demoPlan";
import { examplePlan } from "./examplePlan";

const lengths = lengthWriter("cm");
const closed = (points: readonly PicturePoint[]): number => lineLength([...points, ...points.slice(0, 1)]);

function tautLength(points: readonly PicturePoint[]): number {
  return new ConvexHull(
    points.map(({ x, y }) => new Coordinate(x, y)),
    new GeometryFactory(),
  )
    .getConvexHull()
    .getLength();
}

const plans: readonly (readonly [string, Plan])[] = [
  ["made by hand", examplePlan],
  ["made by the planner", plannedExample],
];

describe.each(plans)("the section pictures of a plan %s", (_, plan) => {
  test("show at every level the lengths that were read", () => {
    expect(plan.levels.length).toBe(5);
    for (const level of plan.levels) {
      const { front, back } = bodyHalves(level);
      expect(Math.abs(lineLength(front) - level.body.frontArc.value), `${level.name} body front`).toBeLessThan(1);
      expect(Math.abs(lineLength(back) - level.body.backArc.value), `${level.name} body back`).toBeLessThan(1);
      const bare = layeredSection(level.formSection, level.depthBelowNape.value, []);
      expect(Math.abs(closed(bare.form) - level.form.girth.value), `${level.name} form`).toBeLessThan(1);
    }
  });

  test("show an outer surface round which a taut tape reads what was predicted", () => {
    let padded = 0;
    for (const level of plan.levels) {
      const { surface, layers } = layeredSection(level.formSection, level.depthBelowNape.value, plan.pieces);
      padded += layers.length;
      expect(Math.abs(tautLength(surface) - level.predicted.girth), level.name).toBeLessThan(1);
    }
    expect(padded).toBeGreaterThan(5);
  });
});

const mirrorZone: { readonly [zone in PieceZone]: PieceZone } = {
  around: "around",
  front: "front",
  back: "back",
  leftFront: "rightFront",
  rightFront: "leftFront",
  leftBack: "rightBack",
  rightBack: "leftBack",
  leftSide: "rightSide",
  rightSide: "leftSide",
  leftCup: "rightCup",
  rightCup: "leftCup",
};
const mirroredPiece = (piece: Piece): Piece => ({
  ...piece,
  zone: mirrorZone[piece.zone],
  anchor: piece.anchor === "leftSide" ? "rightSide" : piece.anchor,
  layers: piece.layers.map((layer) => ({
    ...layer,
    rows: layer.rows.map(({ start, end, ...row }) => ({ ...row, start: mm(-end), end: mm(-start) })),
  })),
});

const numbersOf = (path: string): readonly number[] => (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
const spanOf = (
  scene: { readonly marks: readonly { readonly role: string; readonly path: string }[] },
  role: string,
): readonly [number, number] => {
  const xs = scene.marks
    .filter((item) => item.role === role)
    .flatMap(({ path }) => numbersOf(path).filter((__, i) => i % 2 === 0));
  return [Math.min(...xs), Math.max(...xs)];
};

describe("pictures of a mirrored plan", () => {
  test("are mirrored: a piece on the left side lies as far to the other side of the page", () => {
    const now = examplePlan.pieces.findIndex(({ zone }) => zone === "leftSide") + 1;
    const draw = (pieces: readonly Piece[]) =>
      figureScene({ levels: examplePlan.levels, pieces, view: "front", now, lengths });
    const [least, most] = spanOf(draw(examplePlan.pieces), "pieceNow");
    const [mirroredLeast, mirroredMost] = spanOf(draw(examplePlan.pieces.map(mirroredPiece)), "pieceNow");
    expect(least).toBeGreaterThan(0);
    expect(mirroredLeast).toBeCloseTo(-most, 0);
    expect(mirroredMost).toBeCloseTo(-least, 0);
  });

  test("a front piece shows from the front and not from behind, a back piece the other way", () => {
    const shows = (zone: PieceZone, view: "front" | "back"): boolean => {
      const now = examplePlan.pieces.findIndex((piece) => piece.zone === zone) + 1;
      const scene = figureScene({ levels: examplePlan.levels, pieces: examplePlan.pieces, view, now, lengths });
      return scene.marks.some(({ role, path }) => role === "pieceNow" && path !== "");
    };
    expect([shows("front", "front"), shows("front", "back"), shows("back", "front"), shows("back", "back")]).toEqual([
      true,
      false,
      false,
      true,
    ]);
    expect([shows("around", "front"), shows("around", "back")]).toEqual([true, true]);
  });
});

describe("what the work comes to, on Home", () => {
  const { levels, pieces } = plannedExample;
  const spans = (stage: StandInStage, role: string) => {
    const scene = standInScene(levels, pieces, stage);
    return (scene.marks.find((item) => item.role === role)?.path ?? "")
      .split("Z")
      .filter((ring) => ring !== "")
      .map((ring) => ring.match(/[ML](-?[\d.]+)/g)?.map((point) => Number(point.slice(1))) ?? [])
      .map((across) => Math.max(...across) - Math.min(...across));
  };

  test("the tape lies round bust, waist and full hip, as broad as the body there", () => {
    const broad = (["bust", "waist", "fullHip"] as const).map((name) => {
      const section = levels.find((level) => level.name === name)?.bodySection;
      if (section === undefined) throw new Error(name);
      const { left, right } = reachOf(section);
      return left + right;
    });
    const tapes = spans("covered", "tape");
    expect(tapes.length).toBe(3);
    // The figure has a ring every ten millimetres, and its edges slope by less than one in two.
    tapes.forEach((tape, i) => {
      expect(Math.abs(tape - (broad[i] ?? 0))).toBeLessThan(5);
    });
  });

  test("the last but one piece in front is at hand; on the bare form there is none", () => {
    expect(spans("padding", "pieceNow").length).toBe(1);
    expect(spans("form", "pieceNow").length).toBe(0);
  });

  test("all three stand in one frame, so that they can be compared", () => {
    const frames = standInStages.map((stage) => standInScene(levels, pieces, stage).frame);
    expect(new Set(frames.map((frame) => JSON.stringify(frame))).size).toBe(1);
  });
});

describe("estimates stay dashed", () => {
  const roles = (level: PlannedLevel): readonly string[] =>
    sectionScene({ level, pieces: [], lengths })
      .marks.filter(({ path, role }) => path !== "" && role.startsWith("body"))
      .map(({ role }) => role);
  test.each(examplePlan.levels.map((level) => [level.name, level] as const))("%s", (_, level) => {
    expect(roles(level)).toEqual(
      [level.body.frontArc.kind, level.body.backArc.kind].map((kind) => (kind === "measured" ? "body" : "bodyGuess")),
    );
  });
});

/**
 * The narrowest and lowest place each picture has on a tablet of 1180 by 820 and a phone of 390 pixels, as the style sheet
 * lays them out; the smallest words are nine tenths of a picture's text.
 */
describe("words in pictures are at least twelve pixels high where they have least room", () => {
  const smallest = ({ frame, textSize }: Scene, width: number, height: number): number =>
    0.9 * textSize * Math.min(width / frame.width, height / frame.height);
  const { levels, pieces } = plannedExample;

  test("on the figures, those of the plan and those beside the next action", () => {
    for (const view of figureViews)
      for (const [width, height] of [
        [280, 544],
        [358, 352],
        [290, 336],
      ] as const)
        expect(smallest(figureScene({ levels, pieces, view, lengths }), width, height), view).toBeGreaterThan(11.99);
  });

  test("on the tape beside its field", () => {
    const scene = tapeScene({ name: "", wanted: 800, now: 780, isEstimated: false, span: 100, words: "", lengths });
    expect((scene.textSize * 260) / scene.frame.width).toBeGreaterThanOrEqual(12);
  });

  test("on the sections", () => {
    for (const level of levels)
      expect(smallest(sectionScene({ level, pieces, lengths }), 350, 1000), level.name).toBeGreaterThanOrEqual(12);
  });

  test("on the pieces, on a screen; paper is nearer", () => {
    const scenes = (piece: Piece, shownOn: "screen" | "paper") =>
      layerPictures(piece, "", lengths, shownOn).map(pieceScene);
    // Every word is whole, and a picture is as high as its widths need.
    for (const piece of [...pieces, ...largestPlan.pieces])
      for (const scene of scenes(piece, "screen"))
        expect(smallest(scene, 290, 1000) / 0.9, piece.id).toBeGreaterThanOrEqual(12);
    expect(pieces.some((piece) => scenes(piece, "paper").some((scene) => smallest(scene, 290, 1000) / 0.9 < 12))).toBe(
      true,
    );
    for (const piece of pieces)
      for (const scene of scenes(piece, "screen"))
        expect(scene.labels.filter(({ role }) => role === "quiet")).toEqual([]);
  });

  test("on the measuring figures; the words of landmarks are whole", () => {
    for (const name of measurementNames)
      for (const whose of ["body", "form"] as const)
        expect(smallest(measureScene(name, whose), 200, 272) / 0.9, name).toBeGreaterThanOrEqual(12);
  });
});

/** The places on paper as the style sheet lays them out, in millimetres; the narrower of the two papers is A4. */
describe("words in pictures are at least eight points high on paper", () => {
  const eightPoints = (8 * inchMm) / 72;
  const both = [plannedExample, largestPlan];

  test("on the figures of the padding sheet", () => {
    for (const { levels, pieces } of both)
      for (const view of figureViews) {
        const { frame, textSize } = figureScene({ levels, pieces, view, lengths, shownOn: "paper" });
        expect((0.9 * textSize * 50) / frame.height, view).toBeGreaterThanOrEqual(eightPoints);
        // Two of them leave half the page to the words beside them.
        expect((frame.width * 50) / frame.height).toBeLessThan(60);
      }
  });

  test("on the small cut drawings and the large ones", () => {
    for (const piece of both.flatMap(({ pieces }) => pieces))
      for (const [shownOn, width] of [
        ["paper", 88],
        ["largePaper", 120],
      ] as const) {
        for (const picture of layerPictures(piece, "", lengths, shownOn)) {
          const { frame, textSize, labels } = pieceScene(picture);
          expect((textSize * width) / frame.width, piece.id).toBeGreaterThanOrEqual(eightPoints);
          expect(labels.every(({ role }) => role === "number" || role === "name")).toBe(true);
        }
      }
  });

  test("on the large measuring pictures; on the small ones words stand beside them", () => {
    const large = measuringPages
      .flatMap(({ parts }) => parts.flatMap(({ cards }) => cards))
      .filter(({ size }) => size === "large");
    expect(large.length).toBeGreaterThan(5);
    for (const { name } of large) {
      const { frame, textSize } = measureScene(name, "body");
      expect(textSize * Math.min(42 / frame.width, 63.5 / frame.height), name).toBeGreaterThanOrEqual(eightPoints);
    }
  });
});

describe("the drawn tape", () => {
  const scene = (now: number | null) =>
    tapeScene({ name: "waist", wanted: 800, now, isEstimated: false, span: 100, words: "", lengths });
  const path = (now: number | null, role: string): string =>
    scene(now).marks.find((item) => item.role === role)?.path ?? "";
  test("shows a gap below the wanted reading, an overlap above it and neither at it", () => {
    expect([path(780, "hatch") !== "", path(780, "over") !== ""]).toEqual([true, false]);
    expect([path(815, "hatch") !== "", path(815, "over") !== ""]).toEqual([false, true]);
    expect([path(800, "hatch") !== "", path(800, "over") !== ""]).toEqual([false, false]);
    expect(path(null, "layer")).toBe("");
  });

  test("carries whole numbers of its own unit, never crowded", () => {
    for (const span of [70, 100, 200, 400]) {
      for (const unit of ["cm", "in"] as const) {
        const step = unit === "in" ? inchMm / 8 : 1;
        const major = tapeScale(610, 610 + span, lengthWriter(unit)).filter(({ isMajor }) => isMajor);
        expect(major.length).toBeGreaterThan(1);
        expect(major.length).toBeLessThanOrEqual(10);
        for (const { reading } of major)
          expect(Math.abs(reading / step - Math.round(reading / step))).toBeLessThan(0.001);
      }
    }
  });
});

describe("lines of equal depth", () => {
  const cone = Array.from({ length: 41 }, (_, row) =>
    Float64Array.from({ length: 41 }, (__, column) => 20 - Math.hypot(column - 20, row - 20)),
  );
  test("round a cone are circles", () => {
    const rings = contourRings(cone, 10);
    expect(rings.length).toBe(1);
    for (const { x, y } of rings[0] ?? []) expect(Math.abs(Math.hypot(x - 20, y - 20) - 10)).toBeLessThan(0.15);
  });

  test("small cases: nothing high, all high, one high corner, two hills", () => {
    expect(contourRings([], 1)).toEqual([]);
    expect(contourRings([Float64Array.of(0, 0), Float64Array.of(0, 0)], 1)).toEqual([]);
    expect(contourRings([Float64Array.of(2, 2), Float64Array.of(2, 2)], 1).length).toBe(1);
    expect(contourRings([Float64Array.of(2, 0), Float64Array.of(0, 0)], 1)[0]).toContainEqual(at(0.5, 0));
    expect(contourRings([Float64Array.of(2, 0, 0, 2), Float64Array.of(2, 0, 0, 2)], 1).length).toBe(2);
  });

  test("inside a square are squares, and none where it is too narrow", () => {
    const square = [at(0, 0), at(100, 0), at(100, 100), at(0, 100)];
    const [ring] = insetRings(square, 20);
    expect(Math.min(...(ring ?? []).map(({ x }) => x))).toBeCloseTo(20, 0);
    expect(Math.max(...(ring ?? []).map(({ y }) => y))).toBeCloseTo(80, 0);
    expect(insetRings(square, 60)).toEqual([]);
    expect(insetRings([at(5, 5)], 1)).toEqual([]);
  });
});

describe("words beside a figure", () => {
  test("keep their order and their distance", () => {
    const places = spreadOut([10, 11, 12, 90], 8, 0, 100);
    for (const [i, place] of places.slice(1).entries()) expect(place - (places[i] ?? 0)).toBeGreaterThanOrEqual(8);
    expect(spreadOut([], 8, 0, 100)).toEqual([]);
    expect(spreadOut([98, 99], 8, 0, 100)).toEqual([92, 100]);
  });
});

describe("a plan without any piece", () => {
  const { levels } = examplePlan;
  const scenes = [
    ...levels.map((level) => sectionScene({ level, pieces: [], lengths })),
    ...figureViews.flatMap((view) => [
      figureScene({ levels, pieces: [], view, lengths }),
      figureScene({ levels, pieces: [], view, now: 1, lengths }),
    ]),
  ];
  test("still has its pictures, with form and body and no batting", () => {
    expect(scenes.length).toBe(11);
    for (const { marks, description, frame } of scenes) {
      const drawn = marks.filter(({ path }) => path !== "").map(({ role }) => role);
      expect(drawn).toContain("form");
      expect(drawn.filter((role) => /^(layerNow|pieceNow|piece|hatchNow|shade\d)$/.test(role))).toEqual([]);
      expect(marks.map(({ path }) => path).join("")).not.toMatch(/NaN|Infinity/);
      expect(frame.width * frame.height).toBeGreaterThan(0);
      expect(description).toMatch(/no piece|no batting/i);
    }
  });
});
