import type { Step } from "./step";

/**
 * What each step of a job is called in a file, in the order of the steps: its name, with the piece or the build it is about, and with a number
 * from the second time on that the same one comes. A key stays the same while the pieces before it change.
 */
export function stepKeys(steps: readonly Step[]): readonly string[] {
  const times = new Map<string, number>();
  return steps.map((step) => {
    const key = [step.do, aboutOf(step)].filter((part) => part !== "").join("/");
    const time = (times.get(key) ?? 0) + 1;
    times.set(key, time);
    return time === 1 ? key : `${key}/${time}`;
  });
}

/** Lines are carried out over what was pinned last; what is basted is whatever is pinned by then. */
function aboutOf({ do: name, piece, build, pieceIds }: Step): string {
  if (build !== null) return build.id;
  return name === "carry-lines" ? (pieceIds.at(-1) ?? "") : (piece?.id ?? "");
}
