import type { PadProgress } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan, PlannedPiece } from "../../core/plan/plan";
import { pieceToFile } from "../../document/pieceFile";
import { useAnnounce } from "../Announcer";
import { useCutFrom } from "../batting/useCutFrom";
import { placeAddress } from "../place";
import { battingWords } from "../text/batting";
import { paddingWords } from "../text/padding";
import { levelWords } from "../text/pictures";
import { pieceName, pinSentence, placeSentence } from "../text/pieces";
import { useDispatch, useLengths } from "../useStore";
import { useSpeech } from "./useSpeech";

/** The next action in words, and the one big patch to press. */
export interface NextActionProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly current: PlannedPiece | null;
  readonly level: LevelName;
  readonly onLook: (order: number | null) => void;
}

export function NextAction({ plan, progress, current, level, onLook }: NextActionProps) {
  return (
    <section className="next">
      {current === null ? (
        <AllPinned />
      ) : (
        <PieceAction plan={plan} progress={progress} piece={current} level={level} onLook={onLook} />
      )}
    </section>
  );
}

function AllPinned() {
  return (
    <div className="stack">
      <h2 className="next-sentence">{paddingWords.doneTitle}</h2>
      <p>{paddingWords.done}</p>
      <a className="patch patch-main" href={placeAddress("finishing")}>
        {paddingWords.toFinishing}
      </a>
    </div>
  );
}

interface PieceActionProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  readonly piece: PlannedPiece;
  readonly level: LevelName;
  readonly onLook: (order: number | null) => void;
}

function PieceAction({ plan, progress, piece, level, onLook }: PieceActionProps) {
  const lengths = useLengths();
  const dispatch = useDispatch();
  const announce = useAnnounce();
  const speak = useSpeech();
  const cutFrom = useCutFrom()(piece);
  const isPinned = progress.pieces.some((state) => state.piece.id === piece.id && state.pinned);
  const after = piece.readingsAfter[level];
  const pin = pinSentence(piece, lengths.step);
  const place = placeSentence(piece, plan.levels, lengths.step);
  const from = cutFrom === null ? "" : battingWords.cutFrom(cutFrom);
  const measure = paddingWords.measureThen(levelWords[level], lengths.write(after.girth));

  const setPinned = () => {
    const at = new Date().toISOString();
    if (isPinned) {
      dispatch({ does: "unpin", pieceId: piece.id, at });
      announce(paddingWords.unpinned);
    } else {
      const file = pieceToFile(piece, pieceName(piece, lengths.step), place);
      dispatch({ does: "pin", piece: file, at });
      announce(paddingWords.pinnedAnnounced(piece.order, plan.pieces.length));
    }
    onLook(null);
  };

  return (
    <>
      <h2 className="next-sentence">{pin}</h2>
      <p className="next-place">
        {place} {from}
      </p>
      <p className="next-then">
        {measure} <span className="quiet">{paddingWords.measureFrontThen(lengths.write(after.frontArc))}</span>
      </p>
      <div className="row next-buttons">
        <button type="button" className={isPinned ? "patch" : "patch patch-main"} onClick={setPinned}>
          {isPinned ? paddingWords.unpin : paddingWords.pinned}
        </button>
        {speak ? (
          <button type="button" className="patch" onClick={() => speak([pin, place, from, measure].join(" "))}>
            {paddingWords.speak}
          </button>
        ) : null}
      </div>
    </>
  );
}
