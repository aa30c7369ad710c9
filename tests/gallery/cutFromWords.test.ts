import { describe, expect, test } from "vitest";
import { parseLength, tapeStep } from "../../src/core/lengthText";
import type { CutWidth, Piece } from "../../src/core/padding/piece";
import { assert } from "../../src/core/result";
import { lengthWriter } from "../../src/ui/drawing/lengthWriter";
import { at, type PicturePoint } from "../../src/ui/drawing/picturePoint";
import type { ShownOn } from "../../src/ui/drawing/piecePicture";
import { pieceScene } from "../../src/ui/drawing/pieceScene";
import type { Scene } from "../../src/ui/drawing/scene";
import { isEven, outlineWidths, writtenWidths } from "../../src/ui/drawing/writtenWidths";
import { demoPlan, largestPlan } from "./demoPlan";

/** A piece has to be cut from what its drawing says in words and numbers, and from what its description says. */
type Unit = "in" | "cm";
interface Row {
  readonly down: number;
  readonly left: number;
  readonly right: number;
}

const pieces: readonly Piece[] = [...demoPlan.pieces, ...largestPlan.pieces];
const panels = pieces.filter(({ cut }) => cut.shape !== "disc");
const draw = (piece: Piece, unit: Unit, shownOn: ShownOn = "paper"): Scene =>
  pieceScene({ piece, title: "Piece", lengths: lengthWriter(unit), shownOn });

function read(text: string | undefined, unit: Unit): number {
  assert(text !== undefined, "something is written");
  if (/^0 /.test(text)) return 0;
  const length = parseLength(text, unit);
  assert(length.ok, `${text} is a length`);
  return length.value;
}

/** From the words beside the drawing alone. A single column is the whole width, two are the sides of the centre line. */
function rowsDrawn({ labels }: Scene, unit: Unit): readonly Row[] {
  const right = labels.filter(({ anchor }) => anchor === "end").map(({ text }) => read(text, unit));
  const height = labels.find(({ text }) => text.includes("from top to lower edge"))?.text;
  return labels
    .filter(({ anchor }) => anchor === "start")
    .map(({ text }, i) => {
      const [, width, place] =
        /^(\S+(?: \S+)? (?:in|cm))(?:,)? (at the top edge|at the lower edge|.+ down)$/.exec(text) ?? [];
      const down =
        place === "at the top edge"
          ? 0
          : read(place === "at the lower edge" ? height?.split(" from")[0] : place?.replace(" down", ""), unit);
      const across = read(width, unit);
      return right.length === 0
        ? { down, left: across / 2, right: across / 2 }
        : { down, left: across, right: right[i] ?? Number.NaN };
    });
}

/** From the description alone. */
function rowsTold({ description }: Scene, unit: Unit): readonly Row[] {
  const height = /, (.+?) from top to lower edge/.exec(description)?.[1];
  const told = description.slice(description.indexOf(": ") + 2, -1).split(", ");
  return told.map((words) => {
    const even = /^(.+?) wide (.+)$/.exec(words);
    const uneven = /^(.+?) to the wearer’s right and (.+?) to the left of the center line (.+)$/.exec(words);
    const place = even?.[2] ?? uneven?.[3];
    const down =
      place === "at the top edge"
        ? 0
        : read(place === "at the lower edge" ? height : place?.replace(" below the top edge", ""), unit);
    const half = even === null ? 0 : read(even[1], unit) / 2;
    return uneven === null
      ? { down, left: half, right: half }
      : { down, left: read(uneven[2], unit), right: read(uneven[1], unit) };
  });
}

const sides = ["left", "right"] as const;
const edge = (rows: readonly (Row | CutWidth)[], side: "left" | "right"): readonly PicturePoint[] => [
  at(0, 0),
  ...rows.map((row) => at(row[side], "down" in row ? row.down : row.belowTop)),
];

/** The farthest a place on one edge lies from the other edge, taken both ways, every two millimetres. */
function apart(one: readonly PicturePoint[], other: readonly PicturePoint[]): number {
  const farthest = (from: readonly PicturePoint[], to: readonly PicturePoint[]): number =>
    Math.max(
      ...from.slice(1).flatMap((end, i) => {
        const start = from[i] ?? end;
        const steps = Math.max(1, Math.ceil(Math.hypot(end.x - start.x, end.y - start.y) / 2));
        return Array.from({ length: steps + 1 }, (_, k) =>
          nearest(at(start.x + ((end.x - start.x) * k) / steps, start.y + ((end.y - start.y) * k) / steps), to),
        );
      }),
    );
  return Math.max(farthest(one, other), farthest(other, one));
}

const nearest = (place: PicturePoint, line: readonly PicturePoint[]): number =>
  Math.min(
    ...line.slice(1).map((end, i) => {
      const start = line[i] ?? end;
      const [x, y] = [end.x - start.x, end.y - start.y];
      const square = x * x + y * y;
      const share = square === 0 ? 0 : ((place.x - start.x) * x + (place.y - start.y) * y) / square;
      const held = Math.min(1, Math.max(0, share));
      return Math.hypot(place.x - start.x - held * x, place.y - start.y - held * y);
    }),
  );

const error = ({ cut }: Piece, rows: readonly Row[]): number =>
  Math.max(...sides.map((side) => apart(edge(outlineWidths(cut), side), edge(rows, side))));

/**
 * The straight lines from width to width may run four millimetres from the edge. A drop rounded to an eighth of an inch is off by up
 * to 1.6 mm and to half a centimetre by up to 2.5 mm, and half a width by half as much.
 */
const mostApart: { readonly [unit in Unit]: number } = { in: 6, cm: 7 };

describe.each(["in", "cm"] as const)("a piece can be cut from what is written, in %s", (unit) => {
  test.each(["paper", "largePaper", "screen"] as const)("beside its drawing, on %s", (shownOn) => {
    expect(panels.length).toBeGreaterThan(18);
    for (const piece of panels)
      expect(error(piece, rowsDrawn(draw(piece, unit, shownOn), unit)), piece.id).toBeLessThan(mostApart[unit]);
  });

  test("in its description, which tells the same widths", () => {
    for (const piece of panels) {
      const scene = draw(piece, unit);
      expect(rowsTold(scene, unit), piece.id).toEqual(rowsDrawn(scene, unit));
    }
  });

  test("and of a disc its diameter", () => {
    const discs = pieces.flatMap((piece) =>
      piece.cut.shape === "disc" ? [{ piece, across: piece.cut.diameter }] : [],
    );
    expect(discs.length).toBeGreaterThan(7);
    for (const { piece, across } of discs) {
      const written = draw(piece, unit).labels.find(({ text }) => text.endsWith(" across"))?.text;
      expect(Math.abs(read(written?.replace(" across", ""), unit) - across), piece.id).toBeLessThan(2.6);
    }
  });
});

test("the widest and the narrowest place of every piece are written, and its edges", () => {
  const { write } = lengthWriter("in", tapeStep.in);
  for (const piece of panels.filter(({ cut }) => isEven(outlineWidths(cut)))) {
    const whole = outlineWidths(piece.cut).map(({ left, right }) => left + right);
    const words = draw(piece, "in").labels.map(({ text }) => text);
    for (const width of [Math.max(...whole), Math.min(...whole)])
      expect(words.some((text) => text.startsWith(`${write(width)}, `) || text.startsWith(`${write(width)} at `))).toBe(
        true,
      );
    expect(words).toContain(`${write(whole[0] ?? 0)} at the top edge`);
    expect(words).toContain(`${write(whole.at(-1) ?? 0)} at the lower edge`);
  }
});

test("without any one width between its edges a piece would come out otherwise", () => {
  const errors = panels.flatMap((piece) => {
    const rows = rowsDrawn(draw(piece, "in"), "in");
    return rows.slice(1, -1).map((row) =>
      error(
        piece,
        rows.filter((other) => other !== row),
      ),
    );
  });
  expect(errors.length).toBeGreaterThan(100);
  expect(Math.max(...errors)).toBeGreaterThan(30);
  expect(errors.filter((each) => each > mostApart.in).length).toBeGreaterThan(errors.length / 2);
});

/** The form's own curve from bust to underbust has more turns than a line drawn from level to level, on which it was a dozen. */
test("an even piece takes fifteen widths at most", () => {
  for (const { cut, id } of panels)
    if (isEven(outlineWidths(cut))) expect(writtenWidths(cut).length, id).toBeLessThanOrEqual(15);
});

test("a rectangle takes two widths, and a piece without stated widths is one", () => {
  const mm = (length: number) => length as CutWidth["left"];
  const row = (belowTop: number, half: number): CutWidth => ({
    belowTop: mm(belowTop),
    left: mm(half),
    right: mm(half),
  });
  const rows = [0, 20, 40, 60].map((down) => row(down, 100));
  expect(writtenWidths({ shape: "panel", height: mm(60), widths: rows })).toEqual([rows[0], rows[3]]);
  expect(writtenWidths({ shape: "strip", length: mm(200), width: mm(60), widths: [] })).toEqual([
    row(0, 100),
    row(60, 100),
  ]);
  expect(writtenWidths({ shape: "disc", diameter: mm(60) })).toEqual([]);
});
