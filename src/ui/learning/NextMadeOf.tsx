import type { PadProgress } from "../../app/padProgress";
import type { MadeOf } from "../../app/cutPieces";
import { madeOfSentence } from "../text/learning";
import { pieceName } from "../text/plan";
import { useAnswer } from "./useAnswer";

/** Once the rest was planned anew: what the next piece can be made of. */
export function NextMadeOf({ progress }: { readonly progress: PadProgress }) {
  const { answer } = useAnswer("madeOf");
  const next = answer?.find(({ piece }) => piece.id === progress.next?.id);
  if (next === undefined) return null;
  return (
    <p className="learning-line">
      <MadeOfText made={next} />
    </p>
  );
}

export function MadeOfText({ made: { piece, cut } }: { readonly made: MadeOf }) {
  return madeOfSentence(pieceName(piece), cut === null ? null : { name: pieceName(cut.piece), fit: cut.fit });
}
