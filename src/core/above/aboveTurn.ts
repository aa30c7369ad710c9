import { tapeAgreement } from "../tolerances";
import { mm, type Millimetres } from "../units";
import type { AboveReadingName, AboveStack, BuildAbove, MadeLayers, StackPart } from "./buildAbove";
import { asNear, mostLayers } from "./layersThatFit";

/** One layer more over all, or the outermost one off, because a reading over the build asks for it. */
export interface AboveTurn {
  readonly what: "addLayer" | "takeOff";
  readonly part: StackPart;
  readonly because: AboveReadingName;
  /** By how much that reading is short of the person's, or over it (mm). */
  readonly amount: Millimetres;
}

/** What the tape reads over a build as it was made (mm); a reading that was not taken is missing. */
export type ReadAbove = { readonly [name in AboveReadingName]?: number };

/**
 * What the readings over a build as it stands ask for; null where they agree as near as whole layers come, or no layer helps.
 * A layer comes off where a reading is further over the person's than padding that is done may be. One more goes on
 * where a reading is short and none goes over for it: those that were not read are taken to be as expected. After a layer
 * `wasTakenOff` none goes on again, so that hands never go to and fro.
 */
export function aboveTurn(build: BuildAbove, read: ReadAbove, wasTakenOff: boolean): AboveTurn | null {
  if (build.act.what !== "layers") return null;
  const short = missing(build, withBack(read));
  const ofPart = (part: StackPart) => short.reduce((sum, one) => sum + (one.part === part ? one.amount : 0), 0);
  const over = short.filter(
    ({ isRead, amount, oneLayer, layers }) => layers > 0 && isRead && -amount > within(oneLayer),
  );
  // Of two stacks that share the reading, the one that is over more itself.
  const [tooMuch] = over.toSorted((one, other) => one.amount - other.amount || ofPart(one.part) - ofPart(other.part));
  if (tooMuch !== undefined) {
    const { part, name, amount } = tooMuch;
    return { what: "takeOff", part, because: name, amount: mm(-amount) };
  }
  if (wasTakenOff) return null;
  for (const { part, layers } of build.act.stacks) {
    const own = short.filter((one) => one.part === part);
    const hasRoom = own.every(({ amount, oneLayer }) => oneLayer - amount <= asNear(oneLayer));
    const [least] = own
      .filter(({ isRead, amount, oneLayer }) => isRead && amount > within(oneLayer))
      .toSorted((one, other) => other.amount - one.amount);
    if (layers < mostLayers && hasRoom && least !== undefined)
      return { what: "addLayer", part, because: least.name, amount: mm(least.amount) };
  }
  return null;
}

/** The back of the upper chest is its girth less its front. */
const withBack = (read: ReadAbove): ReadAbove =>
  read.upperChestGirth === undefined || read.upperChestFrontArc === undefined
    ? read
    : { ...read, upperChestBackArc: read.upperChestGirth - read.upperChestFrontArc };

/** How far off a reading may be that one layer changes by so much (mm). */
const within = (oneLayer: number): number => Math.max(asNear(oneLayer), tapeAgreement);

interface Missing {
  readonly part: StackPart;
  readonly layers: number;
  readonly name: AboveReadingName;
  readonly isRead: boolean;
  /** What is short of the person's (mm); negative where it is over. */
  readonly amount: number;
  /** What one layer more on that stack makes up of it. */
  readonly oneLayer: number;
}

/** What each reading of each stack that has layers, or may get some, is short of. */
function missing(build: BuildAbove, read: ReadAbove): readonly Missing[] {
  const stacks: readonly AboveStack[] = build.act.what === "layers" ? build.act.stacks : [];
  return stacks.flatMap(({ part, layers, oneMore }) =>
    build.readings.flatMap((reading): readonly Missing[] => {
      const change = oneMore[reading.name];
      if (change === undefined) return [];
      const sense = change < 0 ? -1 : 1;
      const stands = read[reading.name] ?? reading.after;
      return [
        {
          part,
          layers,
          name: reading.name,
          isRead: read[reading.name] !== undefined,
          amount: sense * (reading.person - stands),
          oneLayer: Math.abs(change),
        },
      ];
    }),
  );
}

/**
 * What the tape should read over a build with so many layers on each stack (mm): what was read over it as it is, or would be, and
 * what the layers more or less change.
 */
export function readingWith(
  build: BuildAbove,
  read: ReadAbove,
  layers: MadeLayers,
  name: AboveReadingName,
): Millimetres {
  const stands = withBack(read)[name] ?? build.readings.find((reading) => reading.name === name)?.after ?? 0;
  const stacks = build.act.what === "layers" ? build.act.stacks : [];
  return mm(
    stacks.reduce(
      (sum, stack) => sum + (stack.oneMore[name] ?? 0) * ((layers[stack.part] ?? stack.layers) - stack.layers),
      stands,
    ),
  );
}

/** How many layers lie on each stack of a build after such a turn, or as it stands; empty where a build has none. */
export function layersAfter({ act }: BuildAbove, turn: AboveTurn | null): MadeLayers {
  const more = turn === null ? 0 : turn.what === "addLayer" ? 1 : -1;
  const stacks = act.what === "layers" ? act.stacks : [];
  return Object.fromEntries(stacks.map(({ part, layers }) => [part, layers + (part === turn?.part ? more : 0)]));
}
