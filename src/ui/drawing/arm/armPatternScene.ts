import type { ArmPart, ArmPartName } from "../../../core/arm/armParts";
import type { ArmLineName, FlatPoint, PatternPart } from "../../../core/pattern/patternPart";
import { armLineNames, partFrame, partOutline } from "../../../core/pattern/patternPart";
import { arrow, closedPath, openPath, segment } from "../pathText";
import { at, label, type Label, type Mark, mark, type PicturePoint, type Scene } from "../scene";

/**
 * The parts of a soft arm as they are cut, true in proportion: the large pieces side by side at the same height, discs and tab below
 * them, and beside the last piece what the tape reads around the filled arm at each line.
 */
interface ArmPatternPicture {
  readonly parts: readonly ArmPart[];
  /** How many times larger than usual its letters are; usual letters are a thirteenth of the large pieces' width. */
  readonly larger?: number;
  readonly words: {
    readonly title: string;
    readonly description: string;
    readonly parts: { readonly [name in ArmPartName]: string };
    readonly lines: { readonly [line in ArmLineName]: string };
    readonly lengths: { readonly [line in ArmLineName]: string };
  };
}

export function armPatternScene({ parts, larger = 1, words }: ArmPatternPicture): Scene {
  const large = parts.filter(({ name }) => name === "upper" || name === "under" || name === "whole");
  const small = parts.filter(({ name }) => name === "capDisc" || name === "wristDisc" || name === "tab");
  const size = (larger * large.reduce((sum, { part }) => sum + partFrame(part).width, 0)) / 13;
  const above = sideBySide(large, 1.4 * size, () => 0);
  const heights = large.map(({ part }) => partFrame(part));
  const foot = -Math.min(...heights.map(({ bottom }) => bottom)) + 1.4 * size;
  const below = sideBySide(small, 1.2 * size, (name) => letterWidth * size * words.parts[name].length);
  const tallest = Math.max(...small.map(({ part }) => partFrame(part).height));
  const lower = below.map((one) => {
    const frame = partFrame(one.part);
    const middle = frame.bottom + frame.height / 2;
    return { ...one, down: foot + tallest / 2 + middle };
  });
  const right = Math.max(...above.map((one) => one.right));
  const widest = Math.max(right + 9.5 * size, ...below.map((one) => one.right + size));
  const column = lineColumn(above.at(-1), right, size, words);
  const top = Math.min(...heights.map(({ bottom, height }) => -bottom - height)) - 0.5 * size;
  return {
    title: words.title,
    description: words.description,
    frame: { x: -0.5 * size, y: top, width: widest + 0.5 * size, height: foot + tallest + 1.9 * size - top },
    textSize: size,
    marks: [
      mark("tapeNow", ...above.slice(0, 1).map(cutShape)),
      mark("battingOn", ...[...above.slice(1), ...lower].map(cutShape)),
      mark("seam", ...[...above, ...lower].map((one) => closedPath(partOutline(one.part).map(toPage(one))))),
      mark("levelLine", ...above.flatMap((one) => linesOf(one, "level").map((line) => openPath(line)))),
      mark("torsoLine", ...above.flatMap((one) => linesOf(one, "dart").map((line) => openPath(line)))),
      mark("straight", ...[...above, ...lower].flatMap(notchStrokes)),
      mark("ground", ...above.map((one) => grainArrow(one, size))),
      ...column.marks,
    ],
    labels: [
      ...above.map((one) => nameInside(one, words.parts[one.name], size)),
      ...lower.map((one) =>
        label("name", at((one.left + one.right) / 2, foot + tallest + 0.9 * size), words.parts[one.name]),
      ),
      ...column.labels,
    ],
  };
}

/** A part on the page: how far it is moved to the right and down, and where it ends on both sides. */
interface Placed extends ArmPart {
  readonly across: number;
  readonly down: number;
  readonly left: number;
  readonly right: number;
}

/** Parts in a row, each in the middle of at least so much room. */
function sideBySide(
  parts: readonly ArmPart[],
  gap: number,
  leastRoom: (name: ArmPartName) => number,
): readonly Placed[] {
  let from = 0;
  return parts.map(({ name, part }) => {
    const frame = partFrame(part);
    const room = Math.max(frame.width, leastRoom(name));
    const left = from + (room - frame.width) / 2;
    from += room + gap;
    return { name, part, across: left - frame.left, down: 0, left, right: left + frame.width };
  });
}

/** A letter is about so much of its size wide. */
const letterWidth = 0.6;

const toPage =
  ({ across, down }: Placed) =>
  ({ x, y }: FlatPoint): PicturePoint =>
    at(x + across, down - y);

const linesOf = (one: Placed, kind: PatternPart["lines"][number]["kind"]): readonly (readonly PicturePoint[])[] =>
  one.part.lines.filter((line) => line.kind === kind).map(({ points }) => points.map(toPage(one)));

const cutShape = (one: Placed): string =>
  linesOf(one, "cut")
    .map((line) => closedPath(line.slice(0, -1)))
    .join("");

/** From each notch straight out to the cut edge. */
function notchStrokes(one: Placed): readonly string[] {
  const [cut = []] = linesOf(one, "cut");
  return one.part.notches.map(toPage(one)).map((notch) => segment(notch, nearestOn(cut, notch)));
}

function nearestOn(line: readonly PicturePoint[], place: PicturePoint): PicturePoint {
  const far = (one: PicturePoint) => Math.hypot(one.x - place.x, one.y - place.y);
  const places = line.slice(1).map((to, i) => {
    const from = line[i] ?? to;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / Math.max(1e-9, dx * dx + dy * dy);
    const within = Math.min(1, Math.max(0, share));
    return at(from.x + within * dx, from.y + within * dy);
  });
  return places.reduce((best, one) => (far(one) < far(best) ? one : best), places[0] ?? place);
}

const grainArrow = (one: Placed, size: number): string =>
  linesOf(one, "grain")
    .map(([lower, upper]) =>
      lower === undefined || upper === undefined
        ? ""
        : arrow(lower, upper, 0.5 * size) + arrow(upper, lower, 0.5 * size),
    )
    .join("");

/** Above the grain line, where an arm is widest. */
function nameInside(one: Placed, name: string, size: number): Label {
  const [grain = []] = linesOf(one, "grain");
  const top = grain.reduce((best, point) => (point.y < best.y ? point : best), grain[0] ?? at(one.left, 0));
  return label("strong", at(top.x, top.y - 0.9 * size), name);
}

/** What the tape reads at each line, on a leader from the line's end on the last piece. */
function lineColumn(
  last: Placed | undefined,
  right: number,
  size: number,
  { lines, lengths }: ArmPatternPicture["words"],
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  if (last === undefined) return { marks: [], labels: [] };
  const ends = armLineNames.map((line) => ({ line, end: lineEnd(last, line) }));
  const x = right + 1.2 * size;
  return {
    marks: [mark("leader", ...ends.map(({ end }) => segment(at(end.x + 0.7 * size, end.y), at(x, end.y))))],
    labels: ends.flatMap(({ line, end }) => [
      label("name", at(x + 0.3 * size, end.y - 0.55 * size), lines[line], "start"),
      label("number", at(x + 0.3 * size, end.y + 0.6 * size), lengths[line], "start"),
    ]),
  };
}

/** The right end of a line of the arm; the wrist is an edge, and the elbow of an arm in one piece the mouth of its dart. */
function lineEnd(one: Placed, line: ArmLineName): PicturePoint {
  const drawn = one.part.lines.filter(({ kind, name }) => name === line && (kind === "level" || kind === "dart"));
  const wrists = one.part.edges.filter(({ id }) => /wrist$/i.test(id));
  const points = (drawn.length > 0 ? drawn : wrists).flatMap(({ points: own }) => own.map(toPage(one)));
  return points.reduce((best, point) => (point.x > best.x ? point : best), points[0] ?? at(one.right, 0));
}
