import type { LengthUnit } from "../../core/lengthText";
import type { Piece } from "../../core/padding/piece";
import { pictureWords } from "../../text/pictures";
import { ticksInward } from "./featherMarks";
import { inchMm, type LengthWriter } from "./lengthWriter";
import { linesOver, panelScene, type PiecePicture, type ShownOn } from "./panelScene";
import { circle, closedPath, dimension, segment } from "./pathText";
import { at, label, mark, type PicturePoint, type Scene } from "./scene";

/** One layer of a piece as it is cut: outline, anchor line, the band that is feathered, and every size it takes to cut it. */
export function pieceScene(picture: PiecePicture): Scene {
  const { cut } = picture;
  if (cut.shape === "bought") return boughtScene(picture);
  return cut.shape === "disc" ? discScene(picture, cut.diameter) : panelScene(picture, cut);
}

/** A layer for every shape to cut, from the form outwards. */
export const layerPictures = (
  piece: Piece,
  title: string,
  lengths: LengthWriter,
  shownOn: ShownOn,
): readonly PiecePicture[] =>
  piece.cut.flatMap((cut, i) => {
    const layer = piece.layers[i];
    const name = piece.layers.length === 1 ? title : pictureWords.layerOf(title, i + 1, piece.layers.length);
    return layer === undefined ? [] : [{ piece, layer, cut, title: name, lengths, shownOn }];
  });

/** A pad as it is bought has no size to cut. */
const boughtScene = ({ title }: PiecePicture): Scene => ({
  title,
  description: pictureWords.bought,
  frame: { x: 0, y: 0, width: 120, height: 20 },
  textSize: 8,
  marks: [],
  labels: [label("name", at(60, 10), pictureWords.bought)],
});

function discScene({ layer, title, lengths, shownOn = "paper" }: PiecePicture, diameter: number): Scene {
  const radius = diameter / 2;
  const { across, down } = linesOver[shownOn];
  const size = diameter / down;
  const thin = layer.feather;
  const width = across * size;
  const left = -radius - (width - diameter - wordRoom * size) / 2;
  return {
    title,
    description: `A disc ${lengths.write(diameter)} across.`,
    frame: { x: left, y: -radius - size * 0.5, width, height: diameter + size },
    textSize: size,
    marks: [
      mark("layer", circle(at(0, 0), radius)),
      mark("feather", circle(at(0, 0), radius - thin)),
      mark("hatch", ticksInward(ringPoints(radius), thin * 0.4)),
      mark(
        "leader",
        dimension(at(-radius, 0), at(radius, 0), size * 0.5),
        segment(at(radius, 0), at(radius + size, 0)),
      ),
      mark("centre", segment(at(0, -size * 0.7), at(0, size * 0.7))),
    ],
    labels: [label("number", at(radius + size * 1.1, 0), pictureWords.diameter(lengths.write(diameter)), "start")],
  };
}

/** Room for the words on the right, in lines of words. */
const wordRoom = 9;

const ringPoints = (radius: number): readonly PicturePoint[] =>
  Array.from({ length: 49 }, (_, i) =>
    at(radius * Math.cos((i / 24) * Math.PI), radius * Math.sin((i / 24) * Math.PI)),
  );

/** A side that the ruler at hand shows as a whole number: 2 in or 5 cm. Millimetres. */
export const testSquareSide = (unit: LengthUnit): number => (unit === "in" ? 2 * inchMm : 50);

/** A square to print at true size and measure, before anything is cut from paper. */
export function testSquareScene(lengths: LengthWriter): Scene {
  const side = testSquareSide(lengths.unit);
  const step = side / (lengths.unit === "in" ? 4 : 5);
  const inside = [1, 2, 3, 4]
    .map((i) => i * step)
    .filter((from) => from < side)
    .flatMap((from) => [segment(at(from, 0), at(from, 2.5)), segment(at(0, from), at(2.5, from))]);
  return {
    title: "Test square",
    description: `Printed at its true size this square measures ${lengths.write(side)} each way.`,
    frame: { x: -2, y: -2, width: 96, height: 62 },
    textSize: 3.6,
    marks: [mark("ground", closedPath([at(0, 0), at(side, 0), at(side, side), at(0, side)]), ...inside)],
    labels: [label("name", at(0, side + 4.5), pictureWords.testSquare(lengths.write(side)), "start")],
  };
}
