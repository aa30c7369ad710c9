import { number, segment } from "../pathText";
import { at } from "../picturePoint";
import { hang } from "./frontTorso";
import type { TorsoShape } from "./torsoShape";

/** A narrow tape around a torso, its UPPER edge on the line; seen from the front or from the left side. */
export interface LevelTape {
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
