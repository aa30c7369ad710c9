import { allowanceLine } from "../pattern/allowanceLine";
import { flat, type PatternLine, type PatternPart } from "../pattern/patternPart";
import { mm } from "../units";
import { discPiece, tabPiece } from "./armDiscs";
import { type FlatPiece, mirroredPiece } from "./flatPiece";
import { onePiece } from "./onePiece";
import type { SoftArm } from "./softArm";
import { twoPieces } from "./twoPieces";

/** What an arm is cut from: cloth for the first six, card for the last two. */
export const armPartNames = ["upper", "under", "whole", "capDisc", "wristDisc", "tab", "capCard", "wristCard"] as const;
export type ArmPartName = (typeof armPartNames)[number];

/** A part of an arm at its true size, and which it is. */
export interface ArmPart {
  readonly name: ArmPartName;
  readonly part: PatternPart;
}

/** Beyond every sewing line (mm): 3/8 in, common practice, no source. */
export const armAllowance = 10;

/**
 * Every part of an arm as it is cut, right side up, its outline the sewing line (mm, y upwards): the under piece is drawn as a mirror
 * shows it beside the upper one, so that right sides meet. Edges of one seam name each other. A part of the other arm is
 * the mirror image of this one's.
 */
export function armParts(arm: SoftArm): readonly ArmPart[] {
  const cloth = arm.wish.cut === "twoPieces" ? twoParts(arm) : [{ name: "whole" as const, piece: whole(arm) }];
  const discs = [
    { name: "capDisc" as const, piece: facing(arm, discPiece(arm.capDisc)) },
    { name: "wristDisc" as const, piece: facing(arm, discPiece(arm.wristDisc)) },
    { name: "tab" as const, piece: tabPiece() },
  ];
  const cards = [
    { name: "capCard" as const, piece: facing(arm, discPiece(arm.capCard)) },
    { name: "wristCard" as const, piece: facing(arm, discPiece(arm.wristCard)) },
  ];
  return [...cloth, ...discs, ...cards].map(({ name, piece }) => ({ name, part: patternPart(arm, name, piece) }));
}

/** Seen from outside, the front of a left arm's upper half lies to the left, and that of its under half to the right. */
function twoParts(arm: SoftArm) {
  const { upper, under } = twoPieces(arm);
  return [
    { name: "upper" as const, piece: arm.wish.side === "left" ? mirroredPiece(upper) : upper },
    { name: "under" as const, piece: facing(arm, under) },
  ];
}

/** Seen from behind, the upper half of a left arm lies to the left of its back line. */
const whole = (arm: SoftArm): FlatPiece => (arm.wish.side === "left" ? mirroredPiece(onePiece(arm)) : onePiece(arm));

/** What faces the body: the front of a left arm lies to the right. */
const facing = ({ wish }: SoftArm, piece: FlatPiece): FlatPiece =>
  wish.side === "left" ? piece : mirroredPiece(piece);

function patternPart(arm: SoftArm, name: ArmPartName, piece: FlatPiece): PatternPart {
  const of = `${arm.wish.side}Arm`;
  const isCard = name === "capCard" || name === "wristCard";
  const seams = seamsOf(arm);
  return {
    id: `${of}-${name}`,
    kind: "arm",
    of,
    edges: piece.edges.map((edge) => {
      const own = `${name}-${edge.name}`;
      const joined = seams.find((seam) => seam.includes(own))?.find((other) => other !== own);
      return {
        id: `${of}-${own}`,
        points: edge.points,
        sewnTo: joined === undefined ? null : `${of}-${joined}`,
        ...(arm.capEase > 0 && joined?.startsWith("capDisc") ? { gathered: arm.capEase } : {}),
      };
    }),
    lines: isCard ? piece.lines : [cutLine(piece), ...piece.lines],
    notches: piece.notches,
    levels: piece.widths.map(({ line, length }) => ({ name: line, length: mm(length) })),
  };
}

/** Two edges each, by part and edge. */
const seamsOf = ({ wish }: SoftArm): readonly (readonly [string, string])[] =>
  wish.cut === "twoPieces"
    ? [
        ["upper-front", "under-front"],
        ["upper-back", "under-back"],
        ["upper-cap", "capDisc-upper"],
        ["under-cap", "capDisc-under"],
        ["upper-wrist", "wristDisc-upper"],
        ["under-wrist", "wristDisc-under"],
      ]
    : [
        ["whole-upperFront", "whole-underFront"],
        ["whole-upperCap", "capDisc-upper"],
        ["whole-underCap", "capDisc-under"],
        ["whole-upperWrist", "wristDisc-upper"],
        ["whole-underWrist", "wristDisc-under"],
      ];

function cutLine({ edges }: FlatPiece): PatternLine {
  const clockwise = edges.toReversed().map(({ points }) => ({ line: points.toReversed(), by: armAllowance }));
  const cut = allowanceLine(clockwise).map(({ x, y }) => flat(x, y));
  return { kind: "cut", name: "cut", points: [...cut, ...cut.slice(0, 1)] };
}
