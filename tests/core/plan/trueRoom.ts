import type { Measurements } from "../../../src/core/body/measurements";
import { type LevelName, levelNames } from "../../../src/core/body/vocabulary";
import type { TapeReadingName } from "../../../src/core/calibration/evidence";
import { formCurve } from "../../../src/core/form/formLines";
import { formAtDepths } from "../../../src/core/form/formAtDepths";
import { sectionOutline } from "../../../src/core/geometry/outline";
import { addLayer, type Laid, type LevelOutline } from "../../../src/core/padding/layerThickness";
import { tapeQuarters } from "../../../src/core/tape/tape";
import { type Millimetres, mm } from "../../../src/core/units";
import type { Chance } from "../../tools/peopleChance";

/**
 * The room in which a plan is carried out, as it truly is and nobody there knows it: the form's true shape, what a layer of
 * the batting truly adds and how a stack of it gives under its own tape, and a tape that is read with an error.
 */
export interface TrueRoom {
  readonly levelSections: readonly LevelOutline[];
  readonly layer: number;
  /** Share of its thickness that a layer deep in a stack loses. */
  readonly stackCompression: number;
  /** How the loss comes on: at once from the second layer (as the tool takes it), or evenly up to the eighth (as it does not). */
  readonly onset: "secondLayer" | "eighthLayer";
  readonly readingError: number;
  readonly chance: Chance;
}

export type TrueReading = { readonly girth: number; readonly frontArc: number; readonly backArc: number };

export function trueSections(
  trueForm: Measurements,
  depths: { readonly [name in LevelName]: number },
): readonly LevelOutline[] {
  const levels = formAtDepths(formCurve(trueForm, {}, depths), depths);
  return levelNames.map((name) => ({ depth: depths[name], outline: sectionOutline(levels[name].section, 24) }));
}

/** What an unerring tape reads at every level over the pinned pieces. */
export function trueReadings(room: TrueRoom, pinned: readonly Laid[]): readonly TrueReading[] {
  return room.levelSections.map((levelSection) => {
    const layers = new Float64Array(levelSection.outline.count);
    for (const piece of pinned) {
      for (const layer of piece.layers) addLayer(layers, layer, piece.anchor, levelSection, 1);
    }
    const thickness = layers.map((count) => stackThickness(room, count));
    const { leftFront, rightFront, leftBack, rightBack } = tapeQuarters(levelSection.outline, thickness);
    return {
      girth: leftFront + rightFront + leftBack + rightBack,
      frontArc: leftFront + rightFront,
      backArc: leftBack + rightBack,
    };
  });
}

function stackThickness({ layer, stackCompression, onset }: TrueRoom, count: number): number {
  const further = Math.max(0, count - 1);
  if (onset === "secondLayer") return layer * (count - stackCompression * further);
  const deep = 7;
  const lost = further <= deep ? (further * further) / (2 * deep) : further - deep / 2;
  return layer * (count - stackCompression * lost);
}

/**
 * What a person reads there: girth, front and back of the levels asked for, each with an error of its own, to the
 * millimetre.
 */
export function readTape(
  room: TrueRoom,
  pinned: readonly Laid[],
  levels: readonly LevelName[],
): { readonly [name in TapeReadingName]?: Millimetres } {
  const truth = trueReadings(room, pinned);
  const found: { [name in TapeReadingName]?: Millimetres } = {};
  for (const level of levels) {
    const { girth, frontArc, backArc } = truth[levelNames.indexOf(level)] as TrueReading;
    const read = (value: number) => mm(Math.round(room.chance.normal(value, room.readingError)));
    found[`${level}Girth`] = read(girth);
    found[`${level}FrontArc`] = read(frontArc);
    found[`${level}BackArc`] = read(backArc);
  }
  return found;
}
