import { memo, useMemo } from "react";
import { Drawing } from "./Drawing";
import { type WorthPicture, worthScene } from "./worthScene";

/** What one layer is believed to be worth, drawn against the readings. */
export const WorthPlot = memo(function WorthPlot({ before, now, readings, lengths }: WorthPicture) {
  const scene = useMemo(() => worthScene({ before, now, readings, lengths }), [before, now, readings, lengths]);
  return <Drawing scene={scene} />;
});
