import { useMemo } from "react";
import type { Scene } from "./scene";
import { tapeGround, type TapePicture, tapeScene } from "./tapeScene";

/** A drawn tape of which, while a reading is typed, only what the letter moves is made anew. */
export function useTapeScene({ name, wanted, now, isEstimated, span, words, lengths }: TapePicture): Scene {
  const ground = useMemo(
    () => tapeGround({ wanted, isEstimated, span, lengths }),
    [wanted, isEstimated, span, lengths],
  );
  return useMemo(
    () => tapeScene({ name, wanted, now, isEstimated, span, words, lengths }, ground),
    [name, wanted, now, isEstimated, span, words, lengths, ground],
  );
}
