import { type AboveTurn, aboveTurn, type ReadAbove } from "../../core/above/aboveTurn";
import { type BuildAbove, type MadeLayers, stackParts } from "../../core/above/buildAbove";
import { type Fitting, readLengths } from "../../document/fitting";

type Log = Pick<Fitting, "work" | "unit">;

/** How many layers lie on each build, as far as the log tells. */
export const layersMade = ({ work }: Pick<Log, "work">): ReadonlyMap<string, MadeLayers> =>
  new Map(
    work.flatMap((entry) =>
      entry.did === "builtAbove" && entry.layers !== undefined ? [[entry.build, entry.layers] as const] : [],
    ),
  );

/** What the readings over the builds as they are ask for, in the order of the work. */
export const turnsAbove = (
  builds: readonly BuildAbove[],
  log: Log,
): readonly { readonly build: BuildAbove; readonly turn: AboveTurn }[] =>
  builds.flatMap((build) => {
    const read = readAbove(build.id, log);
    const turn = read === null ? null : aboveTurn(build, read, wasTakenOff(build.id, log));
    return turn === null ? [] : [{ build, turn }];
  });

/** What the tape read over a build when it was last built or changed (mm); null where it was not read. */
export function readAbove(id: string, { work, unit }: Log): ReadAbove | null {
  const last = work.findLast((entry) => entry.did === "builtAbove" && entry.build === id);
  if (last?.did !== "builtAbove" || last.readings === undefined) return null;
  const read = readLengths(last.readings, unit);
  return Object.keys(read).length === 0 ? null : read;
}

/** Whether a layer was ever taken off it again. */
function wasTakenOff(id: string, { work }: Pick<Log, "work">): boolean {
  const made = work.flatMap((entry) =>
    entry.did === "builtAbove" && entry.build === id && entry.layers !== undefined ? [entry.layers] : [],
  );
  return made.some((layers, i) =>
    stackParts.some((part) => (layers[part] ?? 0) < (made[i - 1]?.[part] ?? layers[part] ?? 0)),
  );
}
