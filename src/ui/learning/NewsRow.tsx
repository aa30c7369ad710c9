import type { Learning } from "../../app/learning";
import type { PadProgress } from "../../app/padProgress";
import { levelNames } from "../../core/body/vocabulary";
import { thePiece } from "../text/pieces";
import { learningWords, levelList, newsSentence, restSentence } from "../text/learning";
import { useDoAndSay } from "../useDone";

/**
 * What the last readings change, and the button that plans the rest anew; where nothing would change, how far to pin before
 * the tape is read again.
 */
export interface NewsRowProps {
  readonly learned: Learning;
  readonly progress: PadProgress;
  readonly onDone: () => void;
}

export function NewsRow({ learned, progress, onDone }: NewsRowProps) {
  const doAndSay = useDoAndSay();
  const news = newsOf(learned);
  if (news === null) {
    return (
      <p className="learning-line">
        <RestText learned={learned} progress={progress} />
        {learned.isNews ? <span className="quiet learning-aside"> {learningWords.stands}</span> : null}
      </p>
    );
  }
  const replan = () => {
    if (doAndSay({ does: "replan", at: new Date().toISOString() }, learningWords.replanned)) onDone();
  };
  return (
    <div className="learning-row">
      <p className="learning-line">{news}</p>
      <button type="button" className="patch patch-main" onClick={replan}>
        {learningWords.replan}
      </button>
    </div>
  );
}

/** What the last readings change, in a sentence; null where they change nothing. */
export const newsOf = ({ isNews, change }: Learning): string | null =>
  isNews && change.kind !== "same" ? newsSentence(change) : null;

function RestText({ learned, progress }: Pick<NewsRowProps, "learned" | "progress">) {
  const { rest } = learned.replan;
  const left = progress.pieces.filter(({ pinned }) => !pinned);
  const last = left[Math.min(rest.pieces, left.length) - 1];
  return restSentence({
    upTo: last === undefined ? null : thePiece(last.piece),
    isLast: rest.pieces >= left.length,
    levels: levelList(rest.levels, levelNames.length),
  });
}
