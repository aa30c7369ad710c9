import { coverParts } from "../../core/cover/coverParts";
import { usualAllowances } from "../../core/cover/cuttingLine";
import type { FittedCover } from "../../core/cover/fittedCover";
import { panelNames } from "../../text/patterns";
import { flatPartsScene, type PartsPicture } from "./flatPartsScene";
import type { Scene } from "./scene";

/** The panels of a cover as they lie when it is unrolled, each with its cutting line, level lines and notches. */
export const coverPanelsScene = (cover: FittedCover, how: Omit<PartsPicture, "names">): Scene =>
  flatPartsScene(coverParts(cover, usualAllowances), {
    ...how,
    names: cover.panels.map(({ name }) => panelNames[name]),
  });
