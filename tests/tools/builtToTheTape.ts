import { type AboveTurn, aboveTurn, layersAfter, type ReadAbove } from "../../src/core/above/aboveTurn";
import type { AboveReadingName, BuildAbove, MadeLayers } from "../../src/core/above/buildAbove";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import { mm } from "../../src/core/units";
import type { PersonAbove } from "./peopleAbove";
import { chance } from "./peopleChance";

/** A build that hands made with layers of another thickness than was thought, and corrected by what the tape read over it. */
export interface BuiltToTheTape {
  readonly planned: BuildAbove;
  /** As it stands at the end, with what is thought of its layers. */
  readonly built: BuildAbove;
  readonly turns: readonly AboveTurn[];
  /** How far each reading is from the person's (mm), as planned and at the end. */
  readonly offFirst: readonly number[];
  readonly offLast: readonly number[];
  readonly last: ReadAbove;
  readonly trueLayer: number;
}

/** More turns than that would be going to and fro. */
const mostTurns = 40;

/** All builds of one person who has them built with layers that are really between three fifths and seven fifths as thick. */
export function builtToTheTape(person: PersonAbove): readonly BuiltToTheTape[] {
  const luck = chance(31_000 + person.seed);
  const trueLayer = person.batting.layerThickness * luck.between(0.6, 1.4);
  const made = new Map<string, MadeLayers>();
  const find = (builds: readonly BuildAbove[], id: string) => builds.find((one) => one.id === id) as BuildAbove;
  const thought = (id: string) => find(buildsAbove(person.body, person.form, person.batting, undefined, made), id);
  const reads = (build: BuildAbove): ReadAbove => {
    const really = buildsAbove(person.body, person.form, { layerThickness: mm(trueLayer) }, undefined, made);
    const asks: readonly AboveReadingName[] = build.act.what === "layers" ? build.act.asks : [];
    return Object.fromEntries(
      find(really, build.id).readings.flatMap(({ name, after }) => (asks.includes(name) ? [[name, after]] : [])),
    );
  };
  const planned = buildsAbove(person.body, person.form, person.batting);
  for (const build of planned) if (build.act.what === "layers") made.set(build.id, layersAfter(build, null));
  return planned.flatMap((first): readonly BuiltToTheTape[] => {
    if (first.act.what !== "layers") return [];
    const turns: AboveTurn[] = [];
    const readFirst = reads(first);
    for (let i = 0; i < mostTurns; i++) {
      const now = thought(first.id);
      const turn = aboveTurn(
        now,
        reads(now),
        turns.some(({ what }) => what === "takeOff"),
      );
      if (turn === null) break;
      turns.push(turn);
      made.set(first.id, layersAfter(now, turn));
    }
    const built = thought(first.id);
    const last = reads(first);
    const off = (read: ReadAbove) =>
      first.readings.flatMap(({ name, person: wanted }) => {
        const value = read[name];
        return value === undefined ? [] : [Math.abs(value - wanted)];
      });
    return [{ planned: first, built, turns, offFirst: off(readFirst), offLast: off(last), last, trueLayer }];
  });
}
