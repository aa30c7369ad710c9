import type { PadProgress } from "../../app/padProgress";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { pieceToFile } from "../../document/pieceFile";
import { useCutFrom } from "../batting/useCutFrom";
import { battingWords } from "../text/batting";
import { paddingWords } from "../text/padding";
import { levelWords } from "../text/pictures";
import { pinLayersSentence, placeSentence } from "../text/pieces";
import { pieceName } from "../text/plan";
import { useDoAndSay } from "../useDone";
import { useLengths } from "../useStore";
import { levelToMeasure } from "./levelToMeasure";
import { SpeakButton } from "./SpeakButton";

/** One piece: how it goes on, where, what the tape should read after it, and the patch that says it is on. */
export interface PieceActionProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly piece: PlannedPiece;
  readonly isLooking: boolean;
  /** The tape is to be read before anything more is pinned: the patch is there and does not ask to be pressed. */
  readonly isReadingDue: boolean;
  readonly onLook: (order: number | null) => void;
}

export function PieceAction({ plan, progress, piece, isLooking, isReadingDue, onLook }: PieceActionProps) {
  const words = usePieceWords(plan, piece);
  const { isPinned, press } = usePinning(plan, progress, piece, words, onLook);
  return (
    <>
      <h2 className="next-sentence">{words.pin}</h2>
      <p className="next-place">{[words.place, words.bra, words.from].join(" ")}</p>
      <p className="next-then">
        {words.measure} <span className="quiet">{words.front}</span>
      </p>
      <div className="row next-buttons">
        <button type="button" className={isPinned || isReadingDue ? "patch" : "patch patch-main"} onClick={press}>
          {isPinned ? paddingWords.unpin : paddingWords.pinned}
        </button>
        <SpeakButton sentence={[words.pin, words.place, words.bra, words.from, words.measure].join(" ")} />
        {isLooking ? (
          <button type="button" className="patch" onClick={() => onLook(null)}>
            {paddingWords.anotherWay}
          </button>
        ) : null}
      </div>
    </>
  );
}

function usePieceWords(plan: Plan, piece: PlannedPiece) {
  const { step, write } = useLengths();
  const cutFrom = useCutFrom()(piece);
  const level = levelToMeasure(plan, piece);
  const after = piece.readingsAfter[level];
  const isCup = piece.zone === "leftCup" || piece.zone === "rightCup";
  return {
    name: pieceName(piece),
    pin: pinLayersSentence(piece),
    place: placeSentence(piece, plan.levels, step),
    bra: isCup ? paddingWords.braThere : "",
    from: cutFrom === null ? "" : battingWords.cutFrom(cutFrom),
    measure: paddingWords.measureThen(levelWords[level], write(after.girth)),
    front: paddingWords.measureFrontThen(write(after.frontArc)),
  };
}

function usePinning(
  plan: Plan,
  progress: PadProgress,
  piece: PlannedPiece,
  { name, place }: ReturnType<typeof usePieceWords>,
  onLook: PieceActionProps["onLook"],
) {
  const doAndSay = useDoAndSay();
  const isPinned = progress.pieces.some((state) => state.piece.id === piece.id && state.pinned);
  const press = () => {
    const at = new Date().toISOString();
    if (isPinned) doAndSay({ does: "unpin", pieceId: piece.id, at }, paddingWords.unpinned);
    else
      doAndSay(
        { does: "pin", piece: pieceToFile(piece, name, place), at },
        paddingWords.pinnedAnnounced(piece.order, plan.pieces.length),
      );
    onLook(null);
  };
  return { isPinned, press };
}
