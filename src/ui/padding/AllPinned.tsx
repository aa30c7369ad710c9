import { doneness, type LevelDoneness } from "../../app/doneness";
import type { PadProgress } from "../../app/padProgress";
import { levelNames } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { placeAddress } from "../place";
import { levelList } from "../text/learning";
import { paddingWords } from "../text/padding";

/** Every piece is on: the tape has the last word, and the cover waits until it has spoken. */
export function AllPinned({ plan, progress }: { readonly plan: Plan; readonly progress: PadProgress }) {
  const { levels, overall } = doneness(plan, progress);
  const { allOn } = paddingWords;
  const named = (pick: (level: LevelDoneness) => boolean): string =>
    levelList(
      levels.filter(pick).map(({ level }) => level),
      levelNames.length,
    );
  const isUnread = levels.some(({ read }) => read === "none");
  const state = isUnread || overall === "unread" ? "unread" : overall === "notYet" ? "notYet" : "done";
  const title =
    state === "unread"
      ? allOn.unread(named(({ read }) => read !== "all"))
      : state === "notYet"
        ? allOn.notYet(named(({ kind }) => kind === "notYet" || kind === "over"))
        : allOn.done;
  return (
    <>
      <h2 className="next-sentence">{title}</h2>
      <p className="next-place">{allOn[`${state}Why`]}</p>
      <div className="row next-buttons">
        <a className={state === "done" ? "patch patch-main" : "patch"} href={placeAddress("finishing")}>
          {paddingWords.toFinishing}
        </a>
      </div>
    </>
  );
}
