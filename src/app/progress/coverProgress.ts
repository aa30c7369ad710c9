import { type ByLevel, type LevelName, levelNames } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import type { Fitting } from "../../document/fitting";
import { lastChange } from "./lastChange";
import { isConfirmed, type LevelNow, type NowReading, type PadProgress, padProgress } from "./padProgress";

/**
 * How far the padding has come under its cover. The cover presses the batting in, so what was read before it went on
 * is only expected of it; and a piece pinned, trimmed or taken off since means that the cover was off again.
 */
export function coverProgress(
  plan: Plan,
  progress: PadProgress,
  { work, unit }: Pick<Fitting, "work" | "unit">,
): PadProgress {
  const changed = lastChange(work);
  const covered = work.filter((entry, i) => entry.did !== "measured" || (entry.over === "cover" && i > changed));
  const over = padProgress(plan, { work: covered, unit }).now;
  const now = Object.fromEntries(
    levelNames.map((level: LevelName): readonly [LevelName, LevelNow] => [
      level,
      {
        girth: coverReading(over[level].girth, progress.now[level].girth),
        frontArc: coverReading(over[level].frontArc, progress.now[level].frontArc),
        backArc: coverReading(over[level].backArc, progress.now[level].backArc),
      },
    ]),
  ) as ByLevel<LevelNow>;
  return { ...progress, now };
}

const coverReading = (over: NowReading, before: NowReading): NowReading =>
  isConfirmed(over) ? over : { kind: "expected", value: before.value };
