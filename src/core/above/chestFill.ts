import { belowNape } from "../body/linePlace";
import { type AboveInput, meanThickness } from "./aboveInput";
import type { BuildAbove } from "./buildAbove";
import { isRoomFor, mostLayers, type ReadWith } from "./layersThatFit";
import { aboveFeather, layerShares, type Oval, ovalParts, ovalThickness } from "./ovalLayers";
import { aboveReading } from "./aboveReading";
import { tautPath } from "./tautPath";
import { acrossLength } from "./upperBack";
import { needed, sideLength } from "./needed";

/** Left and right of something, in that order. */
type Pair<Value> = readonly [left: Value, right: Value];
const sides = ["left", "right"] as const;

/**
 * What fills the hollow between shoulder and bust, left and right apart: an oval along the way from the side neck to the apex,
 * in whole layers, as many as both that tape and the tape across the chest allow. A taut tape bridges a hollow, so the
 * tape to the apex says little until the fill stands out; the tape across the chest holds it back.
 */
export function chestFill(input: AboveInput): readonly BuildAbove[] {
  const grounds = sides.map((side) => sideGround(input, side)) as unknown as Pair<SideGround>;
  const readable = grounds.map((ground) =>
    ground.kind === "read" ? ground : null,
  ) as unknown as Pair<ReadSide | null>;
  const fit = fillLayers(readable, input.layer);
  const counts = sides.map(
    (side, i) => input.made.get(`chestFill-${side}`)?.whole ?? fit[i as 0 | 1],
  ) as unknown as Pair<number>;
  return grounds.map((ground, i): BuildAbove => {
    const side = sides[i as 0 | 1];
    const build = { id: `chestFill-${side}`, kind: "chestFill", side } as const;
    if (ground.kind === "unread") return { ...build, act: ground.act, readings: [] };
    const count = counts[i as 0 | 1];
    const { readings, oneMore } = fillReadings(readable, counts, i as 0 | 1, input.layer);
    if (count === 0) return { ...build, act: { what: "none" }, readings };
    const cut = (layers: number) => ovalParts(build.id, ground.oval, layerShares(layers), "side neck to apex");
    const stacks = [{ part: "whole" as const, layers: count, oneMore: oneMore }];
    // Before the right side is built, too, the tape across the chest says nothing of either.
    const isLast = side === "right" || counts[1] === 0;
    const asks = [wayName[i as 0 | 1], ...(isLast ? (["acrossChest"] as const) : [])];
    return { ...build, act: { what: "layers", layers: cut(count), feather: aboveFeather, stacks, asks }, readings };
  });
}

interface ReadSide {
  readonly kind: "read";
  /** The straight way from the side neck to the apex of the form as it stands. */
  readonly way: number;
  readonly length: number;
  readonly across: number;
  readonly formAcross: number;
  readonly oval: Oval;
}
type SideGround = ReadSide | Extract<ReturnType<typeof needed>, { readonly kind: "unread" }>;

/** The side neck point lies this far below the nape (mm): US Army 1988, women, mean 11.5 (shared/body-data.json). */
export const sideNeckBelowNape = 11.5;

function sideGround({ body, form, added }: AboveInput, side: "left" | "right"): SideGround {
  const read = needed({
    length: [sideLength(body, side, "shoulderToApex"), "body", "shoulderToApex"],
    bust: [belowNape(body, "bust"), "body", "bustBelowNape"],
    across: [body.acrossChest, "body", "acrossChest"],
    formLength: [sideLength(form, side, "shoulderToApex"), "form", "shoulderToApex"],
    formBust: [belowNape(form, "bust"), "form", "bustBelowNape"],
    formAcross: [form.acrossChest, "form", "acrossChest"],
  });
  if (read.kind === "unread") return read;
  const { length, bust, across, formLength, formBust, formAcross } = read.of;
  // The form's tape is taken to run straight; its apex is moved to the person's height, and out by what the padding adds there.
  const down = formBust - sideNeckBelowNape;
  const out = Math.sqrt(Math.max(0, formLength ** 2 - down ** 2)) + meanThickness(added.front(bust));
  const way = Math.hypot(bust - sideNeckBelowNape, out);
  return { kind: "read", way, length, across, formAcross, oval: fillOval(way, formAcross) };
}

/**
 * The oval: its peak in the middle of the way, where the tape across the chest crosses it, from near the shoulder to above the bust
 * line; within each side's half of the chest. Judgements.
 */
const fillReach = { up: 0.4, down: 0.36, half: 0.2 } as const;
const fillOval = (way: number, across: number): Oval => ({
  up: fillReach.up * way,
  down: fillReach.down * way,
  half: fillReach.half * across,
});

/**
 * Through what angle a chest turns from arm crease to arm crease: the middle of fifteen shapes of the tests, within nine tenths of
 * their half-breadth, 140 to 200 mm below the nape, is 2.0 (1.3 to 2.5).
 */
export const chestTurn = 2;

function wayLength({ way, oval }: ReadSide, count: number, layer: number): number {
  const shares = layerShares(count);
  const steps = Math.ceil(way / 4);
  return tautPath(
    Array.from({ length: steps + 1 }, (_, i) => {
      const along = (way * i) / steps;
      return { x: along, out: ovalThickness(oval, shares, layer, along - way / 2) };
    }),
  );
}

/** The tape across the chest over the fills of both sides; a side that is not built adds nothing. */
function chestLength(grounds: Pair<ReadSide | null>, counts: Pair<number>, layer: number): number {
  const across = (grounds[0] ?? grounds[1])?.formAcross ?? 0;
  const shares = counts.map((count) => layerShares(count));
  return acrossLength(across, chestTurn, (aside) => {
    const side = aside > 0 ? 0 : 1;
    const oval = grounds[side]?.oval;
    return oval === undefined ? 0 : ovalThickness(oval, shares[side] ?? [], layer, 0, Math.abs(aside) - across / 4);
  });
}

/** How many layers each side gets: both grow together while each side's own tape and the tape across the chest allow it. */
function fillLayers(grounds: Pair<ReadSide | null>, layer: number): Pair<number> {
  let counts: Pair<number> = [0, 0];
  for (;;) {
    const next = counts.map((count, i) => {
      const ground = grounds[i as 0 | 1];
      if (ground === null || count >= mostLayers) return count;
      const read = (layers: number): readonly ReadWith[] => [
        { after: wayLength(ground, layers, layer), person: ground.length },
      ];
      return isRoomFor(read(count), read(count + 1)) ? count + 1 : count;
    }) as unknown as Pair<number>;
    if (next[0] === counts[0] && next[1] === counts[1]) return counts;
    const across = (of: Pair<number>): readonly ReadWith[] => [
      { after: chestLength(grounds, of, layer), person: (grounds[0] ?? grounds[1])?.across ?? 0 },
    ];
    if (!isRoomFor(across(counts), across(next))) return counts;
    counts = next;
  }
}

function fillReadings(grounds: Pair<ReadSide | null>, counts: Pair<number>, side: 0 | 1, layer: number) {
  const ground = grounds[side] as ReadSide;
  const count = counts[side];
  const way = (layers: number) => wayLength(ground, layers, layer);
  /** With so many layers more or less on every side that can be read. */
  const across = (more: number) =>
    chestLength(grounds, [Math.max(0, counts[0] + more), Math.max(0, counts[1] + more)], layer);
  const name = wayName[side];
  const adds = (read: (more: number) => number) => Math.max(read(1) - read(0), read(0) - read(-1));
  /** On this side alone. */
  const acrossMore = chestLength(grounds, side === 0 ? [count + 1, counts[1]] : [counts[0], count + 1], layer);
  const readings = [
    aboveReading(
      name,
      [way(0), way(count), ground.length],
      adds((more) => way(Math.max(0, count + more))),
    ),
    aboveReading("acrossChest", [chestLength(grounds, [0, 0], layer), across(0), ground.across], adds(across)),
  ];
  return { readings, oneMore: { [name]: way(count + 1) - way(count), acrossChest: acrossMore - across(0) } };
}

const wayName = ["leftShoulderToApex", "rightShoulderToApex"] as const;
