import { reachOf } from "../../../core/geometry/support";
import type { Piece } from "../../../core/padding/piece";
import type { PlannedLevel } from "../../../core/plan/plan";
import { bandMarks, layeredSection } from "../../drawing/layeredSection";
import { closedPath, openPath } from "../../drawing/pathText";
import { at, type Frame, label, mark, type PicturePoint, type Scene } from "../../drawing/scene";
import { numberCallouts } from "../../drawing/callouts";
import { bodyHalves } from "../../drawing/sectionScene";
import { levelWords, pictureWords } from "../../../text/pictures";
import { classPicture } from "../../../text/classView";

/**
 * One level seen from above for the back row: the form, the pieces that are on, the body, and tinted between them what
 * is still to fill. It holds no length; the frame has room for the whole padding from the first step on, so that nothing jumps.
 */
interface ClassPicture {
  readonly level: PlannedLevel;
  readonly pieces: readonly Piece[];
  /** How many pieces are on, in the order of pinning. */
  readonly step: number;
  /** The person's outline, and with it what is left to fill, is not drawn. */
  readonly isPersonCovered?: boolean;
}

export function classScene({ level, pieces, step, isPersonCovered = false }: ClassPicture): Scene {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  const whole = layeredSection(level.formSection, level.depthBelowNape.value, inOrder);
  const layered = layeredSection(level.formSection, level.depthBelowNape.value, inOrder.slice(0, step));
  const body = bodyHalves(level);
  const outline = [...body.front, ...body.back];
  const frame = frameRound([...whole.surface, ...outline]);
  const textSize = textSizeOf(frame);
  const atHand = { ...layered, layers: layered.layers.filter(({ piece }) => piece.order === step) };
  const callout = numberCallouts(atHand, outline, textSize, step);
  const foot = frame.y + frame.height - textSize * 0.6;
  const side = frame.width / 2 - textSize * 0.2;
  return {
    title: classPicture.title(levelWords[level.name], step === 0 ? classPicture.bare : classPicture.after(step)),
    description: (isPersonCovered ? classPicture.descriptionCovered : classPicture.description)(layered.layers.length),
    frame,
    textSize,
    marks: [
      ...(isPersonCovered ? [] : [mark("shade2", closedPath(outline))]),
      mark("form", closedPath(layered.form)),
      ...bandMarks(layered, step),
      ...(isPersonCovered ? [] : [personMark(level, "frontArc", body.front), personMark(level, "backArc", body.back)]),
      ...callout.marks,
    ],
    labels: [
      label("strong", at(0, frame.y + textSize * 0.6), pictureWords.back),
      label("strong", at(0, foot), pictureWords.front),
      label("strong", at(-side, foot - textSize * 1.05), classPicture.wearers, "start"),
      label("strong", at(side, foot - textSize * 1.05), classPicture.wearers, "end"),
      label("strong", at(-side, foot), pictureWords.right, "start"),
      label("strong", at(side, foot), pictureWords.left, "end"),
      label("name", at(0, (reachOf(level.formSection).front - reachOf(level.formSection).back) / 2), pictureWords.form),
      ...callout.labels,
    ],
  };
}

const personMark = (level: PlannedLevel, half: "frontArc" | "backArc", points: Parameters<typeof openPath>[0]) =>
  mark(level.body[half].kind === "measured" ? "body" : "bodyGuess", openPath(points));

/** Words a thirteenth of the picture's width: about a twentieth of the screen's height when it fills half a screen. */
const textShare = 1 / 13;
const textSizeOf = ({ width }: Frame): number => width * textShare;

/** Room for the number of the piece at hand all round, for a word at the top and for two rows of words at the foot. */
function frameRound(points: readonly PicturePoint[]): Frame {
  const side = Math.max(...points.map(({ x }) => Math.abs(x)));
  const width = (2 * side) / (1 - 3.4 * textShare);
  const text = width * textShare;
  const [back, front] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
  return { x: -width / 2, y: back - text * 2.8, width, height: front - back + text * 6.7 };
}
