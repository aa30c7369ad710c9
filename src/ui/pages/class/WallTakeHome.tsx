import type { Fitting } from "../../../document/fitting";
import { SharePanel } from "../../kit/shelf/SharePanel";
import { takeHomeWords } from "../../../text/library";
import { wallControls } from "../../../text/wall";
import { WallPanel } from "./WallPanel";

/** The made-up person on the wall as a link and as a code for the class to take home. Nobody's own fitting goes out here. */
export function WallTakeHome({ fitting, onClose }: { readonly fitting: Fitting; readonly onClose: () => void }) {
  return (
    <WallPanel id="wall-home-title" title={takeHomeWords.title} className="wall-home" onClose={onClose}>
      <p>{takeHomeWords.lead}</p>
      <SharePanel fitting={fitting} title={fitting.title} isMadeUp />
      <button type="button" className="patch" onClick={onClose}>
        {wallControls.closeKeys}
      </button>
    </WallPanel>
  );
}
