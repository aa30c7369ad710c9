import { at, type PicturePoint } from "../picturePoint";

/** The wearer's side on which something is measured. Shapes are given for her left, which is x above zero from the front. */
export type Side = "left" | "right";

export const mirror = ({ x, y }: PicturePoint): PicturePoint => at(-x, y);

export const onSide = (side: Side, line: readonly PicturePoint[]): readonly PicturePoint[] =>
  side === "left" ? line : line.map(mirror);
