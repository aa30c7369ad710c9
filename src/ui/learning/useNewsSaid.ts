import { useEffect, useRef } from "react";
import type { Learning } from "../../app/learning";
import { useAnnounce } from "../Announcer";
import { useFitting, useLengths } from "../useStore";
import { newsOf } from "./NewsRow";
import { standingOnes, surpriseSentence } from "./SurpriseRows";

/**
 * Says once, when it comes, what the newest readings change, or that one of them cannot be. What was so on arriving
 * stands on the screen and is not said.
 */
export function useNewsSaid(
  answer: Learning | null,
  { isWorking, isComingOff }: { readonly isWorking: boolean; readonly isComingOff: boolean },
): void {
  const fitting = useFitting();
  const { work } = fitting;
  const { write } = useLengths();
  const announce = useAnnounce();
  const onArriving = useRef(work);
  const said = useRef<string | null>(null);
  const surprises = answer === null ? [] : standingOnes(answer.replan.belief.surprises, fitting);
  const sentence =
    answer === null || isWorking
      ? null
      : surprises.length > 0
        ? surprises.map((surprise) => surpriseSentence(surprise, write)).join(" ")
        : isComingOff
          ? null
          : newsOf(answer);
  // By what was read, not by how it is written: another unit is no news.
  const key = surprises.length > 0 ? surprises.map(({ name, read }) => `${name} ${String(read)}`).join() : sentence;
  useEffect(() => {
    if (isWorking) return;
    if (sentence !== null && key !== said.current && work !== onArriving.current) announce(sentence);
    said.current = key;
  }, [sentence, key, isWorking, work, announce]);
}
