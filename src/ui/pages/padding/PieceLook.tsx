import type { Piece } from "../../../core/padding/piece";
import type { PlannedPiece } from "../../../core/plan/plan";
import { layerCount, pinSentence } from "../../../text/pieces";
import { planWords } from "../../../text/plan";
import { stopWords } from "../../../text/stops";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useLengths } from "../../kit/useStore";
import { StopFrame } from "./StopFrame";
import type { StepAtHand } from "./useStep";
import { WorkPictureOf } from "./WorkPictureOf";

interface PieceLookProps {
  readonly at: StepAtHand;
  readonly piece: Piece;
  readonly onBack: () => void;
}

/** Another piece, looked at from the route: the step does not change by it. */
export function PieceLook({ at: { plan, pinned }, piece, onBack }: PieceLookProps) {
  const { step } = useLengths();
  const doAndSay = useDoAndSay();
  const isOn = pinned.some(({ id }) => id === piece.id);
  const place = planWords(step).piecePlace(piece as PlannedPiece, plan.levels);
  const takeOff = () => {
    doAndSay(
      { does: "record", entry: { did: "unpinned", pieceId: piece.id, at: new Date().toISOString() } },
      stopWords.takenOff,
    );
    onBack();
  };
  return (
    <StopFrame
      region={stopWords.region}
      trail={{}}
      act="look-at"
      kind="working"
      title={pinSentence(piece)}
      sentence={`${place.charAt(0).toUpperCase()}${place.slice(1)}, ${layerCount(piece.layers.length)}.`}
      picture={<WorkPictureOf plan={plan} on={pinned} now={[piece]} doing="pin" title={pinSentence(piece)} />}
      slab={{ words: stopWords.back, press: onBack, isReady: true }}
      ways={
        isOn ? (
          <button type="button" className="patch patch-plain" onClick={takeOff}>
            {stopWords.takeOff}
          </button>
        ) : null
      }
    >
      <p>{stopWords.lookedAt}</p>
    </StopFrame>
  );
}
