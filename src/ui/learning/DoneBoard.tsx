import { doneness, type LevelDoneness } from "../../app/doneness";
import type { PadProgress } from "../../app/padProgress";
import { levelNames } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { homeTape, tapeAgreement } from "../../core/tolerances";
import { formatRemaining } from "../readout/remaining";
import { doneSentence, doneWords, levelList } from "../text/learning";
import { levelWords } from "../text/pictures";
import { useUnit } from "../useStore";
import "./learning.css";

/** Whether it is done: one answer for all, and each level there, not yet or over. */
export function DoneBoard({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const unit = useUnit();
  const { levels, overall } = doneness(plan, progress);
  return (
    <section className="done stitched">
      <h2>{doneWords.title}</h2>
      <p className={`done-answer done-${overall}`}>{answer({ levels, overall }, progress)}</p>
      <ul className="done-levels">
        {levels.map(({ level, kind, part, amount, isRead }) => (
          <li key={level} className={`done-level done-${kind}`}>
            <span className="done-name">{levelWords[level]}</span>
            <span className="done-state">
              <span className="done-mark" aria-hidden />
              {doneSentence(kind, formatRemaining(amount, unit), part)}
            </span>
            {isRead ? null : <span className="quiet small">{doneWords.expected}</span>}
          </li>
        ))}
      </ul>
      <p className="quiet">
        {doneWords.why(formatRemaining(homeTape, unit), formatRemaining(tapeAgreement, unit))} {doneWords.again}
      </p>
    </section>
  );
}

function answer({ levels, overall }: ReturnType<typeof doneness>, { pieces, pinnedCount, next }: PadProgress): string {
  const names = (pick: (level: LevelDoneness) => boolean): string =>
    levelList(
      levels.filter(pick).map(({ level }) => level),
      levelNames.length,
    );
  const { overall: words } = doneWords;
  if (overall === "stopHere") return words.stopHere;
  if (next !== null) return words.pinning(pieces.length - pinnedCount);
  if (overall === "notYet") return words.off(names(({ kind }) => kind === "notYet" || kind === "over"));
  if (overall === "unread") return words.unread(names(({ isRead }) => !isRead));
  return levels.some(({ kind }) => kind === "asNearAsItGets") ? words.doneShort : words.done;
}
