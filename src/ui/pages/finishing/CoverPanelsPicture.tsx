import { useMemo } from "react";
import { coverOfStep } from "../../../app/patterns/coverOfStep";
import { chosenCloth } from "../../../app/steps/chosenCloth";
import { Drawing } from "../../drawing/Drawing";
import { coverPanelsScene } from "../../drawing/coverPanelsScene";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDerived } from "../../kit/useDerived";

/** The panels of the cover as they lie when it is unrolled, each with its cutting line, level lines and notches. */
export function CoverPanelsPicture({ at: { plan, replan, fitting, words } }: { readonly at: StepAtHand }) {
  const { input } = useDerived();
  const scene = useMemo(() => {
    if (input === null) return null;
    const cover = coverOfStep({ plan, replan }, input, chosenCloth(fitting).cloth, fitting);
    return coverPanelsScene(cover, { title: words[0] });
  }, [plan, replan, input, fitting, words]);
  return scene === null ? null : <Drawing scene={scene} />;
}
