import { useMemo } from "react";
import { Drawing } from "../Drawing";
import { type CoverView, coverScene } from "./coverScene";

/** The covered form, or the padded one without a cover, with what the hands are on. */
export function CoverPicture({ levels, on, doing, title, isCovered }: Omit<CoverView, "tape">) {
  const scene = useMemo(
    () => coverScene({ levels, on, doing, title, isCovered }),
    [levels, on, doing, title, isCovered],
  );
  return <Drawing scene={scene} />;
}
