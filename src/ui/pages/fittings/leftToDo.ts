import { derivation } from "../../../app/session/derived";
import { doneness } from "../../../app/progress/doneness";
import { requiredMeasurementNames } from "../../../core/body/vocabulary";
import type { Fitting } from "../../../document/fitting";
import { progressTexts } from "../../../text/library";
import { measurementInSentence } from "../../../text/measurements";

/** Which of the girths that a plan needs are left to measure; nothing once they are all there. Quick enough for any list. */
export function girthsLeft({ body }: Fitting): string | undefined {
  const left = requiredMeasurementNames.filter((name) => body[name] === undefined);
  if (left.length === 0) return undefined;
  if (left.length === requiredMeasurementNames.length) return progressTexts.unmeasured;
  return progressTexts.girthsLeft(left.map((name) => measurementInSentence(name)));
}

/** What is left to do in a fitting with its girths: it plans the whole body, which takes a while. */
export function leftToDo(fitting: Fitting): string {
  const { planning, progress } = derivation()(fitting);
  if (planning.kind === "waiting" || progress === null) return progressTexts.waiting;
  const { pinnedCount } = progress;
  const all = progress.pieces.length;
  const { overall } = doneness(planning.plan, progress);
  if (all === 0) return progressTexts.nothing;
  if (overall === "stopHere" && pinnedCount > 0) return progressTexts.stopHere(pinnedCount, all);
  if (pinnedCount === 0) return progressTexts.planned(all);
  if (pinnedCount < all) return progressTexts.pinned(pinnedCount, all);
  return progressTexts.allPinned[overall === "stopHere" ? "done" : overall](all);
}
