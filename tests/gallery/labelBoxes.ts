import type { Label, LabelRole, Scene } from "../../src/ui/drawing/scene";

/** The room that each word of a scene takes, reckoned generously from its letters, in millimetres of the scene. */
export interface LabelBox {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * How high letters stand and how wide they are, as shares of the scene's text: the faces and sizes of the style sheet, each a tenth
 * wider than its words were measured on a printed page (0.40 for the narrow figures, 0.45 for the text).
 */
const letters: { readonly [role in LabelRole]: { readonly high: number; readonly wide: number } } = {
  name: { high: 1, wide: 0.5 },
  strong: { high: 1, wide: 0.68 },
  quiet: { high: 0.9, wide: 0.46 },
  atHand: { high: 1.5, wide: 0.66 },
  onTape: { high: 1, wide: 0.44 },
  number: { high: 1, wide: 0.44 },
  size: { high: 1, wide: 0.44 },
  place: { high: 1, wide: 0.5 },
};

export function labelBox({ role, text, x, y, anchor }: Label, textSize: number): LabelBox {
  const { high, wide } = letters[role];
  const width = text.length * wide * textSize;
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  const half = (high * textSize) / 2;
  return { text, left, right: left + width, top: y - half, bottom: y + half };
}

/** Pairs of words that touch, and words that reach beyond the picture: none, if all can be read. */
export function clashes({ labels, textSize, frame }: Scene): readonly string[] {
  const boxes = labels.map((item) => labelBox(item, textSize));
  const meet = (a: LabelBox, b: LabelBox): boolean =>
    a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
  const touching = boxes.flatMap((box, i) =>
    boxes.slice(i + 1).flatMap((other) => (meet(box, other) ? [`${box.text} and ${other.text}`] : [])),
  );
  const out = boxes.filter(
    ({ left, right, top, bottom }) =>
      left < frame.x || right > frame.x + frame.width || top < frame.y || bottom > frame.y + frame.height,
  );
  return [...touching, ...out.map(({ text }) => `${text} and the edge`)];
}
