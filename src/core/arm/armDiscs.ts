import { flat, type FlatPoint } from "../pattern/patternPart";
import { type FlatPiece, halfTurn } from "./flatPiece";
import type { Oval } from "./oval";

/**
 * A disc that closes an end of an arm, seen from outside with the front of the arm at positive x: its two halves are sewn to the
 * upper and to the under half of the arm. Notches lie where the seams of the arm meet it, and at its top and bottom.
 */
export function discPiece({ breadth, height }: Oval): FlatPiece<"upper" | "under"> {
  const [across, up] = [breadth / 2, height / 2];
  const arc = (from: number): readonly FlatPoint[] =>
    Array.from({ length: halfTurn + 1 }, (_, i) => {
      const angle = Math.PI * (from + i / halfTurn);
      return flat(across * Math.cos(angle), up * Math.sin(angle));
    });
  const [upper, under] = [arc(0), arc(1)];
  const [front, back] = [upper[0] as FlatPoint, under[0] as FlatPoint];
  return {
    edges: [
      { name: "upper", points: [...upper.slice(0, -1), back] },
      { name: "under", points: [...under.slice(0, -1), front] },
    ],
    lines: [],
    notches: [front, back, flat(0, up), flat(0, -up)],
    widths: [],
  };
}

/** A strip from the top of the cap to the shoulder seam, folded along its length: so long and so wide (mm). A judgement. */
const [tabLength, tabWidth] = [160, 100];

/** The tab that the arm hangs by, lying flat. */
export function tabPiece(): FlatPiece<"end" | "right" | "top" | "left"> {
  const corners = [flat(0, 0), flat(tabWidth, 0), flat(tabWidth, tabLength), flat(0, tabLength)];
  const edge = (i: number) => [corners[i] as FlatPoint, corners[(i + 1) % 4] as FlatPoint];
  return {
    edges: [
      { name: "end", points: edge(0) },
      { name: "right", points: edge(1) },
      { name: "top", points: edge(2) },
      { name: "left", points: edge(3) },
    ],
    lines: [],
    notches: [flat(tabWidth / 2, 0), flat(tabWidth / 2, tabLength)],
    widths: [],
  };
}
