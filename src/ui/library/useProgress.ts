import { useEffect, useState } from "react";
import { derivation } from "../../app/derived";
import { requiredMeasurementNames } from "../../core/body/vocabulary";
import type { Fitting } from "../../document/fitting";
import { progressTexts } from "../text/library";

/**
 * What is left to do in a fitting of the list, in a few words. Planning a whole list takes a while, so each is worked
 * out when the browser has nothing better to do, one after the other.
 */
export function useProgress(fitting: Fitting): string {
  const [text, setText] = useState(() => quickText(fitting) ?? known.get(fitting) ?? "");
  useEffect(() => {
    const quick = quickText(fitting) ?? known.get(fitting);
    if (quick !== undefined) {
      setText(quick);
      return;
    }
    return whenIdle(() => {
      const found = plannedText(fitting);
      known.set(fitting, found);
      setText(found);
    });
  }, [fitting]);
  return text;
}

const known = new WeakMap<Fitting, string>();

function quickText({ body }: Fitting): string | undefined {
  const all = requiredMeasurementNames.length;
  const measured = requiredMeasurementNames.filter((name) => body[name] !== undefined).length;
  return measured < all ? progressTexts.girths(measured, all) : undefined;
}

function plannedText(fitting: Fitting): string {
  const { progress } = derivation()(fitting);
  if (progress === null) return progressTexts.waiting;
  const all = progress.pieces.length;
  if (all === 0) return progressTexts.nothing;
  if (progress.pinnedCount === 0) return progressTexts.planned(all);
  return progress.pinnedCount < all ? progressTexts.pinned(progress.pinnedCount, all) : progressTexts.done(all);
}

function whenIdle(work: () => void): () => void {
  if (typeof window.requestIdleCallback === "function") {
    const handle = window.requestIdleCallback(work);
    return () => window.cancelIdleCallback(handle);
  }
  const timer = window.setTimeout(work, 50);
  return () => window.clearTimeout(timer);
}
