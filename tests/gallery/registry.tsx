import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { levelNames, measurementNames } from "../../src/core/body/vocabulary";
import { softArm, usualArm } from "../../src/core/arm/softArm";
import { untriedKnit, usualStretch } from "../../src/core/cover/cloth";
import { mm } from "../../src/core/units";
import { ArmHangsPicture, ArmPatternPicture } from "../../src/ui/drawing/arm/ArmPicture";
import { Drawing } from "../../src/ui/drawing/Drawing";
import { figureScene } from "../../src/ui/drawing/figureScene";
import { figureViews } from "../../src/ui/drawing/figureView";
import { lengthWriter } from "../../src/text/lengthWriter";
import { layerPictures, pieceScene, testSquareScene } from "../../src/ui/drawing/pieceScene";
import { pieceName } from "../../src/text/plan";
import type { Scene } from "../../src/ui/drawing/scene";
import { sectionScene } from "../../src/ui/drawing/sectionScene";
import { standInScene, standInStages } from "../../src/ui/drawing/standInScene";
import { tapeScene } from "../../src/ui/drawing/tapeScene";
import { ThicknessPlot } from "../../src/ui/pages/padding/ThicknessPart";
import { MeasureFigure } from "../../src/ui/kit/measure/MeasureGuide";
import { lineParts } from "../../src/core/form/linePart";
import { coverScene } from "../../src/ui/drawing/torso/coverScene";
import { MarkPicture } from "../../src/ui/drawing/torso/MarkPicture";
import { formTorso } from "../../src/ui/drawing/torso/torsoShape";
import { readLineScene } from "../../src/ui/drawing/torso/readLineScene";
import { linesWords } from "../../src/text/linesAtForm";
import { lineWords } from "../../src/text/pictures";
import { examplePlan } from "./examplePlan";
import { plannedExample } from "./plannedExample";

/**
 * Every picture the tool draws, by name: the same functions make the snapshots, the page to browse while developing and
 * the drawings of the docs.
 */
export interface Picture {
  readonly name: string;
  readonly room: string;
  /** A steady picture is drawn from data that stands still and is compared with how it was; the planner's own moves with it. */
  readonly kind: "steady" | "moving";
  readonly markup: () => string;
}

const inInches = lengthWriter("in");
const inCentimetres = lengthWriter("cm");

function remembered(make: () => string): () => string {
  let made: string | null = null;
  return () => {
    made ??= make();
    return made;
  };
}

const picture = (room: string, name: string, element: () => ReactElement): Picture => ({
  name: `${room}/${name}`,
  room,
  kind: "steady",
  markup: remembered(() => renderToStaticMarkup(element())),
});

const scenePicture = (room: string, name: string, scene: () => Scene): Picture =>
  picture(room, name, () => <Drawing scene={scene()} />);

const sections = examplePlan.levels.map((level) => {
  const shift = examplePlan.seamShifts.find((item) => item.level === level.name);
  return scenePicture("section", level.name, () =>
    sectionScene({ level, pieces: examplePlan.pieces, lengths: inCentimetres, ...(shift ? { seamShift: shift } : {}) }),
  );
});

const waist = examplePlan.levels[levelNames.indexOf("waist")];
const workingSections =
  waist === undefined
    ? []
    : [0, 7, 10].map((pinned) =>
        scenePicture("section", `waist-after-${String(pinned)}`, () =>
          sectionScene({ level: waist, pieces: examplePlan.pieces, pinned, lengths: inInches }),
        ),
      );

const figures = figureViews.flatMap((view) =>
  [undefined, 4, 8, 10].map((now) =>
    scenePicture("figure", `${view}${now === undefined ? "" : `-piece-${String(now)}`}`, () =>
      figureScene({
        levels: examplePlan.levels,
        pieces: examplePlan.pieces,
        view,
        lengths: inCentimetres,
        ...(now === undefined ? {} : { now }),
      }),
    ),
  ),
);

const standIns = standInStages.map((stage) =>
  scenePicture("stand-in", stage, () => standInScene(examplePlan.levels, examplePlan.pieces, stage)),
);

const cuts = [0, 2, 3, 4, 7].flatMap((i) => {
  const piece = examplePlan.pieces[i];
  if (piece === undefined) return [];
  const [picture] = layerPictures(piece, pieceName(piece), i % 2 === 0 ? inInches : inCentimetres, "paper").slice(-1);
  return picture === undefined ? [] : [scenePicture("piece", piece.id, () => pieceScene(picture))];
});
const testSquare = picture("piece", "test-square", () => <Drawing scene={testSquareScene(inInches)} size="true" />);

const measuring = (["body", "form"] as const).flatMap((whose) =>
  measurementNames.map((name) => picture(`measure-${whose}`, name, () => <MeasureFigure name={name} whose={whose} />)),
);

const tape = { name: "waist", wanted: 876, span: 295, isEstimated: false };
const tapes = [
  scenePicture("tape", "to-go-inches", () =>
    tapeScene({ ...tape, now: 810, words: "2 5/8 in to go", lengths: inInches }),
  ),
  scenePicture("tape", "over-centimetres", () =>
    tapeScene({ ...tape, now: 890, isEstimated: true, words: "1.5 cm over", lengths: inCentimetres }),
  ),
  scenePicture("tape", "not-read", () =>
    tapeScene({ ...tape, now: null, words: "not measured yet", lengths: inCentimetres }),
  ),
];
const thicknesses = [
  picture("thickness", "three-readings", () => (
    <ThicknessPlot
      before={{ middle: 6, low: 3.2, high: 10.5 }}
      now={{ middle: 4.7, low: 4.1, high: 5.3 }}
      readings={[
        { name: "trial", middle: 4.4, low: 3, high: 5.8 },
        { name: "waist", middle: 5.2, low: 4, high: 6.4 },
        { name: "high hip", middle: 4.6, low: 3.8, high: 5.4 },
      ]}
      lengths={inCentimetres}
    />
  )),
  picture("thickness", "nothing-read", () => (
    <ThicknessPlot
      before={{ middle: 6, low: 3.2, high: 10.5 }}
      now={{ middle: 6, low: 3.2, high: 10.5 }}
      readings={[]}
      lengths={inInches}
    />
  )),
];

/** The work on the bare form: the two lines above the waist are marked, the waist is at hand. */
const linesOfExample = examplePlan.levels.map(({ name, depthBelowNape }, i) => ({
  level: name,
  depth: depthBelowNape.value,
  isMarked: i < 2,
  read: {},
}));
const lines = [
  ...([false, true] as const).map((isCovered) =>
    picture("lines", isCovered ? "mark-waist-covered" : "mark-waist", () => (
      <MarkPicture
        plan={examplePlan}
        lines={linesOfExample}
        level="waist"
        step={isCovered ? "1 mm" : "1/8 in"}
        isCovered={isCovered}
      />
    )),
  ),
  ...lineParts.map((part) =>
    scenePicture("lines", `read-waist-${part}`, () =>
      readLineScene({
        shape: formTorso(examplePlan.levels),
        level: "waist",
        part,
        title: linesWords.read.title(part, lineWords.waist),
        description: linesWords.read.how(part),
      }),
    ),
  ),
];

/** The covered form at each step over the padding. */
const covers = (["pinSides", "closed", "hem", "waistTape", "lines", "bag"] as const).map((doing) =>
  scenePicture("cover", doing, () =>
    coverScene({ levels: examplePlan.levels, on: examplePlan.pieces, doing, title: doing, isCovered: true }),
  ),
);

/** An invented arm of both kinds, in both units. */
const armOfExample = (cut: "twoPieces" | "onePiece", side: "left" | "right" = "left") =>
  softArm(
    {
      upperArmGirth: mm(318),
      elbowGirth: mm(272),
      wristGirth: mm(160),
      armLength: mm(556),
      shoulderToElbow: mm(314),
    },
    untriedKnit(usualStretch),
    { ...usualArm, cut, side },
  );
const arms = [
  picture("arm", "pattern", () => <ArmPatternPicture arm={armOfExample("twoPieces")} step="1/8 in" />),
  picture("arm", "pattern-one-piece", () => <ArmPatternPicture arm={armOfExample("onePiece")} step="0.5 cm" />),
  picture("arm", "hangs", () => <ArmHangsPicture arm={armOfExample("twoPieces")} levels={examplePlan.levels} />),
  picture("arm", "hangs-right", () => (
    <ArmHangsPicture arm={armOfExample("twoPieces", "right")} levels={examplePlan.levels} />
  )),
];

const moving = (one: Picture): Picture => ({ ...one, kind: "moving" });
const { levels, pieces } = plannedExample;
const planned = [
  ...levels.map((level) => {
    const seamShift = plannedExample.seamShifts.find((item) => item.level === level.name);
    return scenePicture("plan", `section-${level.name}`, () =>
      sectionScene({ level, pieces, lengths: inInches, ...(seamShift ? { seamShift } : {}) }),
    );
  }),
  ...figureViews.map((view) =>
    scenePicture("plan", `figure-${view}`, () => figureScene({ levels, pieces, view, lengths: inInches })),
  ),
  ...(["paper", "screen"] as const).flatMap((shownOn) =>
    pieces.flatMap((piece) =>
      layerPictures(piece, pieceName(piece), inInches, shownOn).map((drawing, i) =>
        scenePicture("plan", `piece-${String(piece.order)}-layer-${String(i + 1)}-on-${shownOn}`, () =>
          pieceScene(drawing),
        ),
      ),
    ),
  ),
].map(moving);

export const pictures: readonly Picture[] = [
  ...sections,
  ...workingSections,
  ...figures,
  ...standIns,
  ...cuts,
  testSquare,
  ...tapes,
  ...thicknesses,
  ...lines,
  ...arms,
  ...covers,
  ...planned,
  ...measuring,
];
