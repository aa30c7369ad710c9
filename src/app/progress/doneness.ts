import type { LevelName } from "../../core/body/vocabulary";
import type { Plan, PlannedLevel } from "../../core/plan/plan";
import { homeTape, tapeAgreement } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";
import { isConfirmed, type LevelNow, type PadProgress, type TapePart, tapeParts } from "./padProgress";

/**
 * Whether the padding is done: each level against the body, as near as a tape at home can tell, and one answer for all.
 * Only what was measured of the body is judged; an estimated arc asks nothing.
 */
export interface Doneness {
  readonly levels: readonly LevelDoneness[];
  /**
   * Stop here: every level reads right although pieces are left to pin. Unread: all seems there, but some of it is only
   * expected.
   */
  readonly overall: "done" | "stopHere" | "unread" | "notYet";
}

export interface LevelDoneness {
  readonly level: LevelName;
  /** asNearAsItGets: the plan itself says that padding cannot reach it, and it stands where the plan ends. */
  readonly kind: "there" | "notYet" | "over" | "asNearAsItGets";
  /** Where it is furthest off, and by how much. */
  readonly part: TapePart;
  readonly amount: Millimetres;
  /** How much of what is judged here the tape read since the last piece went over it; nothing else confirms it. */
  readonly read: "all" | "girthOnly" | "none";
}

export function doneness(plan: Plan, progress: PadProgress): Doneness {
  const levels = plan.levels.map((level) => levelDoneness(level, progress.now[level.name]));
  const isOff = levels.some(({ kind }) => kind === "notYet" || kind === "over");
  const isRead = levels.every(({ read }) => read === "all");
  if (isOff) return { levels, overall: "notYet" };
  if (progress.next !== null) return { levels, overall: isRead ? "stopHere" : "notYet" };
  return { levels, overall: isRead ? "done" : "unread" };
}

function levelDoneness({ name, body, predicted }: PlannedLevel, now: LevelNow): LevelDoneness {
  const measured = tapeParts.filter((part) => body[part].kind === "measured");
  const parts = (measured.length > 0 ? measured : (["girth"] as const)).map((part) => {
    const off = now[part].value - body[part].value;
    const shortfall = predicted[part] - body[part].value;
    const isShort = Math.abs(shortfall) > tapeAgreement;
    return { part, off, beyond: isShort ? off - shortfall : off };
  });
  const worst = parts.reduce((most, one) => (Math.abs(one.beyond) > Math.abs(most.beyond) ? one : most));
  const furthest = parts.reduce((most, one) => (Math.abs(one.off) > Math.abs(most.off) ? one : most));
  const judged = parts.map(({ part }) => part);
  const read = judged.every((part) => isConfirmed(now[part])) ? "all" : isConfirmed(now.girth) ? "girthOnly" : "none";
  const told = Math.abs(worst.beyond) > homeTape ? worst : furthest;
  const kind =
    Math.abs(worst.beyond) > homeTape
      ? worst.beyond > 0
        ? "over"
        : "notYet"
      : Math.abs(furthest.off) > homeTape
        ? "asNearAsItGets"
        : "there";
  return { level: name, kind, part: told.part, amount: mm(Math.abs(told.off)), read };
}
