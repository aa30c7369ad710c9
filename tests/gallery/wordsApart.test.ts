import { describe, expect, test } from "vitest";
import type { Plan } from "../../src/core/plan/plan";
import { figureScene } from "../../src/ui/drawing/figureScene";
import { figureViews } from "../../src/ui/drawing/figureView";
import { lengthWriter } from "../../src/text/lengthWriter";
import { layerPictures, pieceScene } from "../../src/ui/drawing/pieceScene";
import type { Scene } from "../../src/ui/drawing/scene";
import { levelNames, mapLevels, measurementNames } from "../../src/core/body/vocabulary";
import { measured } from "../../src/core/body/reading";
import { mm } from "../../src/core/units";
import { markScene } from "../../src/ui/drawing/torso/markScene";
import { formTorso } from "../../src/ui/drawing/torso/torsoShape";
import { shownLength } from "../../src/text/shownLength";
import { measureScene } from "../../src/ui/drawing/measuring/measureScene";
import { levelWords, pictureWords } from "../../src/text/pictures";
import { demoPlan, largestPlan } from "./demoPlan";
import { clashes, labelBox } from "./labelBoxes";

/** Words in a picture never touch each other or its edge, on the plan most people see first and on the one with the most to it. */
const plans: readonly (readonly [string, Plan])[] = [
  ["the demo", demoPlan],
  ["the largest fitting", largestPlan],
];
const lengths = lengthWriter("in");

test("words that touch are found, and words beyond the edge", () => {
  const scene = (x: number, y: number): Scene => ({
    title: "",
    description: "",
    frame: { x: 0, y: 0, width: 100, height: 100 },
    textSize: 10,
    marks: [],
    labels: [
      { role: "name", x: 30, y: 30, text: "waist", anchor: "start" },
      { role: "strong", x, y, text: "14", anchor: "middle" },
    ],
  });
  expect(clashes(scene(50, 50))).toEqual([]);
  expect(clashes(scene(50, 36))).toEqual(["waist and 14"]);
  expect(clashes(scene(50, 98))).toEqual(["14 and the edge"]);
});

describe.each(plans)("on the plan of %s", (_, { levels, pieces }) => {
  test("no number of a piece touches the name of a level, from any side", () => {
    expect(pieces.length).toBeGreaterThan(4);
    for (const view of figureViews) {
      const scenes = [undefined, ...pieces.map(({ order }) => order)].map((now) =>
        figureScene({ levels, pieces, view, lengths, ...(now === undefined ? {} : { now }) }),
      );
      for (const scene of scenes) expect(clashes(scene), `${view}, ${scene.title}`).toEqual([]);
      const numbers = scenes[0]?.labels.filter(({ text }) => /^\d+$/.test(text)) ?? [];
      expect(numbers.length).toBeGreaterThan(1);
    }
  });

  test("nor does it on paper, where the words are larger and the levels are named on one figure of two", () => {
    for (const view of figureViews)
      for (const isNamed of [true, false]) {
        const scene = figureScene({ levels, pieces, view, lengths, shownOn: "paper", isNamed });
        expect(clashes(scene), view).toEqual([]);
        expect(scene.labels.some(({ text }) => text === "underbust")).toBe(isNamed);
      }
  });

  test.each(["paper", "largePaper", "screen"] as const)("no words touch on the cut drawings, on %s", (shownOn) => {
    for (const unit of ["in", "cm"] as const)
      for (const piece of pieces)
        for (const picture of layerPictures(piece, "", lengthWriter(unit), shownOn))
          expect(clashes(pieceScene(picture)), piece.id).toEqual([]);
  });
});

test("the lines and their distances stand apart, whichever line is at hand and however close two lie", () => {
  let seen = 0;
  for (const [, { levels }] of plans)
    for (const gap of [32, 60])
      for (const now of levelNames)
        for (const textSize of [32, 42])
          for (const isNarrow of [false, true]) {
            const bust = levels.find(({ name }) => name === "bust")?.depthBelowNape.value ?? 0;
            const placed = levels.map((level) =>
              level.name === "underbust" ? { ...level, depthBelowNape: measured(mm(bust + gap)) } : level,
            );
            const scene = markScene({
              shape: formTorso(placed),
              now,
              marked: levelNames.filter((name) => name !== now),
              distances: mapLevels((name) =>
                shownLength(placed.find((level) => level.name === name)?.depthBelowNape.value ?? mm(0), "1/8 in"),
              ),
              words: {
                title: "",
                description: "",
                front: "front",
                leftSide: "left side",
                nape: "nape",
                levels: levelWords,
              },
              textSize,
              isNarrow,
            });
            seen += scene.labels.length;
            expect(clashes(scene), `${now} at hand, ${gap} mm`).toEqual([]);
          }
  expect(seen).toBeGreaterThan(800);
});

describe("on the measuring pictures", () => {
  const scenes = measurementNames.flatMap((name) =>
    (["body", "form"] as const).map((whose) => [`${name} of the ${whose}`, measureScene(name, whose)] as const),
  );
  const sides: readonly string[] = [pictureWords.front, pictureWords.back, pictureWords.left, pictureWords.right];

  test("no words touch", () => {
    for (const [name, scene] of scenes) expect(clashes(scene), name).toEqual([]);
  });

  test("the words for the sides lie clear of the head and of the rest of the figure", () => {
    let seen = 0;
    for (const [name, { marks, labels, textSize }] of scenes) {
      const figure = marks.filter(({ role }) => figureRoles.includes(role)).flatMap(({ path }) => points(path));
      for (const item of labels.filter(({ text }) => sides.includes(text))) {
        const { left, right, top, bottom } = labelBox(item, textSize);
        const within = figure.filter(([x, y]) => x > left && x < right && y > top && y < bottom);
        expect(within.length, `${item.text} on ${name}`).toBe(0);
        // Nor does it lie inside the outline, with the figure on both sides of it.
        const beside = figure.filter(([, y]) => y > top && y < bottom).map(([x]) => x);
        expect(beside.some((x) => x <= left) && beside.some((x) => x >= right), `${item.text} on ${name}`).toBe(false);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(scenes.length);
  });
});

const figureRoles: readonly string[] = ["skin", "skinLine", "garment", "stand", "form"];

/** Every place named in a path, with places between those that follow each other: a line is not missed between its ends. */
function points(path: string): readonly (readonly [number, number])[] {
  const ends = [...path.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
  return ends.flatMap(([x, y], i) => {
    const [fromX, fromY] = ends[i - 1] ?? [x, y];
    const isNear = Math.hypot(x - fromX, y - fromY) < 120;
    return isNear
      ? [0.25, 0.5, 0.75, 1].map((share) => [fromX + (x - fromX) * share, fromY + (y - fromY) * share] as const)
      : [[x, y] as const];
  });
}
