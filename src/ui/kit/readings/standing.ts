import { isConfirmed, type NowReading } from "../../../app/progress/padProgress";
import type { Standing } from "../../../text/padding";

/** What is behind a figure of the tape, as the sentences tell it: a reading that follows from two others is one. */
export const standingOf = (now: NowReading): Standing =>
  isConfirmed(now) ? "read" : now.kind === "bare" ? "bare" : "expected";
