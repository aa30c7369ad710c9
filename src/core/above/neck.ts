import { flat, type PatternPart } from "../pattern/patternPart";
import { mm } from "../units";
import type { AboveInput } from "./aboveInput";
import type { BuildAbove } from "./buildAbove";
import { layersThatFit } from "./layersThatFit";
import { layerShares } from "./ovalLayers";
import { aboveReading } from "./aboveReading";
import { needed } from "./needed";

/** Narrow wraps around the root of the neck, their ends meeting at center back; each adds 2π·t to what the tape reads there. */
export function neck({ body, form, layer, made }: AboveInput): BuildAbove {
  const build = { id: "neck-both", kind: "neck", side: "both" } as const;
  const read = needed({
    girth: [body.neckGirth, "body", "neckGirth"],
    formGirth: [form.neckGirth, "form", "neckGirth"],
  });
  if (read.kind === "unread") return { ...build, act: read.act, readings: [] };
  const { girth, formGirth } = read.of;
  const adds = 2 * Math.PI * layer;
  const count =
    made.get(build.id)?.whole ?? layersThatFit((layers) => [{ after: formGirth + adds * layers, person: girth }]);
  const readings = [aboveReading("neckGirth", [formGirth, formGirth + adds * count, girth], adds)];
  if (count === 0) return { ...build, act: { what: "none" }, readings };
  const cut = (wraps: number) =>
    layerShares(wraps, lowest / tallest).map((share, i) =>
      stripPart(`${build.id}-layer-${i + 1}`, build.id, formGirth + adds * i, share * tallest),
    );
  const stacks = [{ part: "whole" as const, layers: count, oneMore: { neckGirth: adds } }];
  return {
    ...build,
    act: { what: "layers", layers: cut(count), feather: mm(10), stacks, asks: ["neckGirth"] },
    readings,
  };
}

/** How tall the wraps are (mm): a taller strip does not lie on the slope of a neck. Common practice, no source. */
const tallest = 40;
const lowest = 25;

/** A straight strip, center front at x = 0. */
function stripPart(id: string, of: string, length: number, height: number): PatternPart {
  const [left, right] = [length / 2, -length / 2];
  const edge = (name: string, points: PatternPart["edges"][number]["points"], sewnTo: string | null = null) => ({
    id: `${id}-${name}`,
    points,
    sewnTo: sewnTo === null ? null : `${id}-${sewnTo}`,
  });
  return {
    id,
    kind: "batting",
    of,
    edges: [
      edge("bottom", [flat(right, 0), flat(left, 0)]),
      edge("left", [flat(left, 0), flat(left, height)], "right"),
      edge("top", [flat(left, height), flat(right, height)]),
      edge("right", [flat(right, height), flat(right, 0)], "left"),
    ],
    lines: [{ kind: "anchor", name: "center front", points: [flat(0, 0), flat(0, height)] }],
    notches: [],
    levels: [],
  };
}
