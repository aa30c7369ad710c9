import { heightReadings } from "../body/heightReadings";
import { flat, type FlatPoint, type PatternPart } from "../pattern/patternPart";
import { onTarget } from "../tolerances";
import { mm } from "../units";
import type { AboveInput } from "./aboveInput";
import type { BuildAbove } from "./buildAbove";
import { asNear, layersThatFit } from "./layersThatFit";
import { layerShares } from "./ovalLayers";
import { aboveReading } from "./aboveReading";
import { needed } from "./needed";

/**
 * The upper chest, round the body under the arms: panels over the front and over the back from side seam to side seam, each of
 * whole layers, one of which adds π·t to its half. They end above the bust line, whose readings they leave alone.
 */
export function upperChest({ body, form, layer, added, made }: AboveInput): BuildAbove {
  const build = { id: "upperChest-both", kind: "upperChest", side: "both" } as const;
  const read = needed({
    girth: [body.upperChestGirth, "body", "upperChestGirth"],
    front: [body.upperChestFrontArc, "body", "upperChestFrontArc"],
    line: [body.upperChestBelowNape, "body", "upperChestBelowNape"],
    formGirth: [onLine(body, form, form.upperChestGirth), "form", "upperChestGirth"],
    formFront: [onLine(body, form, form.upperChestFrontArc), "form", "upperChestFrontArc"],
  });
  if (read.kind === "unread") return { ...build, act: read.act, readings: [] };
  const { girth, front, line, formGirth, formFront } = read.of;
  const stands = {
    front: formFront + added.front(line),
    back: formGirth - formFront + added.back(line),
  };
  const adds = Math.PI * layer;
  const fit = panelLayers({ front: front - stands.front, back: girth - front - stands.back }, adds);
  const layers = { ...fit, ...made.get(build.id) };
  const reach = reachOf(line, heightReadings(body, form).depths.bust.value);
  const isBuilt = reach !== null && layers.front + layers.back > 0;
  const after = {
    front: stands.front + (isBuilt ? adds * layers.front : 0),
    back: stands.back + (isBuilt ? adds * layers.back : 0),
  };
  const readings = [
    aboveReading("upperChestGirth", [stands.front + stands.back, after.front + after.back, girth], 2 * adds),
    aboveReading("upperChestFrontArc", [stands.front, after.front, front], adds),
    aboveReading("upperChestBackArc", [stands.back, after.back, girth - front], adds),
  ];
  if (layers.front + layers.back === 0) return { ...build, act: { what: "none" }, readings };
  if (reach === null) return { ...build, act: { what: "noRoom" }, readings };
  const cut = (half: "front" | "back", count: number) => panelParts(half, count, stands[half], adds, reach);
  const stacks = (["front", "back"] as const).map((half) => ({
    part: half,
    layers: layers[half],
    oneMore: { upperChestGirth: adds, [`upperChest${half === "front" ? "Front" : "Back"}Arc`]: adds },
  }));
  const parts = [...cut("front", layers.front), ...cut("back", layers.back)];
  const asks = ["upperChestGirth", "upperChestFrontArc"] as const;
  return { ...build, act: { what: "layers", layers: parts, feather: mm(feather), stacks, asks }, readings };
}

interface Halves {
  readonly front: number;
  readonly back: number;
}

/**
 * How many layers each half gets for what it is short of (mm). Neither takes its half or the girth over; where both together would, the
 * half that is nearer to being over gives one up.
 */
function panelLayers(short: Halves, adds: number): Halves {
  const girth = short.front + short.back;
  const layersOf = (half: number) => {
    const person = Math.min(half, girth);
    return layersThatFit((layers) => [{ after: layers * adds, person }]);
  };
  const own = { front: layersOf(short.front), back: layersOf(short.back) };
  if (own.front === 0 || own.back === 0 || (own.front + own.back) * adds - girth <= asNear(adds)) return own;
  const isFrontOver = own.front * adds - short.front > own.back * adds - short.back;
  return isFrontOver ? { ...own, front: own.front - 1 } : { ...own, back: own.back - 1 };
}

/** A reading of the form counts where it was taken on the person's line. */
const onLine = (body: AboveInput["body"], form: AboveInput["form"], reading: number | undefined) =>
  form.upperChestBelowNape !== undefined &&
  body.upperChestBelowNape !== undefined &&
  Math.abs(form.upperChestBelowNape - body.upperChestBelowNape) > onTarget
    ? undefined
    : reading;

interface Reach {
  readonly up: number;
  readonly down: number;
}

/** The last stretch of a layer (mm), and what a full edge keeps from a level line: as the padding of the levels has them. */
const feather = 10;
const clear = 12;
const fullEdge = feather + clear;

/** How far the largest layer reaches above its line (mm): into the armhole, where it is trimmed. A judgement. */
const reachUp = 55;
const mostDown = 60;

/** How far panels reach; null where the bust line lies too close below for a layer to end between. */
function reachOf(line: number, bust: number): Reach | null {
  const down = Math.min(mostDown, bust - line - clear);
  return down < fullEdge ? null : { up: reachUp, down };
}

/** Layers of one half, from the form outwards: each lies on those beneath it, and is cut longer by what they add. */
function panelParts(half: "front" | "back", count: number, stands: number, adds: number, reach: Reach) {
  return layerShares(count, 0).map((share, i): PatternPart => {
    const id = `upperChest-${half}-layer-${i + 1}`;
    const width = stands + adds * i;
    const down = fullEdge + share * (reach.down - fullEdge);
    return panelPart(id, half, width, { up: fullEdge + share * (reach.up - fullEdge), down });
  });
}

/** The layers of one half of an upper chest, from the form outwards. */
export const halfLayers = (layers: readonly PatternPart[], half: "front" | "back"): readonly PatternPart[] =>
  layers.filter(({ id }) => id.startsWith(`upperChest-${half}-`));

/** The width at the upper edge as a share of that on the line, where the armholes take some off at both ends. A judgement. */
const upperShare = 0.78;

function panelPart(id: string, half: "front" | "back", width: number, { up, down }: Reach): PatternPart {
  const [line, top] = [width / 2, (upperShare * width) / 2];
  const corners = [flat(-line, -down), flat(line, -down), flat(line, 0), flat(top, up), flat(-top, up), flat(-line, 0)];
  const edge = (name: string, points: readonly FlatPoint[]) => ({ id: `${id}-${name}`, points, sewnTo: null });
  const at = (i: number) => corners[i] as FlatPoint;
  return {
    id,
    kind: "batting",
    of: "upperChest-both",
    edges: [
      edge("bottom", [at(0), at(1)]),
      edge("left", [at(1), at(2), at(3)]),
      edge("top", [at(3), at(4)]),
      edge("right", [at(4), at(5), at(0)]),
    ],
    lines: [
      {
        kind: "anchor",
        name: half === "front" ? "center front" : "center back",
        points: [flat(0, -down), flat(0, up)],
      },
      { kind: "level", name: "upper chest", points: [flat(-line, 0), flat(line, 0)] },
    ],
    notches: [flat(-line, 0), flat(line, 0)],
    levels: [],
  };
}
