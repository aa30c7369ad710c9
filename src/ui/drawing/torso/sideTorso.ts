import { number, openPath, smoothPath } from "../pathText";
import { at, type PicturePoint } from "../picturePoint";
import { type Mark, mark } from "../scene";
import { pole } from "./frontTorso";
import { heightsDown, napeBack, pit, type TorsoShape } from "./torsoShape";

/** A form from its left side, its front to the left of the page: neck leaning forward, armhole plate, side seam and hem. */
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
    mark("torsoShade", shadePath(shape)),
    mark("torsoPlate", plate, cap),
    mark("torsoLine", `M${text(at(-pit.forward, pit.depth))}C-14 70 20 40 ${text(at(napeBack, 22))}`, underBust(shape)),
    mark("torsoCenter", openPath([at(0, 214), at(0, hem + 12)])),
  ];
}

function shadePath(shape: TorsoShape): string {
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
const plate = "M-6 58C22 56 40 100 38 146C36 186 22 206 2 206C-22 206 -34 184 -34 160C-34 124 -24 62 -6 58Z";
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
const text = ({ x, y }: PicturePoint): string => `${number(x)} ${number(y)}`;
