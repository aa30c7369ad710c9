import { useMemo } from "react";
import type { PlannedPiece } from "../../../core/plan/plan";
import { pieceName } from "../../../text/plan";
import { stopWords } from "../../../text/stops";
import { Drawing } from "../../drawing/Drawing";
import { closedPath, segment } from "../../drawing/pathText";
import { at, label, mark, type PicturePoint, type Scene } from "../../drawing/scene";

/** How the layers lie on each other: the smallest on the form, the largest outermost. */
export function StackOfPiece({ piece }: { readonly piece: PlannedPiece }) {
  const scene = useMemo(() => {
    const widths = piece.layers.map(({ rows }) => Math.max(...rows.map(({ start, end }) => end - start)));
    const widest = Math.max(...widths);
    return stackScene({
      // Layers differ by little; drawn a third further apart they can be told.
      shares: widths.map((width, i) => width / widest - 0.04 * (widths.length - 1 - i)),
      title: pieceName(piece),
      description: stopWords.layers,
      words: { outermost: stopWords.stack.outermost, inmost: stopWords.stack.inmost },
    });
  }, [piece]);
  return <Drawing scene={scene} />;
}

/** Layers at a slant, the smallest lowest and the largest on top, with threads through all but the outermost. */
interface StackPicture {
  /** How wide each layer is next to the outermost, from the form outwards. */
  readonly shares: readonly number[];
  readonly title: string;
  readonly description: string;
  readonly words: { readonly outermost: string; readonly inmost: string };
}

function stackScene({ shares, title, description, words }: StackPicture): Scene {
  const count = shares.length;
  const height = (count - 1) * apart + thick + 2 * rise + 30;
  const placed = shares.map((share, i) => ({ half: (wide / 2) * share, y: height - 26 - thick - i * apart }));
  const basted = placed.slice(0, -1);
  const [top, bottom] = [placed.at(-1), placed[0]];
  const [first, last] = [basted[0], basted.at(-1)];
  const threads = first === undefined || last === undefined || basted.length < 2 ? [] : [-0.35, 0.35];
  return {
    title,
    description,
    frame: { x: -wide / 2 - 16, y: -20, width: wide + 190, height: height + 20 },
    textSize: 21,
    marks: [
      ...placed.flatMap(({ half, y }, i) => [
        mark("battingOn", side(half, y)),
        mark(i === count - 1 ? "battingNow" : "battingOn", face(half, y)),
      ]),
      mark(
        "thread",
        ...threads.map((share) =>
          segment(at(share * wide, (last?.y ?? 0) - 4), at(share * wide * 0.94, (first?.y ?? 0) + thick + 6)),
        ),
      ),
    ],
    labels: [
      ...(top === undefined ? [] : [label("name", at(wide / 2 + 30, top.y), words.outermost, "start")]),
      ...(bottom === undefined || count < 2
        ? []
        : [label("name", at(wide / 2 + 30, bottom.y + 4), words.inmost, "start")]),
    ],
  };
}

const [wide, apart, thick, rise] = [300, 50, 13, 22] as const;

const corners = (half: number, y: number): readonly PicturePoint[] => [
  at(-half - 6, y + rise * 0.4),
  at(-half * 0.78, y - rise),
  at(half + 6, y - rise * 0.7),
  at(half * 0.84, y + rise),
];

const face = (half: number, y: number): string => closedPath(corners(half, y));

/** The cut edge towards the reader. */
function side(half: number, y: number): string {
  const [left, , right, front] = corners(half, y) as [PicturePoint, PicturePoint, PicturePoint, PicturePoint];
  const down = ({ x, y }: PicturePoint) => at(x, y + thick);
  return closedPath([left, front, right, down(right), down(front), down(left)]);
}
