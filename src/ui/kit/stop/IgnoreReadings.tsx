import type { UnusedReading } from "../../../app/session/commands";
import { learningWords } from "../../../text/learning";
import { tuneWays } from "../../../text/stops";
import { useDoAndSay } from "../shelf/useDone";

/** Lets go of readings that ask for a correction, as if they had not been taken. */
export function IgnoreReadings({ readings }: { readonly readings: readonly UnusedReading[] }) {
  const doAndSay = useDoAndSay();
  return (
    <button
      type="button"
      className="patch patch-plain"
      onClick={() => doAndSay({ does: "ignore", readings }, learningWords.leftOut)}
    >
      {tuneWays.ignore}
    </button>
  );
}
