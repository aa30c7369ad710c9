import type { MeasurementName } from "../../../core/body/vocabulary";
import { viewWords } from "../figureView";
import { spreadOut } from "../callouts";
import { circle, closedPath, dimension, openPath, segment, smoothPath } from "../pathText";
import { at, type Frame, label, type Label, mark, type Mark, type PicturePoint, type Scene } from "../scene";
import { measurementTexts } from "../../../text/measurements";
import { pictureWords } from "../../../text/pictures";
import { formShape, type Landmark, personShape, type TapeRoute } from "./tapeRoute";
import { formMarksOnStand, personMarks } from "./measuredFigure";
import { measureRoute } from "./measureRoute";
import { ribbon } from "../rulers";

/** One measurement on the person or on the form: the figure, the tape where it runs, its landmarks pinned and named. */
export function measureScene(name: MeasurementName, whose: "body" | "form"): Scene {
  const route = measureRoute(name, whose === "body" ? personShape : formShape);
  const frame = whose === "body" ? shots[route.shot] : withoutHead(shots[route.shot]);
  const textSize = Math.max(frame.width / 15, frame.height / 22);
  const text = measurementTexts[name];
  const pins = landmarkMarks(route.landmarks, frame, textSize);
  return {
    title: `${text.label}, ${viewWords[route.view]}`,
    description: text.what,
    frame,
    textSize,
    marks: [
      ...(route.shot === "whole"
        ? [mark("ground", segment(at(frame.x + 20, floorLine), at(frame.x + frame.width - 20, floorLine)))]
        : []),
      ...(whose === "body" ? personMarks(route.view) : formMarksOnStand(route.view, route.shot === "arm")),
      ...routeMarks(route, Math.min(frame.width, 700) / 44),
      ...pins.marks,
    ],
    labels: [...sideWords(route, frame, textSize), ...pins.labels],
  };
}

const floorLine = 1395;

const shots: { readonly [shot in TapeRoute["shot"]]: Frame } = {
  // Wider than the figure: there is room beside its head for the words of its sides.
  whole: { x: -480, y: -275, width: 960, height: 1715 },
  torso: { x: -330, y: -275, width: 660, height: 1015 },
  shoulders: { x: -245, y: -275, width: 490, height: 520 },
  arm: { x: -60, y: -20, width: 440, height: 790 },
};

/** A form has no head: its pictures begin above its neck. */
const withoutHead = (frame: Frame): Frame =>
  frame.y < -200 ? { ...frame, y: -145, height: frame.height + frame.y + 145 } : frame;

function routeMarks(route: TapeRoute, width: number): readonly Mark[] {
  const ribbons = route.tapes.map((line) => ribbon(line, width, width * 1.3));
  const boards = route.straight.map(({ helper }) => (helper.length % 4 === 0 ? corners(helper) : ""));
  const rulers = route.straight.map(({ helper }) => (helper.length === 2 ? openPath(helper) : ""));
  const guides = (role: "seam" | "centre"): readonly string[] =>
    route.guides.filter((guide) => guide.role === role).map(({ line }) => smoothPath(line));
  return [
    mark("seam", ...guides("seam")),
    mark("centre", ...guides("centre")),
    mark("tapeHidden", ...route.hidden.map(smoothPath)),
    mark("stand", ...boards),
    mark("ground", ...rulers),
    mark("straight", ...route.straight.map(({ from, to }) => dimension(from, to, width))),
    mark("tape", ...ribbons.map(({ outline }) => outline)),
    mark("tapeTick", ...ribbons.map(({ ticks }) => ticks)),
  ];
}

/** Boards, books or a ruler, each by its four corners. */
const corners = (helper: readonly PicturePoint[]): string =>
  Array.from({ length: helper.length / 4 }, (_, i) => closedPath(helper.slice(4 * i, 4 * i + 4))).join("");

interface Callout extends Landmark {
  readonly side: "left" | "right";
  readonly end: PicturePoint;
}

/** Pins, with their words at the edge of the picture; words that name a pair stand once, on the right. */
function landmarkMarks(
  landmarks: readonly Landmark[],
  frame: Frame,
  size: number,
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  const callouts = (["left", "right"] as const).flatMap((side) => sideCallouts(landmarks, side, frame, size));
  return {
    marks: [
      mark("leader", ...callouts.map((callout) => segment(callout.place, leaderEnd(callout, size)))),
      mark("pin", ...landmarks.map(({ place }) => circle(place, size * 0.26))),
    ],
    labels: callouts.map(({ end, words, side }) => label("place", end, words, side === "left" ? "start" : "end")),
  };
}

function sideCallouts(
  landmarks: readonly Landmark[],
  side: "left" | "right",
  frame: Frame,
  size: number,
): readonly Callout[] {
  const middle = frame.x + frame.width / 2;
  const edge = side === "left" ? frame.x + size * 0.3 : frame.x + frame.width - size * 0.3;
  const own = landmarks
    .filter(({ place, words }) => {
      if (words === "") return false;
      const hasTwin = landmarks.some((other) => other.words === words && other.place.x >= middle);
      return side === "right" ? place.x >= middle : place.x < middle && !hasTwin;
    })
    .toSorted((a, b) => a.place.y - b.place.y);
  // Near the shoulders words keep the order of their pins: one that steps up pushes those above it further up.
  let below = Number.POSITIVE_INFINITY;
  const wishes = own.toReversed().map((landmark) => {
    const wish = landmark.place.y + stepAside(landmark, edge, size);
    below = landmark.place.y < shouldersEnd ? Math.min(wish, below - size * 1.25) : wish;
    return below;
  });
  const callouts = own
    .map(({ place, words }, i) => ({ place, words, side, end: at(edge, wishes[own.length - 1 - i] ?? place.y) }))
    .toSorted((a, b) => a.end.y - b.end.y);
  const heights = spreadOut(
    callouts.map(({ end }) => end.y),
    size * 1.25,
    frame.y + size * 2.4,
    frame.y + frame.height - size,
  );
  return callouts.map((callout, i) => ({ ...callout, end: at(edge, heights[i] ?? callout.end.y) }));
}

/** Words that would cover their own pin stand above it near the shoulders, below it further down. */
function stepAside({ place, words }: Landmark, edge: number, size: number): number {
  const reaches = Math.abs(edge - place.x) < wordsWidth(words, size) + size;
  return reaches ? (place.y < shouldersEnd ? -2.4 : 1.9) * size : 0;
}

/** Above this depth there is room for words only upwards, beside the head (mm). */
const shouldersEnd = 70;

/** Letters are reckoned at just over half as wide as the words are high. */
const wordsWidth = (words: string, size: number): number => words.length * size * 0.53;

/** Where a leader meets its words: at their inner end, or at their top or bottom edge right above or below the pin. */
function leaderEnd({ place, end, words, side }: Callout, size: number): PicturePoint {
  const inner = end.x + (side === "left" ? 1 : -1) * (wordsWidth(words, size) + size * 0.2);
  if (Math.abs(end.y - place.y) < size || (side === "left" ? place.x > inner : place.x < inner))
    return at(inner, end.y);
  return at(place.x, end.y + Math.sign(place.y - end.y) * size * 0.62);
}

/** What lies to the left of a picture and to its right; the picture of an arm has words on its right alone. */
export function measureSides(name: MeasurementName): readonly [start: string, end: string] {
  const { view, shot } = measureRoute(name, personShape);
  const [start, end] = sides[view];
  return [shot === "arm" ? "" : start, end];
}

const sides: { readonly [view in TapeRoute["view"]]: readonly [start: string, end: string] } = {
  front: [pictureWords.right, pictureWords.left],
  back: [pictureWords.left, pictureWords.right],
  side: [pictureWords.front, pictureWords.back],
};

function sideWords({ view, shot }: TapeRoute, frame: Frame, size: number): readonly Label[] {
  const [first, second] = sides[view];
  const start = label("strong", at(frame.x + size * 0.3, frame.y + size * 0.8), first, "start");
  const end = label("strong", at(frame.x + frame.width - size * 0.3, frame.y + size * 0.8), second, "end");
  return shot === "arm" ? [end] : [start, end];
}
