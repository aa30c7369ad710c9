import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { levelNames, measurementNames } from "../../src/core/body/vocabulary";
import { Drawing } from "../../src/ui/drawing/Drawing";
import { figureScene } from "../../src/ui/drawing/figureScene";
import { figureViews } from "../../src/ui/drawing/figureView";
import { lengthWriter } from "../../src/ui/drawing/lengthWriter";
import { pieceScene, testSquareScene } from "../../src/ui/drawing/pieceScene";
import type { Scene } from "../../src/ui/drawing/scene";
import { sectionScene } from "../../src/ui/drawing/sectionScene";
import { thicknessScene } from "../../src/ui/drawing/thicknessScene";
import { MeasureFigure } from "../../src/ui/figures/MeasureFigure";
import { examplePlan } from "./examplePlan";

/**
 * Every picture the tool draws, by name: the same functions make the snapshots, the page to browse while developing and
 * the drawings of the docs.
 */
export interface Picture {
  readonly name: string;
  readonly room: string;
  readonly markup: () => string;
}

const inInches = lengthWriter("in");
const inCentimetres = lengthWriter("cm");

const picture = (room: string, name: string, element: () => ReactElement): Picture => ({
  name: `${room}/${name}`,
  room,
  markup: () => renderToStaticMarkup(element()),
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
      figureScene({ levels: examplePlan.levels, pieces: examplePlan.pieces, view, lengths: inCentimetres, ...(now === undefined ? {} : { now }) }),
    ),
  ),
);

const depths = figureViews.map((view) =>
  scenePicture("depth", view, () =>
    thicknessScene({ levels: examplePlan.levels, pieces: examplePlan.pieces, view, lengths: view === "side" ? inInches : inCentimetres }),
  ),
);

const cuts = [0, 4, 7, 9, 11].flatMap((i) => {
  const piece = examplePlan.pieces[i];
  return piece === undefined
    ? []
    : [scenePicture("piece", piece.id, () => pieceScene({ piece, title: `Piece ${String(piece.order)}`, lengths: i % 2 === 0 ? inInches : inCentimetres }))];
});
const testSquare = picture("piece", "test-square", () => <Drawing scene={testSquareScene(inInches)} size="true" />);

const measuring = (["body", "form"] as const).flatMap((whose) =>
  measurementNames.map((name) => picture(`measure-${whose}`, name, () => <MeasureFigure name={name} whose={whose} />)),
);

export const pictures: readonly Picture[] = [...sections, ...workingSections, ...figures, ...depths, ...cuts, testSquare, ...measuring];
