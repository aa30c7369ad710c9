import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { levelNames } from "../../src/core/body/vocabulary";
import { Drawing } from "../../src/ui/drawing/Drawing";
import { lengthWriter } from "../../src/ui/drawing/lengthWriter";
import type { Scene } from "../../src/ui/drawing/scene";
import { sectionScene } from "../../src/ui/drawing/sectionScene";
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

export const pictures: readonly Picture[] = [...sections, ...workingSections];
