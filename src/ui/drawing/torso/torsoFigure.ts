import { number, openPath, segment, smoothPath } from "../pathText";
import { at, between, type Mark, mark, type PicturePoint } from "../scene";
import { heightsDown, napeBack, pit, type TorsoShape } from "./torsoShape";

/** A form from the front or from behind, on its pole: neck with its cap, shoulders, armhole plates, center line, princess lines and hem. */
export function frontTorso(shape: TorsoShape, view: "front" | "back" = "front"): readonly Mark[] {
  const outline = frontOutline(shape);
  const dip = view === "front" ? 78 : 22;
  return [
    mark("torsoBase", pole(shape.hem)),
    mark("torso", outline),
    mark("torsoShade", frontShade(shape)),
    mark("torsoPlate", frontPlate(shape, 1), frontPlate(shape, -1), neckCap(shape)),
    mark("torsoLine", neckline(shape.neckHalf, dip), view === "front" ? crescents(shape) : ""),
    mark("torsoHair", princessLine(shape, 1), princessLine(shape, -1)),
    mark("torsoCenter", openPath([at(0, dip), at(0, shape.hem + hemHang(shape))])),
  ];
}

/** How far the middle of a level line hangs below its ends, seen from bust height some steps away (mm). */
export const hang = ({ levels, front }: TorsoShape, depth: number): number =>
  (front(depth) * (depth - levels.bust.depthBelowNape)) / viewDistance;

const viewDistance = 2400;
const hemHang = (shape: TorsoShape): number => hang(shape, shape.hem);

/** One cubic after another, as control points and ends, down the wearer's left from the neck to the armhole. */
type Curve = readonly [from: PicturePoint, to: PicturePoint, end: PicturePoint];

function shoulderCurves({ neckHalf: n, shoulderHalf: s, shoulderTip: zs, armholeBottom: za, half }: TorsoShape) {
  const reach = half(za);
  const start = at(n - 5, -64);
  const curves: readonly Curve[] = [
    [at(n - 6, -40), at(n - 5, -16), at(n + 7, 6)],
    [at(n + 32, 26), at(s - 40, zs - 16), at(s - 8, zs - 5)],
    [at(s, zs - 2), at(s + 4, zs + 6), at(s + 3, zs + 18)],
    [at(s, zs + 66), at(reach + 4, za - 58), at(reach, za)],
  ];
  return { start, curves };
}

/** A place on the left shoulder as it is drawn, from the neck (0) to its tip (1). */
export function shoulderPlace(shape: TorsoShape, share: number): PicturePoint {
  const [neck, shoulder] = shoulderCurves(shape).curves;
  const from = neck?.[2] ?? at(0, 0);
  const [one, two, end] = shoulder ?? [from, from, from];
  const [a, b, c] = [between(from, one, share), between(one, two, share), between(two, end, share)];
  return between(between(a, b, share), between(b, c, share), share);
}

function frontOutline(shape: TorsoShape): string {
  const { start, curves } = shoulderCurves(shape);
  const side = heightsDown(shape.armholeBottom, shape.hem).map((depth) => at(shape.half(depth), depth));
  const last = side.at(-1) ?? start;
  const down = curves.map(([one, two, end]) => `C${text(one)} ${text(two)} ${text(end)}`).join("");
  const right = `M${text(start)}${down}${smoothPath(side).replace(/^M[^C]*/, "")}`;
  const hem = `A${number(last.x)} ${number(Math.max(0.1, hemHang(shape)))} 0 0 1 ${text(flip(last))}`;
  const up = smoothPath(side.toReversed().map(flip)).replace(/^M[^C]*/, "");
  const ends = [start, ...curves.map(([, , end]) => end)];
  const back = curves
    .map(([one, two], i) => `C${text(flip(two))} ${text(flip(one))} ${text(flip(ends[i] ?? start))}`)
    .toReversed()
    .join("");
  return `${right}${hem}${up}${back}C${text(at(-start.x * 0.6, -80))} ${text(at(start.x * 0.6, -80))} ${text(start)}Z`;
}

/** The darker tone on the side away from the light. */
function frontShade(shape: TorsoShape): string {
  const heights = heightsDown(shape.armholeBottom, shape.hem);
  const outer = heights.map((depth) => at(shape.half(depth), depth));
  const inner = heights.map((depth) => at(shape.half(depth) * 0.62, depth)).toReversed();
  const top = [at(shape.shoulderHalf * 0.66, 66), at(shape.shoulderHalf - 8, shape.shoulderTip)];
  return `${openPath([...outer, ...inner, ...top])}Z`;
}

/** The frontPlate that closes an armhole: a narrow lens between its seam and the outline. */
function frontPlate({ shoulderHalf: s, shoulderTip: zs, armholeBottom: za, half }: TorsoShape, side: 1 | -1): string {
  const reach = half(za);
  const q = Math.min(0.83 * s, reach - 4);
  const seam = `M${text(at(side * (s - 2), zs - 4))}C${text(at(side * (s - 26), zs + 22))} ${text(at(side * q, zs + 56))} ${text(
    at(side * q, zs + 92),
  )}C${text(at(side * q, zs + 120))} ${text(at(side * (reach - 14), za - 12))} ${text(at(side * reach, za))}`;
  return `${seam}C${text(at(side * (reach + 4), za - 58))} ${text(at(side * s, zs + 66))} ${text(at(side * (s + 3), zs + 18))}Z`;
}

function neckCap({ neckHalf: n }: TorsoShape): string {
  const half = n - 5;
  return `M${text(at(-half, -64))}C${text(at(-half * 0.6, -80))} ${text(at(half * 0.6, -80))} ${text(at(half, -64))}C${text(
    at(half * 0.6, -50),
  )} ${text(at(-half * 0.6, -50))} ${text(at(-half, -64))}Z`;
}

const neckline = (neckHalf: number, dip: number): string =>
  `M${text(at(-neckHalf - 7, 6))}C${text(at(-neckHalf * 0.75, dip))} ${text(at(neckHalf * 0.75, dip))} ${text(at(neckHalf + 7, 6))}`;

/** From the middle of the shoulder over the apex, and in at the waist. */
function princessLine({ neckHalf, shoulderHalf, levels, half, hem }: TorsoShape, side: 1 | -1): string {
  const { bust, waist, fullHip } = levels;
  const apex = Math.min(0.62 * bust.half, 92);
  const points = [
    at(0.52 * (neckHalf + shoulderHalf), 26),
    at(apex * 1.06, bust.depthBelowNape - 60),
    at(apex, bust.depthBelowNape),
    at(0.5 * waist.half, waist.depthBelowNape),
    at(0.52 * fullHip.half, fullHip.depthBelowNape),
    at(0.53 * half(hem), hem),
  ];
  return smoothPath(points.map(({ x, y }) => at(side * x, y)));
}

/** A line under each breast, as deep as the bust stands out beyond the underbust. */
function crescents({ levels: { bust, underbust } }: TorsoShape): string {
  const out = bust.front - underbust.front;
  if (out < flatFront) return "";
  const apex = Math.min(0.62 * bust.half, 92);
  const deep = Math.min(20 + 0.45 * out, underbust.depthBelowNape - bust.depthBelowNape);
  return [1, -1]
    .map((side) =>
      smoothPath([
        at(side * (apex - 50), bust.depthBelowNape + deep * 0.35),
        at(side * apex, bust.depthBelowNape + deep),
        at(side * (apex + 44), bust.depthBelowNape + deep * 0.3),
      ]),
    )
    .join("");
}

/** A front that stands out by less than this at the bust (mm) shows no line below it. */
const flatFront = 12;

const pole = (hem: number): string =>
  `M-15 ${number(hem - 6)}H15V${number(hem + 8)}H9V${number(hem + 60)}H-9V${number(hem + 8)}H-15Z`;

const text = ({ x, y }: PicturePoint): string => `${number(x)} ${number(y)}`;
const flip = ({ x, y }: PicturePoint): PicturePoint => at(-x, y);

/** A form from its left side, its front to the left of the page: neck leaning forward, armhole sidePlate, side seam and hem. */
export function sideTorso(shape: TorsoShape): readonly Mark[] {
  const { hem } = shape;
  const front = heightsDown(pit.depth, hem).map((depth) => at(-shape.front(depth), depth));
  const back = heightsDown(0, hem).map((depth) => at(shape.back(depth), depth));
  const [hemFront, hemBack] = [front.at(-1) ?? at(0, hem), back.at(-1) ?? at(0, hem)];
  const outline = [
    `M${text(at(-pit.forward, pit.depth))}C-37 48 -44 -6 -54 -52L36 -84C42 -52 42 -24 ${text(at(napeBack, 0))}`,
    tail(smoothPath(back)),
    `Q${text(at((hemFront.x + hemBack.x) / 2, hem + 26))} ${text(hemFront)}`,
    tail(smoothPath(front.toReversed())),
    "Z",
  ].join("");
  return [
    mark("torsoBase", pole(hem)),
    mark("torso", outline),
    mark("torsoShade", sideShade(shape)),
    mark("torsoPlate", sidePlate, cap),
    mark("torsoLine", `M${text(at(-pit.forward, pit.depth))}C-14 70 20 40 ${text(at(napeBack, 22))}`, underBust(shape)),
    mark("torsoCenter", openPath([at(0, 214), at(0, hem + 12)])),
  ];
}

function sideShade(shape: TorsoShape): string {
  const heights = heightsDown(30, shape.hem);
  const outer = heights.map((depth) => at(shape.back(depth), depth));
  // It begins as a point below the nape and is a fifth of the way through from the armhole down.
  const inner = heights.map((depth) => {
    const through = shape.back(depth) + shape.front(Math.max(depth, pit.depth));
    return at(shape.back(depth) - through * 0.22 * Math.min(1, (depth - 30) / 150), depth);
  });
  return `${openPath([...outer, ...inner.toReversed()])}Z`;
}

/** Flat in front, full behind, narrow at the tip. */
const sidePlate = "M-6 58C22 56 40 100 38 146C36 186 22 206 2 206C-22 206 -34 184 -34 160C-34 124 -24 62 -6 58Z";
const cap = "M-54 -52L36 -84C38 -78 39 -72 40 -66L-50 -36C-51 -41 -52 -46 -54 -52Z";

/** The underside of the bust, from the side. */
function underBust({ levels: { bust, underbust }, front }: TorsoShape): string {
  if (bust.front - underbust.front < 12) return "";
  const depth = (bust.depthBelowNape + underbust.depthBelowNape) / 2;
  return smoothPath([
    at(-front(depth), depth),
    at(-front(depth) + 24, depth - 2),
    at(-front(depth) + 44, (depth + bust.depthBelowNape) / 2),
  ]);
}

const tail = (path: string): string => path.replace(/^M[^C]*/, "");

/** A narrow tape around a torso, its UPPER edge on the line; seen from the front or from the left side. */
interface LevelTape {
  readonly band: string;
  /** The line itself, dotted until a tape lies there. */
  readonly line: string;
  /** Marks of length along the band, closer together where it turns away. */
  readonly ticks: string;
}

export function levelTape(shape: TorsoShape, depth: number, view: "front" | "side", wide = tapeWidth): LevelTape {
  const [from, to] =
    view === "front" ? [-shape.half(depth), shape.half(depth)] : [-shape.front(depth), shape.back(depth)];
  const [over, reach] = [1.5, hang(shape, depth)];
  const [left, right] = [from - over, to + over];
  const edge = (y: number, x: number, sweep: 0 | 1): string =>
    `A${number((right - left) / 2)} ${number(Math.max(0.1, Math.abs(reach)))} 0 0 ${reach < 0 ? 1 - sweep : sweep} ${number(x)} ${number(y)}`;
  const steps = Array.from({ length: 17 }, (_, i) => (i + 1) / 18);
  const ticks = steps.map((share, i) => {
    const turn = Math.cos(share * Math.PI);
    const x = (left + right) / 2 - ((right - left) / 2) * turn;
    const y = depth + reach * Math.sqrt(Math.max(0, 1 - turn * turn));
    return segment(at(x, y), at(x, y + wide * (i % 3 === 1 ? 0.62 : 0.38)));
  });
  return {
    band: `M${number(left)} ${number(depth)}${edge(depth, right, 0)}V${number(depth + wide)}${edge(depth + wide, left, 1)}Z`,
    line: `M${number(from)} ${number(depth)}${edge(depth, to, 0)}`,
    ticks: ticks.join(""),
  };
}

/** As wide as a style tape is drawn (mm): wider than it is, so that it is seen from where one stands. */
const tapeWidth = 14;
