import type { Millimetres } from "../../core/units";
import type { Piece } from "../../core/padding/piece";
import type { PlannedLevel, SeamShift } from "../../core/plan/plan";
import { reachOf } from "../../core/geometry/support";
import { levelWords, pictureWords } from "../../text/pictures";
import { bandMarks, barePoints, layeredSection, type LayeredSection } from "./layeredSection";
import type { LengthWriter } from "../../text/lengthWriter";
import { arrow, closedPath, openPath, segment } from "./pathText";
import { at, type Frame, label, type Label, mark, type Mark, type PicturePoint, type Scene } from "./scene";
import { scaleBar } from "./rulers";
import { numberCallouts } from "./callouts";
import { pictureTexts } from "../../text/pictureTexts";

/**
 * One level seen from above, to scale, front towards the reader: the form, every piece of batting that lies across this
 * level, and the body as a chalk line, dashed in front or behind where that arc was estimated.
 */
interface SectionPicture {
  readonly level: PlannedLevel;
  /** All pieces of the plan; those beyond `pinned` are left out, but the picture keeps room for them. */
  readonly pieces: readonly Piece[];
  /** How many of the pieces, in their order, lie on the form: all of them if left out. */
  readonly pinned?: number;
  readonly seamShift?: SeamShift;
  readonly lengths: LengthWriter;
}

export function sectionScene({ level, pieces, pinned, seamShift, lengths }: SectionPicture): Scene {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  const shown = inOrder.filter((piece) => pinned === undefined || piece.order <= pinned);
  const now = pinned === undefined ? null : pinned;
  const whole = layeredSection(level.formSection, level.depthBelowNape.value, inOrder);
  const layered =
    shown.length === inOrder.length ? whole : layeredSection(level.formSection, level.depthBelowNape.value, shown);
  const body = bodyHalves(level);
  const frame = frameRound([...whole.surface, ...body.front, ...body.back], isMoved(seamShift));
  const textSize = frame.width / 26;
  const callouts = numberCallouts(layered, [...body.front, ...body.back], textSize, now);
  const foot = frame.y + frame.height - textSize * (isMoved(seamShift) ? 2.1 : 0.7);
  const bar = scaleBar(at(frame.x + textSize * 0.6, foot), lengths, textSize);
  const seams = seamMarks(level, layered, seamShift, textSize);
  return {
    title: pictureTexts.section(levelWords[level.name]),
    description: describe(level, layered, lengths),
    frame,
    textSize,
    marks: [
      mark("form", closedPath(layered.form)),
      ...bandMarks(layered, now),
      ...seams,
      mark(level.body.frontArc.kind === "measured" ? "body" : "bodyGuess", openPath(body.front)),
      mark(level.body.backArc.kind === "measured" ? "body" : "bodyGuess", openPath(body.back)),
      mark("leader", bodyLeader(body.back, frame, textSize)),
      ...callouts.marks,
      ...bar.marks,
    ],
    labels: [...placeLabels(level, seamShift, frame, textSize, lengths), ...callouts.labels, ...bar.labels],
  };
}

/** The body's front half from the right side seam to the left, and its back half from left to right. */
export function bodyHalves({ bodySection, depthBelowNape }: PlannedLevel): {
  readonly front: readonly PicturePoint[];
  readonly back: readonly PicturePoint[];
} {
  const points = barePoints(bodySection, depthBelowNape.value);
  const quarter = points.length / 4;
  const from = (start: number): readonly PicturePoint[] =>
    Array.from({ length: 2 * quarter + 1 }, (_, i) => points[(start + i) % points.length] ?? at(0, 0));
  return { front: from(quarter), back: from(3 * quarter) };
}

const isMoved = (shift: SeamShift | undefined): shift is SeamShift => shift !== undefined && shift.perSide > 0;

/** Room for words and numbers all round, and a row at the foot for the words about a moved seam. */
function frameRound(points: readonly PicturePoint[], hasFootRow: boolean): Frame {
  const reach = (pick: (point: PicturePoint) => number): number =>
    points.reduce((most, point) => Math.max(most, pick(point)), 0);
  const [front, back] = [reach(({ y }) => y), reach(({ y }) => -y)];
  const side =
    Math.max(
      reach(({ x }) => x),
      reach(({ x }) => -x),
    ) * 1.62;
  return {
    x: -side,
    y: -back - side * 0.29,
    width: 2 * side,
    height: back + front + side * (hasFootRow ? 0.73 : 0.62),
  };
}

function seamMarks(
  level: PlannedLevel,
  layered: LayeredSection,
  shift: SeamShift | undefined,
  size: number,
): readonly Mark[] {
  const [form, body] = [reachOf(level.formSection), reachOf(level.bodySection)];
  const tick = (side: 1 | -1, form: number, body: number): string =>
    segment(at(side * (form - size * 0.6), 0), at(side * (Math.max(body, reachAtSide(layered, side)) + size * 0.7), 0));
  const middle = (y: number, out: number): string => segment(at(0, y), at(0, y + out));
  const seam = mark("seam", tick(1, form.left, body.left), tick(-1, form.right, body.right));
  const centre = mark("centre", middle(form.front, -size), middle(-form.back, size));
  if (!isMoved(shift)) return [seam, centre, mark("seamMoved")];
  const moved = ([1, -1] as const).map((side) => movedMark(layered, side, shift, size));
  return [seam, centre, mark("seamMoved", ...moved)];
}

const reachAtSide = ({ surface }: LayeredSection, side: 1 | -1): number =>
  surface.reduce((most, { x }) => Math.max(most, side * x), 0);

/** The re-marked seam: a tick on the padded surface, this far along it from the old one, and an arrow to it. */
function movedMark(layered: LayeredSection, side: 1 | -1, shift: SeamShift, size: number): string {
  const way = shift.towards === "front" ? 1 : -1;
  const out = reachAtSide(layered, side) + size * 0.35;
  const place = way * shift.perSide;
  return (
    arrow(at(side * out, 0), at(side * out, place), Math.min(size * 0.5, shift.perSide)) +
    segment(at(side * (out - size * 0.9), place), at(side * (out + size * 0.5), place))
  );
}

function placeLabels(
  level: PlannedLevel,
  shift: SeamShift | undefined,
  frame: Frame,
  size: number,
  lengths: LengthWriter,
): readonly Label[] {
  const { front, back } = reachOf(level.formSection);
  const sideX = frame.width / 2 - size * 0.4;
  const foot = frame.y + frame.height;
  const estimated = [level.body.frontArc, level.body.backArc].some((arc) => arc.kind === "estimated");
  return [
    label("strong", at(0, foot - size * (isMoved(shift) ? 2.5 : 1.1)), pictureWords.front),
    label("strong", at(0, frame.y + size), pictureWords.back),
    label("strong", at(sideX, -size * 0.7), pictureWords.left, "end"),
    label("strong", at(-sideX, -size * 0.7), pictureWords.right, "start"),
    label("quiet", at(sideX, size * 0.7), pictureWords.sideSeam, "end"),
    label("quiet", at(-sideX, size * 0.7), pictureWords.sideSeam, "start"),
    label("name", at(0, (front - back) / 2), pictureWords.form),
    label("name", bodyWordsAt(frame, size), estimated ? pictureWords.bodyEstimated : pictureWords.body, "start"),
    ...(isMoved(shift) ? [label("quiet", at(sideX, foot - size * 0.8), seamWords(shift, lengths), "end")] : []),
  ];
}

const bodyWordsAt = (frame: Frame, size: number): PicturePoint => at(frame.x + size * 0.5, frame.y + size);

const seamWords = (shift: SeamShift, lengths: LengthWriter): string =>
  pictureWords.seamMark(lengths.write(shift.perSide), shift.towards);

/** From the word "body" to its line, between the back and the right side seam. */
function bodyLeader(back: readonly PicturePoint[], frame: Frame, size: number): string {
  const words = bodyWordsAt(frame, size);
  const place = back[Math.round(back.length * 0.74)];
  return place === undefined ? "" : segment(at(words.x + size, words.y + size * 0.7), place);
}

function describe(level: PlannedLevel, layered: LayeredSection, lengths: LengthWriter): string {
  const { body, form, predicted } = level;
  const known = ({ kind, value }: { readonly kind: "measured" | "estimated"; readonly value: Millimetres }) => ({
    length: lengths.write(value),
    isEstimated: kind === "estimated",
  });
  return pictureTexts.sectionShows({
    person: known(body.girth),
    front: known(body.frontArc),
    form: known(form.girth),
    padded: lengths.write(predicted.girth),
    orders: layered.layers.map(({ piece }) => String(piece.order)),
  });
}
