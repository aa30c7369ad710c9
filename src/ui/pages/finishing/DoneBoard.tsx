import { doneness, type LevelDoneness } from "../../../app/progress/doneness";
import type { PadProgress } from "../../../app/progress/padProgress";
import { levelNames } from "../../../core/body/vocabulary";
import type { Plan } from "../../../core/plan/plan";
import { homeTape, tapeAgreement } from "../../../core/tolerances";
import { doneSentence, doneWords, levelList } from "../../../text/learning";
import { levelWords } from "../../../text/pictures";
import { amountText, remainingText } from "../../../text/remaining";
import "../../kit/learning/learning.css";
import { useLengths } from "../../kit/useStore";
import { writtenLength } from "../../../text/writtenLength";

/**
 * Whether it is done: one answer for all, and each level there, not yet or over. What was not read over the cover is only
 * expected.
 */
interface DoneBoardProps {
  readonly plan: Plan;
  readonly progress: PadProgress;
  /** Without a cover the padding is what is measured. */
  readonly hasCover: boolean;
}

export function DoneBoard({ plan, progress, hasCover }: DoneBoardProps) {
  const { unit, step } = useLengths();
  const { levels, overall } = doneness(plan, progress);
  const aim = unit === "cm" ? writtenLength(tapeAgreement, "1 mm") : amountText(tapeAgreement, step);
  return (
    <section className="done stitched">
      <h2>{doneWords.title}</h2>
      <p className={`done-answer done-${overall}`}>{answer({ levels, overall }, progress, hasCover)}</p>
      <ul className="done-levels">
        {levels.map((level) => (
          <LevelTag key={level.level} plan={plan} progress={progress} hasCover={hasCover} state={level} />
        ))}
      </ul>
      <p className="quiet">
        {doneWords.why(amountText(homeTape, step), aim)} {doneWords.again(hasCover)}
      </p>
    </section>
  );
}

function LevelTag({ plan, progress, hasCover, state }: DoneBoardProps & { readonly state: LevelDoneness }) {
  const { step } = useLengths();
  const { level, kind, part, read } = state;
  const wanted = plan.levels.find(({ name }) => name === level)?.body[part].value;
  const amount = wanted === undefined ? "" : remainingText(wanted, progress.now[level][part].value, step);
  const isTold = read === "all" || (read === "girthOnly" && part === "girth" && kind !== "there");
  return (
    <li className={`done-level done-${kind}${isTold ? "" : " done-unread"}`}>
      <span className="done-name">{levelWords[level]}</span>
      <span className="done-state">
        <span className="done-mark" aria-hidden />
        {doneSentence(kind, amount, part, isTold ? "read" : "expected")}
      </span>
      {read === "all" ? null : <span className="small">{doneWords.unread(read, hasCover)}</span>}
    </li>
  );
}

function answer(
  { levels, overall }: ReturnType<typeof doneness>,
  { pieces, pinnedCount, next }: PadProgress,
  hasCover: boolean,
): string {
  const names = (pick: (level: LevelDoneness) => boolean): string =>
    levelList(
      levels.filter(pick).map(({ level }) => level),
      levelNames.length,
    );
  const words = doneWords.overall;
  if (overall === "stopHere") return words.stopHere;
  if (next !== null) return words.pinning(pieces.length - pinnedCount);
  if (overall === "notYet") return words.off(names(({ kind }) => kind === "notYet" || kind === "over"));
  if (overall === "unread")
    return words.unread(
      names(({ read }) => read !== "all"),
      hasCover,
    );
  return levels.some(({ kind }) => kind === "asNearAsItGets") ? words.doneShort : words.done;
}
