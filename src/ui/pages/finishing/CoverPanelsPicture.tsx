import { useMemo } from "react";
import { coverOfStep } from "../../../app/patterns/coverOfStep";
import { chosenCloth } from "../../../app/steps/chosenCloth";
import { coverParts } from "../../../core/cover/coverParts";
import { usualAllowances } from "../../../core/cover/cuttingLine";
import { panelNames } from "../../../text/patterns";
import { Drawing } from "../../drawing/Drawing";
import { flatPartsScene } from "../../drawing/flatPartsScene";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDerived } from "../../kit/useDerived";

/** The panels of the cover as they lie when it is unrolled, each with its cutting line, level lines and notches. */
export function CoverPanelsPicture({ at: { plan, replan, fitting, words } }: { readonly at: StepAtHand }) {
  const { input } = useDerived();
  const scene = useMemo(() => {
    if (input === null) return null;
    const cover = coverOfStep({ plan, replan }, input, chosenCloth(fitting).cloth, fitting);
    return flatPartsScene(coverParts(cover, usualAllowances), {
      title: words[0],
      names: cover.panels.map(({ name }) => panelNames[name]),
    });
  }, [plan, replan, input, fitting, words]);
  return scene === null ? null : <Drawing scene={scene} />;
}
